package bagclock.assess;

import bagclock.assess.Fields.Range;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.Zone;
import bagclock.core.quantity.Celsius;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** Reads the "history" of a request. */
final class HistoryReader {
    private static final Map<String, EventReader> EVENTS = Map.ofEntries(
            Map.entry("sealed", always((f, at) -> new Event.Sealed(at, f.count("shelfMonths", Range.COUNT)))),
            Map.entry("opened", always(HistoryReader::opened)),
            Map.entry("to-floor", always((f, at) -> new Event.ToFloor(at, zone(f)))),
            Map.entry("unknown-exposure", always((f, at) -> new Event.UnknownExposure(at))),
            Map.entry("to-dry-storage", always(HistoryReader::stored)),
            Map.entry("resealed", always(HistoryReader::resealed)),
            Map.entry("bake-started", HistoryReader::started),
            Map.entry("bake-ended", always(HistoryReader::ended)),
            Map.entry("heated", always((f, at) -> new Event.Heated(at, PartReader.celsius(f, "peakBodyC")))),
            Map.entry("mounted", always((f, at) -> new Event.Mounted(at, zone(f)))),
            Map.entry("removed", always((f, at) -> new Event.Removed(at, zone(f)))),
            Map.entry("wetted", always((f, at) -> new Event.Wetted(at))),
            Map.entry("carrier-changed", always((f, at) -> new Event.CarrierChanged(at, PartReader.carrier(f)))));

    private HistoryReader() {}

    /** Reads the fields of one kind of event; empty if a problem was noted. */
    private interface EventReader {
        Optional<Event> read(Fields fields, Instant at);
    }

    static List<Event> read(List<Fields> entries) {
        return entries.stream().flatMap(entry -> event(entry).stream()).toList();
    }

    private static Optional<Event> event(Fields fields) {
        Instant at = fields.requiredInstant("at");
        Optional<String> name = PartReader.required(fields, "event", fields.string("event"));
        Optional<Event> event = name.flatMap(word -> event(fields, word, at));
        if (name.isPresent()) {
            fields.done();
        }
        return event;
    }

    private static Optional<Event> event(Fields fields, String name, Instant at) {
        EventReader reader = EVENTS.get(name);
        if (reader == null) {
            return unknown(fields, name);
        }
        return reader.read(fields, at);
    }

    private static EventReader always(BiFunction<Fields, Instant, Event> reader) {
        return (fields, at) -> Optional.of(reader.apply(fields, at));
    }

    private static Optional<Event> unknown(Fields fields, String name) {
        fields.problem("event", "is not an event of the contract: \"" + name + "\"");
        return Optional.empty();
    }

    private static Optional<Event> started(Fields fields, Instant at) {
        Optional<Celsius> temperature =
                PartReader.required(fields, "temperatureC", PartReader.celsius(fields, "temperatureC"));
        var humidity = PartReader.percent(fields, "maxRhPercent");
        return temperature.map(set -> new Event.BakeStarted(at, set, humidity));
    }

    private static Event stored(Fields fields, Instant at) {
        return new Event.ToDryStorage(at, PartReader.percent(fields, "maxRhPercent"), zone(fields));
    }

    private static Event resealed(Fields fields, Instant at) {
        boolean desiccant = fields.flag("freshDesiccant").orElse(false);
        return new Event.Resealed(at, desiccant, fields.flag("freshCard").orElse(false));
    }

    private static Event ended(Fields fields, Instant at) {
        return new Event.BakeEnded(at, fields.hours("hoursAtTemperature", Range.HOURS_OR_NONE, RoundingMode.FLOOR));
    }

    private static Event opened(Fields fields, Instant at) {
        Optional<Boolean> sound = fields.word("bag", word -> switch (word) {
            case "sound" -> Optional.of(true);
            case "damaged" -> Optional.of(false);
            default -> Optional.empty();
        });
        return new Event.Opened(
                at, fields.object("card").map(HistoryReader::card), fields.instant("cardReadAt"), sound, zone(fields));
    }

    private static HumidityCard card(Fields card) {
        Map<Double, Boolean> spots = new HashMap<>();
        for (String spot : card.names()) {
            Optional<Boolean> dry = card.word(spot, word -> switch (word) {
                case "dry" -> Optional.of(true);
                case "wet" -> Optional.of(false);
                default -> Optional.empty();
            });
            percent(card, spot).ifPresent(percent -> dry.ifPresent(state -> spots.put(percent, state)));
        }
        return new HumidityCard(spots);
    }

    private static Optional<Double> percent(Fields card, String spot) {
        try {
            BigDecimal percent = new BigDecimal(spot);
            if (Range.PERCENT.holds(percent)) {
                return Optional.of(percent.doubleValue());
            }
        } catch (NumberFormatException notANumber) {
            // said below
        }
        card.problem(spot, "is not the humidity of a spot, 0 to 100");
        return Optional.empty();
    }

    static Optional<Zone> zone(Fields fields) {
        return fields.string("zone").map(Zone::new);
    }
}
