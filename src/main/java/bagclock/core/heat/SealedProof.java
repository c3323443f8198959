package bagclock.core.heat;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.ClockReading.Fault;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.PartHistory;
import bagclock.core.standard.Standard;
import java.util.Optional;

/** Whether a history that says "sealed" after a bake may say so: the bake must have counted for some rating. */
public final class SealedProof {
    private SealedProof() {}

    /** Why the history cannot be, empty if it can. */
    public static Optional<Refusal> refusal(Standard standard, PartHistory history) {
        boolean sealedLater = history.timeline().events().stream().skip(1).anyMatch(Event.Sealed.class::isInstance);
        boolean failed = sealedLater
                && history.part().ratings().stream()
                        .map(rating -> FoldedHistory.of(standard, history, rating))
                        .allMatch(folded -> folded.reading().has(Fault.SEALED_AFTER_FAILED_BAKE));
        return failed ? Optional.of(Refusal.of(Reason.SEALED_ONLY_WHEN_DRY, "Sealed")) : Optional.empty();
    }
}
