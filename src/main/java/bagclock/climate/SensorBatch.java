package bagclock.climate;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.DewPoint;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.readings.ZoneReading;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Readings that a sensor sends: {@code {"readings":[{"zone","at","temperatureC", and one of "rhPercent", "dewPointC",
 * "frostPointC"}]}}.
 *
 * @param problems what is wrong, each with its place in the list from 0; empty for a good batch
 */
record SensorBatch(List<ZoneReading> readings, List<String> problems) {
    /** Readings in one batch at most. */
    static final int MOST = 10_000;

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    private static final String LIST = "readings";
    private static final Set<String> FIELDS =
            Set.of("zone", "at", "temperatureC", "rhPercent", "dewPointC", "frostPointC");

    static SensorBatch read(String text) {
        try {
            JsonNode root = JSON.readTree(text);
            JsonNode list = root.path(LIST);
            if (!root.isObject() || root.size() != 1 || !list.isArray()) {
                return refused("the body must be {\"readings\":[...]}");
            } else if (list.size() > MOST) {
                return refused("more than " + MOST + " readings");
            }
            Reader reader = new Reader();
            list.forEach(reader::take);
            return new SensorBatch(reader.readings, reader.problems);
        } catch (JsonProcessingException notJson) {
            return refused("not JSON");
        }
    }

    private static SensorBatch refused(String problem) {
        return new SensorBatch(List.of(), List.of(problem));
    }

    private static final class Reader {
        private final List<ZoneReading> readings = new ArrayList<>();
        private final List<String> problems = new ArrayList<>();
        private int index = -1;

        void take(JsonNode node) {
            index++;
            int before = problems.size();
            for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
                String name = names.next();
                if (!FIELDS.contains(name)) {
                    problem(name + " is not known");
                }
            }
            String zone = node.path("zone").asText();
            if (zone.isEmpty()) {
                problem("zone is missing");
            }
            Optional<Instant> at = time(node.path("at").asText());
            Optional<Double> celsius = number(node, "temperatureC", -40, 85);
            Optional<RelativeHumidity> humidity = celsius.flatMap(temperature -> humidity(node, temperature));
            if (problems.size() == before) {
                Air air = new Air(new Celsius(celsius.orElseThrow()), humidity.orElseThrow());
                readings.add(new ZoneReading(new Zone(zone), new Reading(at.orElseThrow(), air), index));
            }
        }

        private void problem(String words) {
            problems.add(LIST + "[" + index + "]: " + words);
        }

        private Optional<Instant> time(String text) {
            try {
                return Optional.of(OffsetDateTime.parse(text).toInstant().truncatedTo(ChronoUnit.MILLIS));
            } catch (DateTimeException notATime) {
                problem("at must be ISO 8601 with an offset");
                return Optional.empty();
            }
        }

        private Optional<Double> number(JsonNode node, String name, double least, double most) {
            JsonNode value = node.path(name);
            if (!value.isNumber() || value.asDouble() < least || value.asDouble() > most) {
                problem(name + " must be a number from " + least + " to " + most);
                return Optional.empty();
            }
            return Optional.of(value.asDouble());
        }

        private Optional<RelativeHumidity> humidity(JsonNode node, double celsius) {
            List<String> said = FIELDS.stream()
                    .filter(name -> isHumidity(name) && node.has(name))
                    .toList();
            if (said.size() != 1) {
                problem("one of rhPercent, dewPointC, frostPointC must be given");
                return Optional.empty();
            }
            String name = said.get(0);
            if (name.equals("rhPercent")) {
                return number(node, name, 0, 105).map(value -> new RelativeHumidity(Math.min(value, 100)));
            }
            return number(node, name, -100, celsius).map(value -> {
                Celsius temperature = new Celsius(celsius);
                Celsius point = new Celsius(value);
                return name.equals("frostPointC")
                        ? DewPoint.humidityByFrost(temperature, point)
                        : DewPoint.humidity(temperature, point);
            });
        }

        private static boolean isHumidity(String name) {
            return name.equals("rhPercent") || name.endsWith("PointC");
        }
    }
}
