package bagclock.desk;

import bagclock.core.heat.Answer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.Release;
import bagclock.core.quantity.Celsius;
import bagclock.ledger.Act;
import bagclock.ledger.Entry;
import bagclock.ledger.History;
import bagclock.ledger.Notes;
import bagclock.ledger.Told;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;

/** An item's releases: each is for one heat, no hotter, longer or other than the one that was asked about. */
public final class Releases {
    private final History history;

    Releases(History history) {
        this.history = history;
    }

    /**
     * The release that a heat may be done on, empty when there is none that is unused or when the answer is one that
     * can't be released. What people type has no seconds: the release's minute counts as its moment.
     */
    public Optional<Entry> open(HeatPlan plan, Answer answer) {
        if (!Release.isPossible(answer)) {
            return Optional.empty();
        }
        return history.told().stream()
                .filter(told -> told.act() instanceof Act.Released released
                        && !told.at().truncatedTo(ChronoUnit.MINUTES).isAfter(plan.at())
                        && covers(PlanNotes.read(released.notes(), plan.at()), plan))
                .filter(told -> usedFor(told.seq()).isEmpty())
                .reduce((first, last) -> last)
                .flatMap(told -> history.entry(told.seq()));
    }

    /** The heat that was done on a release. */
    public Optional<Entry> usedFor(int release) {
        String number = Integer.toString(release);
        return history.told().stream()
                .filter(told -> number.equals(heated(told).get(Notes.RELEASE)))
                .findFirst()
                .flatMap(told -> history.entry(told.seq()));
    }

    /** Whether the release stands: it was not taken back. */
    public boolean stands(int release) {
        return history.stands(release);
    }

    private static Map<String, String> heated(Told told) {
        return told.act() instanceof Act.Happened happened ? happened.notes() : Map.of();
    }

    private static boolean covers(HeatPlan released, HeatPlan plan) {
        return released.purpose().equals(plan.purpose())
                && released.isLocal() == plan.isLocal()
                && released.length().compareTo(plan.length()) >= 0
                && coversPeak(released.peakBody(), plan.peakBody());
    }

    /** No peak stands for the rated one. */
    private static boolean coversPeak(Optional<Celsius> released, Optional<Celsius> planned) {
        boolean stated = released.isPresent() && planned.isPresent();
        return stated ? !planned.get().isAbove(released.get()) : released.isEmpty() && planned.isEmpty();
    }
}
