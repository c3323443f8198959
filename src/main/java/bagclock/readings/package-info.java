/**
 * What the zones were like: samples, files of samples, day blocks. Hides how readings are kept and summed; knows
 * nothing of items and places.
 */
@NullMarked
package bagclock.readings;

import org.jspecify.annotations.NullMarked;
