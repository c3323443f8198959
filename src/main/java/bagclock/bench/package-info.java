/**
 * The rework technician's front door: one question, one answer that can be read across the room, and the record of the
 * heat. Hides how a plan is typed and how an answer becomes sentences; decides nothing itself.
 */
@NullMarked
package bagclock.bench;

import org.jspecify.annotations.NullMarked;
