package bagclock.ledger;

import bagclock.core.Outcome;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.Timeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Turns acts into timelines. A child's begins with its parent's up to the split, a keeper's refers to those that were
 * put into it, so that a later correction of those reaches them.
 */
final class Replay {
    private final Function<String, History> source;
    private final Map<String, History> histories = new HashMap<>();

    Replay(Function<String, History> source) {
        this.source = source;
    }

    /** Up to a moment, and at that moment without this entry and those after it. */
    private record Bound(Instant at, int seq) {
        static final Bound NONE = new Bound(Instant.MAX, Integer.MAX_VALUE);

        boolean includes(Told told) {
            int order = told.at().compareTo(at);
            return order < 0 || (order == 0 && told.seq() < seq);
        }
    }

    History history(String tag) {
        History known = histories.get(tag);
        if (known == null) {
            known = source.apply(tag);
            histories.put(tag, known);
        }
        return known;
    }

    SortedMap<String, String> heads() {
        SortedMap<String, String> heads = new TreeMap<>();
        histories.forEach((tag, history) -> {
            List<Entry> entries = history.entries();
            heads.put(
                    tag,
                    entries.isEmpty() ? "" : entries.get(entries.size() - 1).hash());
        });
        return heads;
    }

    Outcome<Timeline> timeline(String tag) {
        return Timeline.of(events(tag, Bound.NONE));
    }

    private List<Event> events(String tag, Bound bound) {
        List<Event> events = new ArrayList<>();
        for (Told told : history(tag).told()) {
            if (!bound.includes(told)) {
                continue;
            }
            if (told.act() instanceof Act.SplitFrom from) {
                events.addAll(events(from.parent(), new Bound(told.at(), from.parentSeq())));
            } else if (told.act() instanceof Act.Joined joined) {
                events.add(new Event.Joined(told.at(), others(joined, told.at())));
            } else {
                events.addAll(told.events());
            }
        }
        return events;
    }

    /** A history that can't be one counts as unknown. */
    private List<Timeline> others(Act.Joined joined, Instant at) {
        return joined.others().stream()
                .map(other -> Timeline.of(events(other.tag(), new Bound(at, other.seq())))
                        .fold(timeline -> timeline, refusals -> Timeline.EMPTY))
                .toList();
    }
}
