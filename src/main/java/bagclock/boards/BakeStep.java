package bagclock.boards;

import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import java.time.Instant;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A step of a board's bake, in a job or outside one: what is written of it, and what its items are told.
 *
 * @param items tells every part that has an item
 */
record BakeStep(Kind kind, Instant at, Map<String, String> told, Consumer<HeatActs> items) {
    BakeStep {
        told = Map.copyOf(told);
    }

    static BakeStep of(BakeForm.Into into) {
        return new BakeStep(Kind.BAKE_STARTED, into.at(), into.told(), acts -> acts.bake(into));
    }

    static BakeStep of(BakeForm.Out out) {
        return new BakeStep(
                Kind.BAKE_ENDED,
                out.at(),
                Map.of(BoardNotes.AT_TEMPERATURE, out.hours().toString()),
                acts -> acts.unbake(out.hours()));
    }

    static BakeStep of(ElsewhereForm.Told told) {
        return new BakeStep(
                Kind.BAKED_ELSEWHERE, told.endedAt(), told.notes(), acts -> acts.bakedElsewhere(told.bake()));
    }
}
