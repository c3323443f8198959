/**
 * Part types: what their makers say, entered by hand or read from a file, with every contradiction named. Hides how the
 * maker's rules are written as text; knows no item but by its tag.
 */
@NullMarked
package bagclock.parts;

import org.jspecify.annotations.NullMarked;
