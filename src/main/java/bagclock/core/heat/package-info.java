/**
 * May it be heated? Turns a part's folded history and a heat plan into one verdict with reasons, ways out and a trail.
 * Hides the order of the rules; knows nothing of where its inputs come from.
 */
@NullMarked
package bagclock.core.heat;

import org.jspecify.annotations.NullMarked;
