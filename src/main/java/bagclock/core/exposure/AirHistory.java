package bagclock.core.exposure;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The air that a part lay in up to the moment asked about, stretch by stretch, as the clock counts it. */
public final class AirHistory {
    private AirHistory() {}

    /** What kind of air it was. */
    public enum Kind {
        /** Open air, or a bag that is no dry pack. */
        ROOM,
        /** A dry pack. */
        PACK,
        /** Dry storage at or below 5 %RH. */
        CABINET_5,
        /** Dry storage above 5 up to 10 %RH. */
        CABINET_10,
        OVEN
    }

    /**
     * A stretch of air that counts as constant.
     *
     * @param startMs start, included, in milliseconds since the epoch
     * @param endMs end, excluded, in milliseconds since the epoch
     * @param temperature empty if not known
     * @param humidity empty if not known, or told by the kind alone: a dry pack, a declared cabinet
     */
    public record Stretch(
            long startMs, long endMs, Kind kind, Optional<Celsius> temperature, Optional<RelativeHumidity> humidity) {}

    /** The stretches from a moment on, oldest first, without a hole where events follow each other. */
    public static List<Stretch> since(Instant from, PartHistory history) {
        long fromMs = from.toEpochMilli();
        long momentMs = history.moment().toEpochMilli();
        Surroundings surroundings = new Surroundings(history.climate(), history.rules(), momentMs);
        List<Stretch> stretches = new ArrayList<>();
        List<Event> events = history.timeline().events();
        List<Whereabouts> places = history.timeline().whereaboutsAfterEach();
        for (int i = 0; i < events.size(); i++) {
            long startMs = Math.max(fromMs, events.get(i).at().toEpochMilli());
            long endMs = i + 1 < events.size() ? events.get(i + 1).at().toEpochMilli() : momentMs;
            add(stretches, surroundings, places.get(i).place(), startMs, endMs);
        }
        return stretches;
    }

    private static void add(List<Stretch> stretches, Surroundings surroundings, Place place, long startMs, long endMs) {
        if (startMs >= endMs) {
            return;
        }
        if (place instanceof Place.Oven oven) {
            Optional<Celsius> temperature = Optional.of(oven.bake().temperature());
            stretches.add(new Stretch(
                    startMs, endMs, Kind.OVEN, temperature, oven.bake().maxHumidity()));
            return;
        }
        surroundings.spans(place, startMs, endMs).forEach(span -> stretches.add(stretch(span)));
    }

    /** The room's worst case lends a declared cabinet and a pack its temperature, but not its humidity. */
    private static Stretch stretch(Span span) {
        boolean humidityRead = span.isFloor() || span.basis() == Span.Basis.READ;
        return new Stretch(
                span.startMs(),
                span.endMs(),
                kind(span.kind()),
                span.air().map(Air::temperature),
                humidityRead ? span.air().map(Air::humidity) : Optional.empty());
    }

    private static Kind kind(Span.Kind kind) {
        return switch (kind) {
            case FLOOR -> Kind.ROOM;
            case PACK -> Kind.PACK;
            case DRY_5 -> Kind.CABINET_5;
            case DRY_10 -> Kind.CABINET_10;
        };
    }
}
