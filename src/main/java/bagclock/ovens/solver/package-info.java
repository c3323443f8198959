/**
 * The planner's proof: a constraint solver with native code, in a process of its own, so that whatever becomes of it
 * costs the proof and nothing else. Hides the solver's library; the rest sees an engine like the others.
 */
@NullMarked
package bagclock.ovens.solver;

import org.jspecify.annotations.NullMarked;
