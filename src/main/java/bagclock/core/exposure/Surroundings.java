package bagclock.core.exposure;

import bagclock.core.exposure.Span.Basis;
import bagclock.core.exposure.Span.Kind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The air around a part in one place, as spans of constant air; the same for every rating. */
final class Surroundings {
    private final ClimateLog climate;
    private final SiteRules rules;
    private final long momentMs;
    private final Map<Optional<Zone>, FloorAir> floors = new HashMap<>();

    Surroundings(ClimateLog climate, SiteRules rules, long momentMs) {
        this.climate = climate;
        this.rules = rules;
        this.momentMs = momentMs;
    }

    /** Spans without a hole; none for an oven, whose stay is judged when it ends. */
    List<Span> spans(Place place, long startMs, long endMs) {
        if (startMs >= endMs || place instanceof Place.Oven) {
            return List.of();
        } else if (place instanceof Place.Floor floor) {
            return floor(floor.zone(), startMs, endMs);
        } else if (place instanceof Place.Bag bag) {
            return bag.dryPack() ? List.of(declared(Kind.PACK, startMs, endMs)) : floor(bag.zone(), startMs, endMs);
        }
        return cabinet((Place.Cabinet) place, startMs, endMs);
    }

    private List<Span> cabinet(Place.Cabinet cabinet, long startMs, long endMs) {
        if (cabinet.log().isPresent()) {
            return stay(cabinet).spans(startMs, endMs);
        }
        Kind kind = cabinet.limit() == Place.CabinetClass.UP_TO_5 ? Kind.DRY_5 : Kind.DRY_10;
        return List.of(declared(kind, startMs, endMs));
    }

    private CabinetAir.Stay stay(Place.Cabinet cabinet) {
        return CabinetAir.Stay.of(cabinet.limit(), cabinet.log(), climate, rules, momentMs);
    }

    /** Whether what comes after the moment can change how the time before it counts: an excursion under way. */
    boolean mayChangeWhatWas(Place place) {
        return place instanceof Place.Cabinet cabinet
                && cabinet.log().isPresent()
                && stay(cabinet).isInExcursion();
    }

    private List<Span> floor(Optional<Zone> zone, long startMs, long endMs) {
        return floors.computeIfAbsent(zone, name -> new FloorAir(climate, name, rules, momentMs))
                .spans(startMs, endMs);
    }

    /** A bag or a declared cabinet stands in the room: its temperature is the room's worst case. */
    private Span declared(Kind kind, long startMs, long endMs) {
        Optional<Air> room = climate.worstCase();
        Basis basis = room.isPresent() ? Basis.DECLARED : Basis.UNKNOWN;
        return new Span(startMs, endMs, kind, room, basis, false);
    }
}
