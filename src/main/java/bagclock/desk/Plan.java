package bagclock.desk;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.ledger.Draft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a command would write, or why it can't.
 *
 * @param drafts the one that the receipt speaks of first
 * @param fresh an item that must be entered before
 * @param repeats the entry that already says it
 */
record Plan(List<Refusal> refusals, List<Draft> drafts, Optional<Fresh> fresh, Optional<Integer> repeats) {
    /** An item that is not there yet. */
    record Fresh(String tag, String partType, Optional<String> parent) {}

    Plan {
        refusals = List.copyOf(refusals);
        drafts = List.copyOf(drafts);
    }

    static Plan of(Draft... drafts) {
        return new Plan(List.of(), List.of(drafts), Optional.empty(), Optional.empty());
    }

    static Plan refused(List<Refusal> refusals) {
        return new Plan(refusals, List.of(), Optional.empty(), Optional.empty());
    }

    static Plan refused(Reason reason, Object... parts) {
        return refused(List.of(Refusal.of(reason, parts)));
    }

    static Plan repeating(int seq) {
        return new Plan(List.of(), List.of(), Optional.empty(), Optional.of(seq));
    }

    Plan entering(Fresh item) {
        return new Plan(refusals, drafts, Optional.of(item), repeats);
    }

    Plan with(Draft draft) {
        List<Draft> all = new ArrayList<>(drafts);
        all.add(draft);
        return new Plan(refusals, all, fresh, repeats);
    }
}
