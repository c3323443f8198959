/**
 * What the standards say for a part. Hides files, parsing, editions and rounding behind questions such as "which bake
 * for this body"; every answer carries its {@link bagclock.core.standard.Citation}. Knows no history, no climate log
 * and no moment.
 */
@NullMarked
package bagclock.core.standard;

import org.jspecify.annotations.NullMarked;
