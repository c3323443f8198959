package bagclock.boards;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A rework job as its board's ledger tells it: whoever opens it next goes on where it stopped.
 *
 * @param number of the entry that opened it
 * @param entries its own, oldest first
 */
record Job(int number, List<BoardEntry> entries) {
    Job {
        entries = List.copyOf(entries);
    }

    /** The job of a board with this number. */
    static Optional<Job> of(List<BoardEntry> ledger, int number) {
        String job = Integer.toString(number);
        List<BoardEntry> own = ledger.stream()
                .filter(entry -> entry.seq() == number || entry.says(BoardNotes.JOB, job))
                .toList();
        return own.stream()
                        .findFirst()
                        .filter(first -> first.kind() == Kind.JOB_OPENED)
                        .isPresent()
                ? Optional.of(new Job(number, own))
                : Optional.empty();
    }

    /** Every job of a board, newest first. */
    static List<Job> all(List<BoardEntry> ledger) {
        return ledger.stream()
                .filter(entry -> entry.kind() == Kind.JOB_OPENED)
                .sorted((one, other) -> other.seq() - one.seq())
                .flatMap(entry -> of(ledger, entry.seq()).stream())
                .toList();
    }

    BoardEntry opened() {
        return entries.get(0);
    }

    String location() {
        return opened().say(BoardNotes.LOCATION).orElse("");
    }

    String why() {
        return opened().say(BoardNotes.WHY).orElse("");
    }

    OldPart oldPart() {
        return opened().say(BoardNotes.FATE).flatMap(OldPart::parse).orElse(OldPart.SCRAP);
    }

    boolean isClosed() {
        return entries.stream().anyMatch(entry -> entry.kind() == Kind.JOB_CLOSED);
    }

    /** The first step that is neither done nor needless; the last one when all are done. */
    Step step() {
        return Arrays.stream(Step.values())
                .filter(step -> !isDone(step))
                .findFirst()
                .orElse(Step.INSPECT);
    }

    boolean isNeeded(Step step) {
        return switch (step) {
            case REMOVE -> oldPart() != OldPart.NONE;
            case KEEP -> oldPart().isKept();
            default -> true;
        };
    }

    /** Done, or not needed in this job. */
    boolean isDone(Step step) {
        return !isNeeded(step)
                || switch (step) {
                    case REMOVE -> heat(oldPart().removal()).isPresent();
                    case PLACE -> heat(Purpose.PLACEMENT).isPresent() || isTold(step);
                    case INSPECT -> isClosed();
                    default -> isTold(step);
                };
    }

    private boolean isTold(Step step) {
        return entries.stream()
                .anyMatch(entry -> entry.kind() == Kind.STEP_DONE && entry.says(BoardNotes.STEP, step.code()));
    }

    /** The heat of the job for a purpose. */
    Optional<BoardEntry> heat(Purpose purpose) {
        return entries.stream()
                .filter(entry -> entry.kind() == Kind.HEATED && entry.says(BoardNotes.PURPOSE, purpose.code()))
                .findFirst();
    }

    /** The tag under which the old part goes on. */
    Optional<String> kept() {
        return oldPart().isKept()
                ? heat(oldPart().removal()).flatMap(entry -> entry.say(BoardNotes.ITEM))
                : Optional.empty();
    }

    /** The heat on the board that comes next: off with the old part, then on with the new one. */
    Purpose nextHeat() {
        boolean off = isDone(Step.REMOVE);
        return off ? Purpose.PLACEMENT : oldPart().removal();
    }
}
