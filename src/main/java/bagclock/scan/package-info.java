/**
 * What a maker's or distributor's label says: text as a scanner delivered it becomes a reading, with everything that is
 * doubtful named. Knows the published syntaxes and no web, no storage and no clock.
 *
 * <p>Syntax ISO/IEC 15434, format 06, with the data identifiers of ANSI MH10.8.2; what makers put into them differs, so
 * a label's own profile decides first.
 */
@NullMarked
package bagclock.scan;

import org.jspecify.annotations.NullMarked;
