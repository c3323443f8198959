package bagclock.desk;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Whereabouts;
import bagclock.core.exposure.Zone;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A time in which the readings of a zone count for an item.
 *
 * @param endedAt null as long as it lasts
 */
record Stay(String zone, Instant startedAt, @Nullable Instant endedAt) {
    /** Every stay of a history and of those joined to it; one after the other in the same zone are one. */
    static List<Stay> of(Timeline timeline) {
        List<Stay> stays = new ArrayList<>();
        List<Event> events = timeline.events();
        List<Whereabouts> each = timeline.whereaboutsAfterEach();
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            boolean last = i + 1 == events.size();
            Instant start = event.at();
            Instant end = last ? null : events.get(i + 1).at();
            zoneOf(each.get(i)).ifPresent(zone -> add(stays, new Stay(zone.name(), start, end)));
            if (event instanceof Event.Joined joined) {
                joined.others().forEach(other -> of(other).forEach(stay -> stays.add(stay.endedBy(joined.at()))));
            }
        }
        return stays;
    }

    private static void add(List<Stay> stays, Stay stay) {
        int last = stays.size() - 1;
        boolean goesOn =
                last >= 0 && stays.get(last).zone.equals(stay.zone) && stay.startedAt.equals(stays.get(last).endedAt);
        if (goesOn) {
            stays.set(last, new Stay(stay.zone, stays.get(last).startedAt, stay.endedAt));
        } else {
            stays.add(stay);
        }
    }

    private Stay endedBy(Instant moment) {
        return new Stay(zone, startedAt, endedAt == null ? moment : endedAt);
    }

    /** The zone whose readings count where the item is. */
    static Optional<Zone> zoneOf(Whereabouts where) {
        if (where.place() instanceof Place.Floor floor) {
            return floor.zone();
        } else if (where.place() instanceof Place.Cabinet cabinet) {
            return cabinet.log();
        }
        return where.place() instanceof Place.Bag bag && !bag.dryPack() ? bag.zone() : Optional.empty();
    }
}
