package bagclock.stock;

import bagclock.desk.OpeningAir;
import bagclock.platform.Choice;
import bagclock.register.CarrierKind;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a form offers to choose from. */
record Offer(
        List<KnownPlace> places,
        List<PartType> partTypes,
        List<CarrierKind> carriers,
        Optional<LabelMatch> label,
        Map<String, OpeningAir.Above> closed) {
    Offer(List<KnownPlace> places, List<PartType> partTypes, List<CarrierKind> carriers) {
        this(places, partTypes, carriers, Optional.empty(), Map.of());
    }

    /** Zones to open a bag in; where none should be opened, that is said. */
    List<Choice> openingZones(Words words) {
        return zones().stream()
                .map(zone -> Optional.ofNullable(closed.get(zone.value()))
                        .map(above -> new Choice(
                                zone.value(),
                                zone.label(),
                                words.text("stock.open.not-here", words.air(above.read()), words.air(above.limit()))))
                        .orElse(zone))
                .toList();
    }

    List<Choice> zones() {
        return places.stream()
                .filter(KnownPlace.FloorZone.class::isInstance)
                .map(place -> Choice.of(place.code(), place.name()))
                .toList();
    }

    /** Zones and cabinets. */
    List<Choice> storage(Words words) {
        return places.stream()
                .filter(place -> !(place instanceof KnownPlace.BakeOven))
                .map(place -> new Choice(place.code(), place.name(), note(place, words)))
                .toList();
    }

    private static String note(KnownPlace place, Words words) {
        if (place instanceof KnownPlace.DryCabinet cabinet) {
            return words.text(
                    "stock.cabinet", words.texts().humidity(cabinet.limit().limit()));
        }
        return "";
    }

    /** None is chosen by itself: a browser takes the first of a list. */
    List<Choice> types(Words words) {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of("", words.text("stock.type.choose")));
        partTypes.forEach(type -> choices.add(Choice.of(type.number(), type.number() + ", " + type.description())));
        return choices;
    }

    List<Choice> carriers(Words words) {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of("", words.text("stock.carrier.usual")));
        carriers.forEach(carrier -> choices.add(Choice.of(carrier.name(), carrier.name())));
        return choices;
    }
}
