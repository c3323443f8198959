package bagclock.desk;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Timeline;
import bagclock.ledger.Act;
import bagclock.ledger.History;
import bagclock.ledger.Told;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What speaks against the history that an item would have. */
final class Objections {
    private final History history;
    private final Timeline timeline;
    private final List<Refusal> found = new ArrayList<>();

    private Objections(History history, Timeline timeline) {
        this.history = history;
        this.timeline = timeline;
    }

    static List<Refusal> to(History history, Timeline timeline) {
        Objections objections = new Objections(history, timeline);
        objections.walk();
        objections.board();
        return objections.found;
    }

    private void walk() {
        Optional<Told> birth = history.birth();
        if (birth.isEmpty()) {
            if (!history.told().isEmpty()) {
                add(Reason.OTHERS_REST_ON_IT, history.tag());
            }
            return;
        }
        quantities();
        Instant receivedAt = history.receivedAt().orElseThrow();
        history.told().stream()
                .filter(told -> !told.equals(birth.get()) && told.at().isBefore(receivedAt))
                .forEach(told -> add(Reason.BEFORE_RECEIPT, told.at(), receivedAt));
    }

    private void quantities() {
        long left = 0;
        boolean ended = false;
        for (Told told : history.told()) {
            if (ended) {
                add(Reason.ITEM_ENDED, history.tag());
            }
            long before = left;
            left += History.change(told.act());
            if (left < 0) {
                add(Reason.QUANTITY_TOO_LARGE, before - left, before);
            }
            ended = left == 0 || told.act() instanceof Act.JoinedInto;
            if (told.act() instanceof Act.SplitOff || told.act() instanceof Act.UsedUp || ended) {
                takenOut(told);
            } else if (told.act() instanceof Act.PutAt && !isInBag(told)) {
                add(Reason.BAG_WAS_OPEN, told.at());
            }
        }
    }

    /** Nothing is taken out of a closed bag or an oven. */
    private void takenOut(Told told) {
        Place place = timeline.upTo(told.at()).whereabouts().place();
        if (place instanceof Place.Bag) {
            add(Reason.BAG_IS_CLOSED, told.act().getClass().getSimpleName());
        } else if (place instanceof Place.Oven) {
            add(Reason.PART_IS_IN_OVEN, told.act().getClass().getSimpleName());
        }
    }

    /** Opened at that very millisecond, it was put there before. */
    private boolean isInBag(Told told) {
        return Stream.of(told.at(), told.at().minusMillis(1))
                .anyMatch(at -> timeline.upTo(at).whereabouts().place() instanceof Place.Bag);
    }

    private void board() {
        boolean mounted = false;
        for (Event event : timeline.events()) {
            if (event instanceof Event.Mounted && mounted) {
                add(Reason.ALREADY_MOUNTED, history.tag());
            } else if (event instanceof Event.Removed && !mounted) {
                add(Reason.NOT_MOUNTED, history.tag());
            }
            mounted = event instanceof Event.Mounted || (mounted && !(event instanceof Event.Removed));
        }
    }

    private void add(Reason reason, Object... parts) {
        Refusal refusal = Refusal.of(reason, parts);
        if (!found.contains(refusal)) {
            found.add(refusal);
        }
    }
}
