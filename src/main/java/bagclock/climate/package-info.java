/**
 * The pages of zones and cabinets: what they are like now and were like before, readings typed in or read from a file.
 * Hides how curves are drawn; knows no item.
 */
@NullMarked
package bagclock.climate;

import org.jspecify.annotations.NullMarked;
