/**
 * Boards, heat profiles and rework jobs: one line says whether the board in hand may be heated now. Hides how a parts
 * list is read and in which order a job goes; decides nothing itself, the desk does.
 */
@NullMarked
package bagclock.boards;

import org.jspecify.annotations.NullMarked;
