/**
 * What the chart of an oven proves of a bake. Hides how spells in band, gaps and falls back to room temperature are
 * counted. Knows no file, no part and no history.
 */
@NullMarked
package bagclock.core.proof;

import org.jspecify.annotations.NullMarked;
