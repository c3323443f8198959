/**
 * The rules, pure: values in, values out. Knows only the JDK's value classes and itself; no clock, no web, no SQL, no
 * logging.
 */
@NullMarked
package bagclock.core;

import org.jspecify.annotations.NullMarked;
