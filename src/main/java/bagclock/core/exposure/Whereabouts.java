package bagclock.core.exposure;

import java.util.Optional;

/**
 * Where a part is between two events.
 *
 * @param lastFloor the zone in which it last was on the floor: there it stands where an event names no zone
 * @param mounted on a board
 * @param told some event has said where it is
 */
public record Whereabouts(Place place, Optional<Zone> lastFloor, boolean mounted, boolean told) {
    /** Before the first event: in its maker's bag or in a zone unknown, whichever the first event says. */
    static final Whereabouts UNTOLD =
            new Whereabouts(new Place.Floor(Optional.empty()), Optional.empty(), false, false);

    /** Where the part is after an event that may lawfully follow. */
    Whereabouts after(Event event) {
        if (event instanceof Event.Sealed) {
            return at(new Place.Bag(true, !told, lastFloor));
        } else if (event instanceof Event.Resealed bag) {
            return at(new Place.Bag(bag.isDryPack(), false, lastFloor));
        } else if (event instanceof Event.ToDryStorage storage) {
            return intoStorage(storage);
        } else if (event instanceof Event.BakeStarted bake) {
            return at(new Place.Oven(bake));
        }
        return afterMoveToFloor(event);
    }

    private Whereabouts afterMoveToFloor(Event event) {
        if (event instanceof Event.Opened opened) {
            return onFloor(opened.zone(), mounted);
        } else if (event instanceof Event.ToFloor floor) {
            return onFloor(floor.zone(), mounted);
        } else if (event instanceof Event.Mounted onto) {
            return onFloor(onto.zone(), true);
        } else if (event instanceof Event.Removed off) {
            return onFloor(off.zone(), false);
        } else if (event instanceof Event.BakeEnded || (event instanceof Event.Heated && !isOnFloor())) {
            return onFloor(Optional.empty(), mounted);
        }
        return new Whereabouts(place, lastFloor, mounted, true);
    }

    private Whereabouts intoStorage(Event.ToDryStorage storage) {
        return storage.maxHumidity()
                .flatMap(Place.CabinetClass::of)
                .map(limit -> at(new Place.Cabinet(limit, storage.zone())))
                .orElseGet(() -> onFloor(storage.zone(), mounted));
    }

    private Whereabouts onFloor(Optional<Zone> zone, boolean onBoard) {
        Optional<Zone> stands = zone.or(() -> lastFloor);
        return new Whereabouts(new Place.Floor(stands), stands, onBoard, true);
    }

    private Whereabouts at(Place other) {
        return new Whereabouts(other, lastFloor, mounted, true);
    }

    /** Whose air it stands in: a logged cabinet's, else that of the zone in which it last was on the floor. */
    Optional<Zone> stands() {
        return place instanceof Place.Cabinet cabinet ? cabinet.log().or(() -> lastFloor) : lastFloor;
    }

    boolean isOnFloor() {
        return place instanceof Place.Floor;
    }
}
