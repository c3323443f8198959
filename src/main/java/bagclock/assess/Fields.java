package bagclock.assess;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads one JSON object strictly: every field is asked for by name, what is wrong is noted with its path, and fields
 * that nobody asked for are refused when the reading is done.
 */
final class Fields {
    private static final BigDecimal MS_PER_HOUR = BigDecimal.valueOf(3_600_000);
    private static final Instant EARLIEST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("3000-01-01T00:00:00Z");
    private static final DateTimeFormatter ISO = new DateTimeFormatterBuilder()
            .appendPattern("uuuu-MM-dd'T'HH:mm[:ss")
            .appendFraction(ChronoField.NANO_OF_SECOND, 0, 9, true)
            .appendPattern("][XXX][XX][X]")
            .toFormatter(Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);

    private final JsonNode node;
    private final String path;
    private final List<String> problems;
    private final Set<String> asked = new HashSet<>();

    Fields(JsonNode node, String path, List<String> problems) {
        this.node = node;
        this.path = path;
        this.problems = problems;
        if (!node.isObject()) {
            problem("", "must be an object");
        }
    }

    /** A range of numbers, both ends included unless said otherwise. */
    record Range(String low, String high, boolean lowExcluded) {
        static final Range CELSIUS = new Range("-60", "500", false);
        static final Range PERCENT = new Range("0", "100", false);
        static final Range MILLIMETRES = new Range("0", "100", true);
        static final Range HOURS = new Range("0", "1000000", true);
        static final Range HOURS_OR_NONE = new Range("0", "1000000", false);
        static final Range COUNT = new Range("0", "1000", false);

        boolean holds(BigDecimal value) {
            int low = value.compareTo(new BigDecimal(this.low));
            return (lowExcluded ? low > 0 : low >= 0) && value.compareTo(new BigDecimal(high)) <= 0;
        }

        @Override
        public String toString() {
            return (lowExcluded ? "above " : "") + low + " to " + high;
        }
    }

    private Optional<JsonNode> value(String name) {
        asked.add(name);
        JsonNode value = node.get(name);
        return value == null || value.isNull() ? Optional.empty() : Optional.of(value);
    }

    boolean has(String name) {
        return value(name).isPresent();
    }

    void problem(String name, String text) {
        String field = name.isEmpty() ? path : path.isEmpty() ? name : path + "." + name;
        problems.add((field.isEmpty() ? "the request" : field) + " " + text);
    }

    private <T> Optional<T> wrong(String name, String text) {
        problem(name, text);
        return Optional.empty();
    }

    Optional<BigDecimal> number(String name, Range range) {
        return value(name).flatMap(value -> {
            if (!value.isNumber() || !range.holds(value.decimalValue())) {
                return wrong(name, "must be a number " + range);
            }
            return Optional.of(value.decimalValue());
        });
    }

    <T> Optional<T> number(String name, Range range, Function<Double, T> quantity) {
        return number(name, range).map(BigDecimal::doubleValue).map(quantity);
    }

    OptionalInt count(String name, Range range) {
        Optional<BigDecimal> number = number(name, range);
        boolean whole = number.filter(n -> n.stripTrailingZeros().scale() > 0).isEmpty();
        if (!whole) {
            problem(name, "must be a whole number");
        }
        return whole && number.isPresent() ? OptionalInt.of(number.get().intValue()) : OptionalInt.empty();
    }

    /** Hours as whole milliseconds, rounded as told, at least one where the range excludes none. */
    Optional<Duration> hours(String name, Range range, RoundingMode rounding) {
        return number(name, range).map(hours -> {
            long ms = hours.multiply(MS_PER_HOUR).setScale(0, rounding).longValueExact();
            return Duration.ofMillis(range.lowExcluded() ? Math.max(1, ms) : ms);
        });
    }

    /** Whether the value is a text, whatever it says. */
    boolean textually(String name) {
        return value(name).filter(JsonNode::isTextual).isPresent();
    }

    Optional<String> string(String name) {
        return value(name)
                .flatMap(value -> value.isTextual() ? Optional.of(value.textValue()) : wrong(name, "must be a text"));
    }

    <T> Optional<T> word(String name, Function<String, Optional<T>> parse) {
        return string(name).flatMap(word -> {
            Optional<T> parsed = parse.apply(word);
            return parsed.isPresent() ? parsed : wrong(name, "is not a word of the contract: \"" + word + "\"");
        });
    }

    Optional<Boolean> flag(String name) {
        return value(name)
                .flatMap(value ->
                        value.isBoolean() ? Optional.of(value.booleanValue()) : wrong(name, "must be true or false"));
    }

    Optional<Instant> instant(String name) {
        return string(name).flatMap(text -> {
            try {
                Instant instant = OffsetDateTime.parse(text, ISO).toInstant();
                boolean inRange = !instant.isBefore(EARLIEST) && instant.isBefore(LATEST);
                return inRange
                        ? Optional.of(instant.truncatedTo(ChronoUnit.MILLIS))
                        : wrong(name, "must lie between the years 1900 and 3000");
            } catch (DateTimeException notATime) {
                return wrong(name, "must be an ISO 8601 time with offset, such as 2026-03-05T14:20:00+01:00");
            }
        });
    }

    /** A time that must be there; where it is not a stand-in is returned and the problem is noted. */
    Instant requiredInstant(String name) {
        boolean there = has(name);
        if (!there) {
            problem(name, "is required");
        }
        return instant(name).orElse(EARLIEST);
    }

    Optional<Fields> object(String name) {
        return value(name).map(value -> new Fields(value, inside(name), problems));
    }

    List<Fields> list(String name) {
        Optional<JsonNode> list = value(name);
        if (list.isEmpty()) {
            return List.of();
        } else if (!list.get().isArray()) {
            problem(name, "must be a list");
            return List.of();
        }
        List<Fields> entries = new ArrayList<>();
        for (JsonNode entry : list.get()) {
            entries.add(new Fields(entry, inside(name) + "[" + entries.size() + "]", problems));
        }
        return entries;
    }

    Set<String> names() {
        Set<String> names = new HashSet<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private String inside(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Refuses every field that nobody asked for. */
    void done() {
        node.fieldNames().forEachRemaining(name -> {
            if (!asked.contains(name)) {
                problem(name, "is not a field of the contract");
            }
        });
    }
}
