package bagclock.desk;

import bagclock.core.exposure.Event;
import bagclock.ledger.Act;
import bagclock.ledger.Notes;
import bagclock.ledger.Told;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The runs in ovens among an item's acts. */
record BakeRun(List<Told> told) {
    /** One run. */
    record Started(Instant startedAt, Optional<String> oven) {}

    /** Every oven that a run began in. */
    List<String> ovens() {
        return told.stream()
                .filter(t -> t.act() instanceof Act.Happened happened
                        && happened.event() instanceof Event.BakeStarted
                        && happened.notes().containsKey(Notes.PLACE))
                .map(t -> ((Act.Happened) t.act()).notes().get(Notes.PLACE))
                .distinct()
                .toList();
    }

    /** The last run that began before a moment. */
    Optional<Started> before(Instant moment) {
        Optional<Started> last = Optional.empty();
        for (Told t : told) {
            if (t.at().isBefore(moment)
                    && t.act() instanceof Act.Happened happened
                    && happened.event() instanceof Event.BakeStarted) {
                last = Optional.of(
                        new Started(t.at(), Optional.ofNullable(happened.notes().get(Notes.PLACE))));
            }
        }
        return last;
    }
}
