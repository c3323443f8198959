/**
 * The tables of the standard as they are read in print, compared cell by cell with a site's own copy. Hides how a flat
 * list of cells becomes rows and columns; knows no item.
 */
@NullMarked
package bagclock.tables;

import org.jspecify.annotations.NullMarked;
