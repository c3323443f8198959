/**
 * What is known: part types, places, carriers, site rules. Hides that each fact is a row of versions which is never
 * edited; knows nothing of items and readings.
 */
@NullMarked
package bagclock.register;

import org.jspecify.annotations.NullMarked;
