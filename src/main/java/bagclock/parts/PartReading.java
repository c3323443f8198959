package bagclock.parts;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.parts.Numbers.Range;
import bagclock.register.PartType;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Reads a part type from its texts by column; every fault is named, not the first alone. */
final class PartReading {
    static final int LONGEST = 80;
    static final int LONGEST_SENTENCE = 200;
    static final int LONGEST_REVISION = 40;

    private static final int MILLIMETRE_DIGITS = 6;

    private final Map<Column, String> texts;
    private final List<Fault> faults = new ArrayList<>();

    private PartReading(Map<Column, String> texts) {
        this.texts = texts;
    }

    /**
     * What was read.
     *
     * @param type empty if there are faults
     */
    record Read(Optional<PartType> type, List<Fault> faults) {}

    /** Reads; a column that is not there counts as empty. */
    static Read of(Map<Column, String> texts) {
        PartReading reading = new PartReading(texts);
        String number = reading.required();
        String maker = reading.text(Column.MAKER, LONGEST);
        String description = reading.text(Column.DESCRIPTION, LONGEST_SENTENCE);
        PartType.Source source = new PartType.Source(
                reading.text(Column.DOCUMENT, LONGEST_SENTENCE), reading.text(Column.REVISION, LONGEST_REVISION));
        Part part = reading.part();
        reading.faults.addAll(Impossible.in(part));
        return reading.faults.isEmpty()
                ? new Read(Optional.of(new PartType(number, maker, description, source, part)), List.of())
                : new Read(Optional.empty(), List.copyOf(reading.faults));
    }

    private Part part() {
        return new Part(
                ratings(),
                body(),
                maker(),
                celsius(Column.BAKE_LIMIT),
                carrier(),
                new Part.Prior(
                        number(Column.BAKED_BEFORE, Range.HOURS_OR_NONE)
                                .map(Hours::raised)
                                .orElse(Duration.ZERO),
                        count(Column.BAKES_BEFORE).orElse(0),
                        count(Column.PASSES_BEFORE).orElse(0)));
    }

    private String entered(Column column) {
        return texts.getOrDefault(column, "").strip();
    }

    private void refuse(Column column, Reason reason, Object... parts) {
        faults.add(new Fault(column, Refusal.of(reason, parts)));
    }

    private String required() {
        String number = text(Column.NUMBER, LONGEST);
        if (number.isEmpty()) {
            refuse(Column.NUMBER, Reason.TEXT_MISSING, Column.NUMBER);
        }
        return number.isEmpty() ? "?" : number;
    }

    private String text(Column column, int longest) {
        String text = entered(column);
        if (text.length() > longest) {
            refuse(column, Reason.TEXT_TOO_LONG, longest);
        } else if (text.chars().anyMatch(Character::isISOControl)) {
            refuse(column, Reason.TEXT_UNPRINTABLE);
        }
        return text;
    }

    private List<Rating> ratings() {
        List<Rating> ratings = new ArrayList<>();
        ratings.add(new Rating(level(), celsius(Column.PEAK)));
        ratings.addAll(entries(Column.MORE_RATINGS, Entries::rating, Entries.MOST_RATINGS));
        return ratings;
    }

    private Optional<Level> level() {
        String text = Entries.levelCode(entered(Column.LEVEL));
        Optional<Level> level = Level.parse(text);
        if (level.isEmpty() && !text.isEmpty() && !text.equals(PartWriting.UNKNOWN_LEVEL)) {
            String known = Arrays.stream(Level.values()).map(Level::code).collect(Collectors.joining(", "));
            refuse(Column.LEVEL, Reason.WORD_UNKNOWN, entered(Column.LEVEL), known);
        }
        return level;
    }

    private Body body() {
        return new Body(
                kind(),
                millimetres(Column.THICKNESS),
                millimetres(Column.LENGTH),
                millimetres(Column.WIDTH),
                flag(Column.STACKED_DIE),
                flag(Column.BLOCKING_PLANES),
                flag(Column.LEAD_FREE));
    }

    private BodyKind kind() {
        String text = entered(Column.BODY).toLowerCase(Locale.ROOT);
        if (text.isEmpty() || text.equals(BodyKind.UNKNOWN.code())) {
            return BodyKind.UNKNOWN;
        }
        return BodyKind.parse(text).orElseGet(() -> {
            String known = Arrays.stream(BodyKind.values()).map(BodyKind::code).collect(Collectors.joining(", "));
            refuse(Column.BODY, Reason.WORD_UNKNOWN, entered(Column.BODY), known);
            return BodyKind.UNKNOWN;
        });
    }

    private MakerRules maker() {
        List<MakerDerating.Cell> cells = entries(Column.DERATING, Entries::cell, Entries.MOST_CELLS);
        return new MakerRules(
                number(Column.FLOOR_LIFE, Range.HOURS).map(Hours::floored),
                cells.isEmpty() ? Optional.empty() : Optional.of(new MakerDerating(cells)),
                asInt(count(Column.SHELF)),
                entries(Column.BAKES, Entries::bake, Entries.MOST_BAKES),
                flag(Column.TABLE_TOO).orElse(false),
                number(Column.USE_WITHIN, Range.HOURS).map(Hours::floored),
                asInt(count(Column.MOST_BAKES)),
                count(Column.MOST_PASSES).orElse(MakerRules.USUAL_REFLOW_PASSES));
    }

    private <T> List<T> entries(Column column, Entries.Parser<T> parser, int most) {
        List<T> read = new ArrayList<>();
        List<String> entries = Entries.split(entered(column));
        if (entries.size() > most) {
            refuse(column, Reason.TOO_MANY_ENTRIES, most);
            return read;
        }
        for (String entry : entries) {
            taken(column, parser.parse(entry)).ifPresent(read::add);
        }
        return read;
    }

    private CarrierLimit carrier() {
        String text = entered(Column.CARRIER);
        if (text.equalsIgnoreCase(PartWriting.NO_CARRIER)) {
            return new CarrierLimit.None();
        }
        return celsius(Column.CARRIER).<CarrierLimit>map(CarrierLimit.Of::new).orElse(new CarrierLimit.Unknown());
    }

    private Optional<Boolean> flag(Column column) {
        String text = entered(column).toLowerCase(Locale.ROOT);
        if (text.equals(PartWriting.YES) || text.equals(PartWriting.NO)) {
            return Optional.of(text.equals(PartWriting.YES));
        } else if (!text.isEmpty() && !text.equals(PartWriting.UNKNOWN_LEVEL)) {
            refuse(column, Reason.WORD_UNKNOWN, entered(column), PartWriting.YES + ", " + PartWriting.NO);
        }
        return Optional.empty();
    }

    private Optional<Millimetres> millimetres(Column column) {
        Optional<BigDecimal> value = number(column, Range.MILLIMETRES);
        if (value.filter(mm -> mm.stripTrailingZeros().scale() > MILLIMETRE_DIGITS)
                .isPresent()) {
            refuse(column, Reason.TOO_MANY_DECIMALS, entered(column), MILLIMETRE_DIGITS);
            return Optional.empty();
        }
        return value.map(Millimetres::new);
    }

    private Optional<Celsius> celsius(Column column) {
        return number(column, Range.CELSIUS).map(value -> new Celsius(value.doubleValue()));
    }

    private Optional<BigDecimal> number(Column column, Range range) {
        String text = entered(column);
        return text.isEmpty() ? Optional.empty() : taken(column, Numbers.parse(text, range));
    }

    private Optional<Integer> count(Column column) {
        String text = entered(column);
        return text.isEmpty() ? Optional.empty() : taken(column, Numbers.whole(text, Range.COUNT));
    }

    private static OptionalInt asInt(Optional<Integer> count) {
        return count.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private <T> Optional<T> taken(Column column, Outcome<T> outcome) {
        return outcome.fold(Optional::of, refusals -> {
            refusals.forEach(refusal -> faults.add(new Fault(column, refusal)));
            return Optional.empty();
        });
    }
}
