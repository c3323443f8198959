package bagclock.ledger;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.Zone;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;

/** Events as JSON; what is not known is left out. */
final class EventJson {
    private static final String AT = "at";
    private static final String ZONE = "zone";
    private static final String SHELF = "shelfMonths";
    private static final String CARD = "card";
    private static final String CARD_READ_AT = "cardReadAt";
    private static final String SOUND = "sound";
    private static final String MAX_RH = "maxRhPercent";
    private static final String DESICCANT = "freshDesiccant";
    private static final String FRESH_CARD = "freshCard";
    private static final String TEMPERATURE = "temperatureC";
    private static final String AT_TEMPERATURE = "atTemperatureMs";
    private static final String PEAK = "peakBodyC";

    private static final Map<Class<? extends Event>, String> WORDS = Map.ofEntries(
            Map.entry(Event.Sealed.class, "sealed"),
            Map.entry(Event.Opened.class, "opened"),
            Map.entry(Event.ToFloor.class, "to-floor"),
            Map.entry(Event.UnknownExposure.class, "unknown-exposure"),
            Map.entry(Event.ToDryStorage.class, "to-dry-storage"),
            Map.entry(Event.Resealed.class, "resealed"),
            Map.entry(Event.BakeStarted.class, "bake-started"),
            Map.entry(Event.BakeEnded.class, "bake-ended"),
            Map.entry(Event.Heated.class, "heated"),
            Map.entry(Event.Mounted.class, "mounted"),
            Map.entry(Event.Removed.class, "removed"),
            Map.entry(Event.Wetted.class, "wetted"),
            Map.entry(Event.CarrierChanged.class, "carrier-changed"));

    private static final Map<String, Function<JsonNode, Event>> READERS = Map.ofEntries(
            Map.entry("sealed", json -> new Event.Sealed(at(json), shelf(json))),
            Map.entry("opened", EventJson::opened),
            Map.entry("to-floor", json -> new Event.ToFloor(at(json), zone(json))),
            Map.entry("unknown-exposure", json -> new Event.UnknownExposure(at(json))),
            Map.entry("to-dry-storage", json -> new Event.ToDryStorage(at(json), humidity(json), zone(json))),
            Map.entry("resealed", EventJson::resealed),
            Map.entry("bake-started", EventJson::bakeStarted),
            Map.entry(
                    "bake-ended",
                    json -> new Event.BakeEnded(at(json), number(json, AT_TEMPERATURE, Duration::ofMillis))),
            Map.entry("heated", json -> new Event.Heated(at(json), celsius(json, PEAK))),
            Map.entry("mounted", json -> new Event.Mounted(at(json), zone(json))),
            Map.entry("removed", json -> new Event.Removed(at(json), zone(json))),
            Map.entry("wetted", json -> new Event.Wetted(at(json))),
            Map.entry("carrier-changed", json -> new Event.CarrierChanged(at(json), ActJson.carrier(json))));

    private EventJson() {}

    /** The word for a kind of event; refuses a join, which is an act of its own. */
    static String word(Event event) {
        String word = WORDS.get(event.getClass());
        if (word == null) {
            throw new IllegalArgumentException("not an event of its own: " + event);
        }
        return word;
    }

    static boolean knows(String word) {
        return READERS.containsKey(word);
    }

    static ObjectNode withoutTime(Event event) {
        ObjectNode json = JsonNodeFactory.instance.objectNode().put("event", word(event));
        write(event, json);
        json.remove(AT);
        return json;
    }

    static void write(Event event, ObjectNode json) {
        json.put(AT, event.at().toString());
        if (event instanceof Event.Sealed sealed) {
            sealed.shelfMonths().ifPresent(months -> json.put(SHELF, months));
        } else if (event instanceof Event.Opened opened) {
            writeOpened(opened, json);
        } else if (event instanceof Event.Resealed resealed) {
            json.put(DESICCANT, resealed.freshDesiccant()).put(FRESH_CARD, resealed.freshCard());
        } else if (event instanceof Event.CarrierChanged changed) {
            ActJson.writeCarrier(changed.limit(), json);
        } else {
            writeHeat(event, json);
        }
    }

    private static void writeHeat(Event event, ObjectNode json) {
        if (event instanceof Event.BakeStarted started) {
            json.put(TEMPERATURE, started.temperature().degrees());
            started.maxHumidity().ifPresent(humidity -> json.put(MAX_RH, humidity.percent()));
        } else if (event instanceof Event.BakeEnded ended) {
            ended.atTemperature().ifPresent(time -> json.put(AT_TEMPERATURE, time.toMillis()));
        } else if (event instanceof Event.Heated heated) {
            heated.peakBody().ifPresent(peak -> json.put(PEAK, peak.degrees()));
        } else {
            writeMove(event, json);
        }
    }

    private static void writeMove(Event event, ObjectNode json) {
        if (event instanceof Event.ToFloor floor) {
            writeZone(floor.zone(), json);
        } else if (event instanceof Event.ToDryStorage storage) {
            storage.maxHumidity().ifPresent(humidity -> json.put(MAX_RH, humidity.percent()));
            writeZone(storage.zone(), json);
        } else if (event instanceof Event.Mounted mounted) {
            writeZone(mounted.zone(), json);
        } else if (event instanceof Event.Removed removed) {
            writeZone(removed.zone(), json);
        }
    }

    private static void writeOpened(Event.Opened opened, ObjectNode json) {
        opened.card().ifPresent(card -> {
            ObjectNode spots = json.putObject(CARD);
            new TreeMap<>(card.spots()).forEach((percent, dry) -> spots.put(percent.toString(), dry));
        });
        opened.cardReadAt().ifPresent(at -> json.put(CARD_READ_AT, at.toString()));
        opened.sound().ifPresent(sound -> json.put(SOUND, sound));
        writeZone(opened.zone(), json);
    }

    private static void writeZone(Optional<Zone> zone, ObjectNode json) {
        zone.ifPresent(z -> json.put(ZONE, z.name()));
    }

    static Event read(String word, JsonNode json) {
        Function<JsonNode, Event> reader = READERS.get(word);
        if (reader == null) {
            throw new IllegalStateException("no event has the word " + word);
        }
        return reader.apply(json);
    }

    private static Instant at(JsonNode json) {
        return Instant.parse(json.path(AT).asText());
    }

    private static OptionalInt shelf(JsonNode json) {
        return json.has(SHELF) ? OptionalInt.of(json.path(SHELF).asInt()) : OptionalInt.empty();
    }

    private static Event opened(JsonNode json) {
        return new Event.Opened(
                at(json),
                json.has(CARD) ? Optional.of(card(json.path(CARD))) : Optional.empty(),
                json.has(CARD_READ_AT)
                        ? Optional.of(Instant.parse(json.path(CARD_READ_AT).asText()))
                        : Optional.empty(),
                json.has(SOUND) ? Optional.of(json.path(SOUND).asBoolean()) : Optional.empty(),
                zone(json));
    }

    private static HumidityCard card(JsonNode json) {
        Map<Double, Boolean> spots = new HashMap<>();
        json.properties()
                .forEach(spot ->
                        spots.put(Double.valueOf(spot.getKey()), spot.getValue().asBoolean()));
        return new HumidityCard(spots);
    }

    private static Event resealed(JsonNode json) {
        return new Event.Resealed(
                at(json),
                json.path(DESICCANT).asBoolean(),
                json.path(FRESH_CARD).asBoolean());
    }

    private static Event bakeStarted(JsonNode json) {
        return new Event.BakeStarted(at(json), celsius(json, TEMPERATURE).orElseThrow(), humidity(json));
    }

    private static Optional<Zone> zone(JsonNode json) {
        return json.has(ZONE) ? Optional.of(new Zone(json.path(ZONE).asText())) : Optional.empty();
    }

    private static Optional<RelativeHumidity> humidity(JsonNode json) {
        return json.has(MAX_RH)
                ? Optional.of(new RelativeHumidity(json.path(MAX_RH).asDouble()))
                : Optional.empty();
    }

    private static Optional<Celsius> celsius(JsonNode json, String name) {
        return json.has(name) ? Optional.of(new Celsius(json.path(name).asDouble())) : Optional.empty();
    }

    private static <T> Optional<T> number(JsonNode json, String name, Function<Long, T> reader) {
        return json.has(name) ? Optional.of(reader.apply(json.path(name).asLong())) : Optional.empty();
    }
}
