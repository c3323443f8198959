/** The stockroom: scans, lists, the page of an item, and the forms of everything that a clerk tells the desk. */
@NullMarked
package bagclock.stock;

import org.jspecify.annotations.NullMarked;
