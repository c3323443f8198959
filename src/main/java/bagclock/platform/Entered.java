package bagclock.platform;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A form's fields as they were entered, and what is wrong with them by the name of the field. For one request, not for
 * sharing between threads.
 */
public final class Entered {
    private static final int LONGEST = 400;
    private static final BigDecimal MS_PER_HOUR = BigDecimal.valueOf(3_600_000);

    private final Map<String, String> values = new HashMap<>();
    private final Map<String, String> errors = new LinkedHashMap<>();
    private final Messages messages;
    private final Texts texts;

    private Entered(Texts texts) {
        this.messages = texts.messages();
        this.texts = texts;
    }

    /** What a request sent; of several values of one name all, separated by commas. */
    public static Entered of(Context ctx, Texts texts) {
        Entered entered = new Entered(texts);
        ctx.formParamMap().forEach((name, all) -> entered.values.put(name, String.join(",", all)));
        return entered;
    }

    /** A form that shows these values and was not sent yet. */
    public static Entered of(Map<String, String> values, Texts texts) {
        Entered entered = new Entered(texts);
        entered.values.putAll(values);
        return entered;
    }

    /** What puts refusals into words. */
    public Texts texts() {
        return texts;
    }

    /** The text without outer blanks; empty if nothing was entered. */
    public String text(String name) {
        return values.getOrDefault(name, "").strip();
    }

    /** The chosen values of a field that takes several. */
    public List<String> all(String name) {
        return text(name).isEmpty() ? List.of() : List.of(text(name).split(","));
    }

    /** Whether a box was checked. */
    public boolean isChecked(String name) {
        return !text(name).isEmpty();
    }

    /** The text; refused when it is empty or longer than 400 characters. */
    public String required(String name) {
        String text = text(name);
        if (text.isEmpty()) {
            refuse(name, messages.text("entered.missing"));
        } else if (text.length() > LONGEST) {
            refuse(name, messages.text("entered.long", LONGEST));
        }
        return text;
    }

    /** The text, which may be empty; refused when it is longer. */
    public String atMost(String name, int longest) {
        String text = text(name);
        if (text.length() > longest) {
            refuse(name, messages.text("entered.long", longest));
        }
        return text;
    }

    /** A number from least to most, both included; with point or comma. Empty and refused otherwise. */
    public Optional<Double> number(String name, double least, double most) {
        return required(name).isEmpty() ? Optional.empty() : numberOrNone(name, least, most);
    }

    /** As {@link #number}, but nothing entered is no fault. */
    public Optional<Double> numberOrNone(String name, double least, double most) {
        String text = text(name).replace(',', '.');
        if (text.isEmpty()) {
            return Optional.empty();
        } else if (!text.matches("[+-]?\\d{1,9}(\\.\\d{0,9})?")) {
            refuse(name, messages.text("entered.number"));
            return Optional.empty();
        }
        double value = Double.parseDouble(text);
        if (value < least || value > most) {
            refuse(name, messages.text("entered.range", texts.number(least), texts.number(most)));
            return Optional.empty();
        }
        return Optional.of(value);
    }

    /**
     * Hours from least to most, as a time.
     *
     * @param whole makes the milliseconds whole: down what is granted, up what is used
     */
    public Optional<Duration> hours(String name, double least, double most, DoubleUnaryOperator whole) {
        return number(name, least, most).map(hours -> ofHours(hours, whole));
    }

    /** As {@link #hours}, but nothing entered is no fault. */
    public Optional<Duration> hoursOrNone(String name, double least, double most, DoubleUnaryOperator whole) {
        return numberOrNone(name, least, most).map(hours -> ofHours(hours, whole));
    }

    /** Decimal, as it was typed: 2.3 h are 8,280,000 ms, and not a part of one less. */
    private static Duration ofHours(double hours, DoubleUnaryOperator whole) {
        double ms = BigDecimal.valueOf(hours).multiply(MS_PER_HOUR).doubleValue();
        return Duration.ofMillis((long) whole.applyAsDouble(ms));
    }

    /** A whole number from least to most. */
    public Optional<Integer> count(String name, int least, int most) {
        Optional<Double> value = number(name, least, most);
        if (value.filter(number -> number % 1 != 0).isPresent()) {
            refuse(name, messages.text("entered.whole"));
            return Optional.empty();
        }
        return value.map(Double::intValue);
    }

    /** A moment that is past or present. */
    public Optional<Instant> pastTime(String name, Instant now) {
        Optional<Instant> at = time(name);
        if (at.filter(moment -> moment.isAfter(now)).isPresent()) {
            refuse(name, messages.text("entered.future", texts.at(now)));
            return Optional.empty();
        }
        return at;
    }

    /** A moment. */
    public Optional<Instant> time(String name) {
        if (required(name).isEmpty()) {
            return Optional.empty();
        }
        Optional<Instant> at = texts.parseField(text(name));
        if (at.isEmpty()) {
            refuse(name, messages.text("entered.time"));
        }
        return at;
    }

    /** Notes what is wrong with a field; the first fault of a field stands. */
    public void refuse(String name, String words) {
        errors.putIfAbsent(name, words);
    }

    /** Whether something is wrong. */
    public boolean isRefused() {
        return !errors.isEmpty();
    }

    /** What is wrong with this field; empty for nothing. */
    public String error(String name) {
        return errors.getOrDefault(name, "");
    }

    /** The field as a page shows it. */
    public Field field(String name, String label, String hint) {
        return new Field(name, label, hint, values.getOrDefault(name, ""), error(name));
    }

    /** The field as a page shows it, without a hint. */
    public Field field(String name, String label) {
        return field(name, label, "");
    }
}
