/**
 * The entry: reads the command line, wires the rooms by their constructors, and starts. Nothing else may know this
 * package.
 */
@NullMarked
package bagclock;

import org.jspecify.annotations.NullMarked;
