/**
 * The planner's pages: what the ovens do now, what waits for a bake, loading and unloading. Hides how loads and the queue
 * are put together; whether a bake counts is the core's to say.
 */
@NullMarked
package bagclock.ovens;

import org.jspecify.annotations.NullMarked;
