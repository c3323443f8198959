package bagclock.scan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Collects what the fields of one label say. For one reading. */
final class Facts {
    private static final Pattern QUANTITY = Pattern.compile("0*(\\d{1,9})([A-Z]{3}\\d{0,3})?");
    private static final Set<Fact> SINGLE = EnumSet.of(Fact.PART_NUMBER, Fact.LOT, Fact.QUANTITY, Fact.LEVEL);

    private final List<Found> found = new ArrayList<>();
    private final Set<Flag> flags = EnumSet.noneOf(Flag.class);

    void add(Fact fact, String value, String from) {
        Found one = new Found(fact, value, from);
        if (!value.isEmpty() && !found.contains(one)) {
            found.add(one);
        }
    }

    void flag(Flag flag) {
        flags.add(flag);
    }

    List<Found> found() {
        return found;
    }

    Set<Flag> flags() {
        Set<Flag> all = EnumSet.noneOf(Flag.class);
        all.addAll(flags);
        all.addAll(conflicts(found));
        return all;
    }

    static Set<Flag> conflicts(List<Found> found) {
        boolean differ = SINGLE.stream()
                .anyMatch(fact -> found.stream()
                                .filter(one -> one.fact() == fact)
                                .map(Found::value)
                                .distinct()
                                .count()
                        > 1);
        return differ ? EnumSet.of(Flag.SEVERAL_VALUES) : EnumSet.noneOf(Flag.class);
    }

    /** Whole pieces, without leading zeros and unit; of other units nothing. */
    void quantity(String text, String from) {
        Matcher quantity = QUANTITY.matcher(text);
        boolean pieces = quantity.matches()
                && (quantity.group(2) == null || quantity.group(2).startsWith("NAR"));
        String number = pieces ? quantity.group(1) : "0";
        if (number.matches("0+")) {
            flag(Flag.QUANTITY_UNREADABLE);
        } else {
            add(Fact.QUANTITY, number, from);
        }
    }

    void dateCode(String code, Optional<String> dated, String from) {
        add(Fact.DATE_CODE, code, from);
        dated.ifPresent(date -> add(Fact.DATED, date, from));
        if (dated.isEmpty() && !code.matches("N/T|MIXED")) {
            flag(Flag.NO_SUCH_WEEK);
        }
    }

    void date(Fact fact, Optional<String> date, String from) {
        date.ifPresentOrElse(day -> add(fact, day, from), () -> flag(Flag.DATE_UNREADABLE));
    }

    void level(String text, String from) {
        Moisture.level(text).ifPresentOrElse(level -> add(Fact.LEVEL, level, from), () -> flag(Flag.LEVEL_UNREADABLE));
    }

    /** Level, peak, floor life and seal date in one field. */
    void triple(String text, String from) {
        Matcher triple = Moisture.TRIPLE.matcher(text);
        if (!triple.matches() || !Moisture.fits(triple.group(1), triple.group(3))) {
            flag(Flag.LEVEL_UNREADABLE);
            return;
        }
        level(triple.group(1), from);
        add(Fact.PEAK, triple.group(2), from);
        add(Fact.LIFE, triple.group(3), from);
        date(Fact.SEALED_ON, Dates.monthFirst(triple.group(4)), from);
    }

    /** Level and peak for each solder process. */
    void pairs(String text, String from) {
        for (String pair : text.split("-")) {
            level(pair.substring(0, pair.indexOf('/')), from);
            add(Fact.PEAK, pair.substring(pair.indexOf('/') + 1), from);
        }
    }
}
