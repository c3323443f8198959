/** The wall display: what everyone in the shop should see from afar, without a sign-in and without names of people. */
@NullMarked
package bagclock.wall;

import org.jspecify.annotations.NullMarked;
