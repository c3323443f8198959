/**
 * What happened to a part and what the air was like, folded into floor life used. Hides how climate, dry storage and
 * bakes turn into used life; knows nothing of heat plans and verdicts.
 */
@NullMarked
package bagclock.core.exposure;

import org.jspecify.annotations.NullMarked;
