package bagclock.parts;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Reads a number with point or comma; refuses what could be read in two ways. */
final class Numbers {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,9}([.,]\\d{0,9})?");
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3},\\d{3}");

    private Numbers() {}

    /** Least and most, and whether the least itself is too little. */
    record Range(long least, long most, boolean above) {
        static final Range CELSIUS = new Range(-60, 500, false);
        static final Range PERCENT = new Range(0, 100, false);
        static final Range MILLIMETRES = new Range(0, 100, true);
        static final Range HOURS = new Range(0, 1_000_000, true);
        static final Range HOURS_OR_NONE = new Range(0, 1_000_000, false);
        static final Range COUNT = new Range(0, 1000, false);

        boolean holds(BigDecimal value) {
            int low = value.compareTo(BigDecimal.valueOf(least));
            return (above ? low > 0 : low >= 0) && value.compareTo(BigDecimal.valueOf(most)) <= 0;
        }
    }

    static Outcome<BigDecimal> parse(String text, Range range) {
        if (!NUMBER.matcher(text).matches()) {
            return Outcome.refused(Refusal.of(Reason.NUMBER_UNREADABLE, text));
        } else if (THOUSANDS.matcher(text).matches()) {
            return Outcome.refused(Refusal.of(Reason.COMMA_UNCLEAR, text));
        }
        BigDecimal value = new BigDecimal(text.replace(',', '.'));
        return range.holds(value)
                ? Outcome.accepted(value)
                : Outcome.refused(Refusal.of(Reason.NUMBER_OUT_OF_RANGE, text, range.least(), range.most()));
    }

    static Outcome<Integer> whole(String text, Range range) {
        return parse(text, range)
                .fold(
                        value -> value.stripTrailingZeros().scale() > 0
                                ? Outcome.refused(Refusal.of(Reason.NUMBER_NOT_WHOLE, text))
                                : Outcome.accepted(value.intValueExact()),
                        refusals -> new Outcome.Refused<>(refusals));
    }
}
