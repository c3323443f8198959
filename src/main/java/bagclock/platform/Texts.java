package bagclock.platform;

import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The one place where quantities, durations and moments become words, and a typed moment becomes an {@link Instant}:
 * 24-hour local time of the site with its zone named. Immutable.
 */
public final class Texts {
    private static final DateTimeFormatter NEAR = DateTimeFormatter.ofPattern("EEE HH:mm (z)", Locale.ENGLISH);
    private static final DateTimeFormatter FULL =
            DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm (z)", Locale.ENGLISH);
    private static final DateTimeFormatter FIELD = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ENGLISH);
    private static final Duration SHORT_WAY = Duration.ofDays(6);

    private final ZoneId zone;
    private final Messages messages;

    /** Texts for a site in the given zone. */
    public Texts(ZoneId zone, Messages messages) {
        this.zone = zone;
        this.messages = messages;
    }

    /** The zone that times are shown in. */
    public ZoneId zone() {
        return zone;
    }

    /** The bundle that the words are taken from. */
    public Messages messages() {
        return messages;
    }

    /** For example {@code Thu 5 Mar 2026 14:20 (CET)}; seconds are cut off, so a limit is never shown too late. */
    public String at(Instant moment) {
        return FULL.format(moment.atZone(zone));
    }

    /** For example {@code Thu 14:20 (CET)} when less than six days from now, else with the date. */
    public String at(Instant moment, Instant now) {
        boolean isNear = Duration.between(now, moment).abs().compareTo(SHORT_WAY) < 0;
        return isNear ? NEAR.format(moment.atZone(zone)) : at(moment);
    }

    /**
     * For example {@code 2 days 3 h}, {@code 3 h 20 min}, {@code 45 min}, {@code less than 1 min}: the two largest
     * units, cut off, so that time left is never shown longer than it is.
     *
     * @throws IllegalArgumentException when negative
     */
    public String span(Duration span) {
        if (span.isNegative()) {
            throw new IllegalArgumentException("a span must not be negative, was " + span);
        }
        long days = span.toDays();
        int hours = span.toHoursPart();
        int minutes = span.toMinutesPart();
        if (days > 0) {
            String key = days == 1 ? "span.day" : "span.days";
            return hours == 0 ? messages.text(key, days) : messages.text(key + "-hours", days, hours);
        }
        if (hours > 0) {
            return minutes == 0
                    ? messages.text("span.hours", hours)
                    : messages.text("span.hours-minutes", hours, minutes);
        }
        return minutes == 0 ? messages.text("span.none") : messages.text("span.minutes", minutes);
    }

    /** For example {@code 155.5 h}: hours with one decimal, cut off. */
    public String hours(Duration span) {
        return BigDecimal.valueOf(span.toMillis()).divide(BigDecimal.valueOf(3_600_000), 1, RoundingMode.FLOOR) + " h";
    }

    /** Hours of a floor life that were used, for example {@code 12.35}: to the hundredth, never fewer than they are. */
    public static String usedHours(BigDecimal hours) {
        return hundredths(hours, RoundingMode.CEILING);
    }

    /** Hours that a floor life lasts: to the hundredth, never more than they are. */
    public static String lifeHours(BigDecimal hours) {
        return hundredths(hours, RoundingMode.FLOOR);
    }

    private static String hundredths(BigDecimal hours, RoundingMode mode) {
        return hours.setScale(2, mode).stripTrailingZeros().toPlainString();
    }

    /** For example {@code 125 °C}. */
    public String temperature(Celsius temperature) {
        return plain(temperature.degrees()) + " °C";
    }

    /** For example {@code 60 % RH}. */
    public String humidity(RelativeHumidity humidity) {
        return plain(humidity.percent()) + " % RH";
    }

    /** For example {@code 12.5}: no more digits than it has. */
    public String number(double number) {
        return plain(number);
    }

    /** For example {@code 1.4 mm}. */
    public String length(Millimetres length) {
        return length.value().toPlainString() + " mm";
    }

    /** The words of a refusal; where it would quote a text that nobody entered, they say what is missing. */
    public String refusal(Refusal refusal) {
        Object[] parts = refusal.parts().stream().map(this::part).toArray();
        String key = "refusal." + refusal.reason().name();
        String missing = key + ".missing";
        return messages.text(refusal.parts().contains("") && messages.has(missing) ? missing : key, parts);
    }

    /** A typed part of a message in words; an enum by its own key {@code <Type>.<NAME>} when the bundle has it. */
    public String part(Object part) {
        if (part instanceof Instant moment) {
            return at(moment);
        } else if (part instanceof Duration span) {
            return span.isNegative() ? "-" + span(span.negated()) : span(span);
        } else if (part instanceof Celsius temperature) {
            return temperature(temperature);
        } else if (part instanceof RelativeHumidity humidity) {
            return humidity(humidity);
        } else if (part instanceof Millimetres length) {
            return length(length);
        } else if (part instanceof Enum<?> constant) {
            String key = constant.getDeclaringClass().getSimpleName() + "." + constant.name();
            return messages.has(key) ? messages.text(key) : constant.name();
        }
        return part.toString();
    }

    /** A moment for a {@code datetime} attribute: ISO 8601 in UTC, to the second. */
    public String machine(Instant moment) {
        return moment.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    /** A moment for a {@code datetime-local} field, to the minute. */
    public String field(Instant moment) {
        return FIELD.format(moment.atZone(zone));
    }

    /**
     * Reads a {@code datetime-local} field in the site's zone. Empty when it is no time, or one that the change to
     * summer time leaves out. Of an hour that the zone has twice the first is taken: what was opened earlier has used
     * more of its life.
     */
    public Optional<Instant> parseField(String text) {
        LocalDateTime local;
        try {
            local = LocalDateTime.parse(text.strip());
        } catch (DateTimeParseException notATime) {
            return Optional.empty();
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        return offsets.isEmpty() ? Optional.empty() : Optional.of(local.toInstant(offsets.get(0)));
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
