package bagclock.ledger;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.CarrierLimit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Acts as JSON. */
final class ActJson {
    private static final String QUANTITY = "quantity";
    private static final String NOTES = "notes";
    private static final String ORIGIN = "origin";
    private static final String PART_TYPE = "partType";
    private static final String CARRIER = "carrierMaxC";
    private static final String NO_CARRIER = "none";
    private static final String OTHERS = "others";
    private static final String BOARDS = "boards";
    private static final String ENDED_AT = "endedAt";
    private static final String TEMPERATURE = "temperatureC";
    private static final String TIME = "time";
    private static final String OVEN = "oven";

    private static final Map<Class<? extends Act>, String> WORDS = Map.of(
            Act.Received.class, "received",
            Act.SplitOff.class, "split-off",
            Act.SplitFrom.class, "split-from",
            Act.Joined.class, "joined",
            Act.JoinedInto.class, "joined-into",
            Act.UsedUp.class, "used-up",
            Act.PutAt.class, "put-at",
            Act.BakedElsewhere.class, "baked-elsewhere",
            Act.Released.class, "released",
            Act.TakenBack.class, "taken-back");

    private ActJson() {}

    static String word(Act act) {
        String word = WORDS.get(act.getClass());
        if (word == null) {
            throw new IllegalArgumentException("no word for " + act);
        }
        return word;
    }

    static void write(Act act, ObjectNode json) {
        if (act instanceof Act.Received received) {
            writeReceived(received, json);
        } else if (act instanceof Act.Happened happened) {
            EventJson.write(happened.event(), json);
            writeNotes(happened.notes(), json);
        } else if (act instanceof Act.UsedUp used) {
            json.put(QUANTITY, used.quantity()).put("workOrder", used.workOrder());
            ArrayNode boards = json.putArray(BOARDS);
            used.boards().forEach(boards::add);
        } else if (act instanceof Act.Released released) {
            writeNotes(released.notes(), json);
        } else {
            writeOther(act, json);
        }
    }

    private static void writeReceived(Act.Received received, ObjectNode json) {
        json.put(PART_TYPE, received.partType()).put(QUANTITY, received.quantity());
        writeCarrier(received.carrier(), json);
        ObjectNode origin = json.putObject(ORIGIN).put("event", EventJson.word(received.origin()));
        EventJson.write(received.origin(), origin);
        writeNotes(received.notes(), json);
    }

    private static void writeOther(Act act, ObjectNode json) {
        if (act instanceof Act.SplitOff split) {
            json.put("child", split.child()).put(QUANTITY, split.quantity());
        } else if (act instanceof Act.SplitFrom from) {
            json.put("parent", from.parent()).put("parentSeq", from.parentSeq()).put(QUANTITY, from.quantity());
        } else if (act instanceof Act.Joined joined) {
            json.put(QUANTITY, joined.quantity());
            ArrayNode others = json.putArray(OTHERS);
            joined.others().forEach(o -> others.addObject().put("tag", o.tag()).put("seq", o.seq()));
        } else if (act instanceof Act.JoinedInto into) {
            json.put("keeper", into.keeper());
        } else if (act instanceof Act.PutAt put) {
            json.put("place", put.placeCode());
        } else if (act instanceof Act.BakedElsewhere baked) {
            json.put(ENDED_AT, baked.endedAt().toString())
                    .put(TEMPERATURE, baked.temperature().degrees())
                    .put(TIME, baked.time().toString())
                    .put(OVEN, baked.oven());
        }
    }

    private static void writeNotes(Map<String, String> notes, ObjectNode json) {
        if (!notes.isEmpty()) {
            ObjectNode object = json.putObject(NOTES);
            new TreeMap<>(notes).forEach(object::put);
        }
    }

    static void writeCarrier(CarrierLimit limit, ObjectNode json) {
        limit.borne().ifPresent(degrees -> json.put(CARRIER, degrees.degrees()));
        if (limit instanceof CarrierLimit.None) {
            json.put(CARRIER, NO_CARRIER);
        }
    }

    static CarrierLimit carrier(JsonNode json) {
        JsonNode value = json.path(CARRIER);
        if (value.isNumber()) {
            return new CarrierLimit.Of(new Celsius(value.asDouble()));
        }
        return value.isTextual() ? new CarrierLimit.None() : new CarrierLimit.Unknown();
    }

    static Act read(String word, JsonNode json) {
        return EventJson.knows(word)
                ? new Act.Happened(EventJson.read(word, json), notes(json))
                : readOther(word, json);
    }

    private static Act readOther(String word, JsonNode json) {
        return switch (word) {
            case "baked-elsewhere" -> bakedElsewhere(json);
            case "received" -> received(json);
            case "split-off" -> new Act.SplitOff(json.path("child").asText(), quantity(json));
            case "split-from" ->
                new Act.SplitFrom(
                        json.path("parent").asText(), json.path("parentSeq").asInt(), quantity(json));
            case "joined" -> new Act.Joined(others(json), quantity(json));
            case "joined-into" -> new Act.JoinedInto(json.path("keeper").asText());
            case "used-up" ->
                new Act.UsedUp(quantity(json), json.path("workOrder").asText(), boards(json));
            default -> readRest(word, json);
        };
    }

    private static Act readRest(String word, JsonNode json) {
        return switch (word) {
            case "put-at" -> new Act.PutAt(json.path("place").asText());
            case "released" -> new Act.Released(notes(json));
            case "taken-back" -> new Act.TakenBack();
            default -> throw new IllegalStateException("no act has the word " + word);
        };
    }

    private static Act received(JsonNode json) {
        JsonNode origin = json.path(ORIGIN);
        return new Act.Received(
                EventJson.read(origin.path("event").asText(), origin),
                json.path(PART_TYPE).asText(),
                quantity(json),
                carrier(json),
                notes(json));
    }

    private static Act bakedElsewhere(JsonNode json) {
        return new Act.BakedElsewhere(
                Instant.parse(json.path(ENDED_AT).asText()),
                new Celsius(json.path(TEMPERATURE).asDouble()),
                Duration.parse(json.path(TIME).asText()),
                json.path(OVEN).asText());
    }

    private static long quantity(JsonNode json) {
        return json.path(QUANTITY).asLong();
    }

    private static Map<String, String> notes(JsonNode json) {
        Map<String, String> notes = new HashMap<>();
        json.path(NOTES)
                .properties()
                .forEach(note -> notes.put(note.getKey(), note.getValue().asText()));
        return notes;
    }

    private static List<Act.Joined.Other> others(JsonNode json) {
        List<Act.Joined.Other> others = new ArrayList<>();
        json.path(OTHERS)
                .forEach(other -> others.add(new Act.Joined.Other(
                        other.path("tag").asText(), other.path("seq").asInt())));
        return others;
    }

    private static List<String> boards(JsonNode json) {
        List<String> boards = new ArrayList<>();
        json.path(BOARDS).forEach(board -> boards.add(board.asText()));
        return boards;
    }
}
