package bagclock.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fields with data identifiers, and what they mean on this label: the registered meaning of ANSI MH10.8.2 unless the
 * label shows a profile of its own.
 */
final class Fields {
    /** Orders, invoices, packing lists: personal or commercial, and no business of a stockroom's record. */
    static final Set<String> PRIVATE = Set.of("K", "1K", "4K", "10K", "11K", "14K", "16K");

    private static final Map<String, Fact> NAMED = Map.ofEntries(
            Map.entry("1P", Fact.PART_NUMBER),
            Map.entry("P", Fact.CUSTOMER_CODE),
            Map.entry("30P", Fact.ORDER_CODE),
            Map.entry("2P", Fact.REVISION),
            Map.entry("T", Fact.LOT),
            Map.entry("1T", Fact.LOT),
            Map.entry("4L", Fact.COUNTRY),
            Map.entry("1V", Fact.MAKER),
            Map.entry("E", Fact.SUBSTANCES),
            Map.entry("S", Fact.PACKAGE),
            Map.entry("3S", Fact.PACKAGE));

    private static final Pattern FIELD = Pattern.compile("0{0,2}(\\d{0,3}[A-Z])(.*)", Pattern.DOTALL);

    private final List<One> all = new ArrayList<>();
    private final Facts facts;

    /** A field. */
    private record One(String id, String value) {}

    /** How a label differs from the registered meanings. */
    private enum Profile {
        /** None is known. */
        PLAIN,
        /** The label of purchased production parts: level in {@code Z}, restricted substances in {@code 30P}. */
        PRODUCTION_PARTS,
        /** Type in {@code 30P}, a twelve-digit material number in {@code 1P}, level and peak in {@code 31P}. */
        MATERIAL_NUMBER
    }

    private Fields(List<String> fields, Facts facts) {
        this.facts = facts;
        for (String field : fields) {
            Matcher one = FIELD.matcher(field);
            if (one.matches()) {
                all.add(new One(one.group(1), one.group(2).strip()));
            } else {
                facts.flag(Flag.FIELD_UNREADABLE);
            }
        }
    }

    static void read(List<String> fields, Facts facts) {
        Fields label = new Fields(fields, facts);
        Profile profile = label.profile();
        for (One field : label.all) {
            if (!field.value().isEmpty() && !label.special(profile, field)) {
                label.plain(field);
            }
        }
    }

    static boolean isPrivate(String field) {
        Matcher one = FIELD.matcher(field);
        return one.matches() && PRIVATE.contains(one.group(1));
    }

    private Optional<String> value(String id) {
        return all.stream()
                .filter(field -> field.id().equals(id))
                .map(One::value)
                .findFirst();
    }

    private Profile profile() {
        if (value("12S").isPresent()
                || (value("12V").isPresent() && value("10V").isPresent())) {
            return Profile.PRODUCTION_PARTS;
        }
        boolean material =
                value("1P").filter(number -> number.matches("9\\d{11}")).isPresent();
        boolean pairs = value("31P")
                .filter(text -> Moisture.PAIRS.matcher(text).matches())
                .isPresent();
        return value("30P").isPresent() && (material || pairs) ? Profile.MATERIAL_NUMBER : Profile.PLAIN;
    }

    private boolean special(Profile profile, One field) {
        return switch (profile) {
            case PRODUCTION_PARTS -> productionParts(field);
            case MATERIAL_NUMBER -> materialNumber(field);
            case PLAIN -> false;
        };
    }

    private boolean productionParts(One field) {
        switch (field.id()) {
            case "Z" -> facts.level(field.value(), field.id());
            case "30P" -> facts.add(Fact.SUBSTANCES, field.value(), field.id());
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean materialNumber(One field) {
        switch (field.id()) {
            case "1P" -> facts.add(Fact.ORDER_CODE, field.value(), field.id());
            case "30P" -> facts.add(Fact.PART_NUMBER, field.value(), field.id());
            default -> {
                return false;
            }
        }
        return true;
    }

    private void plain(One field) {
        if (!named(field) && !moist(field)) {
            dated(field);
        }
    }

    private boolean named(One field) {
        Fact fact = NAMED.get(field.id());
        if (fact == null) {
            return false;
        }
        boolean isOrderCode = field.id().equals("P") && field.value().endsWith("-ND");
        facts.add(isOrderCode ? Fact.ORDER_CODE : fact, field.value(), field.id());
        return true;
    }

    private boolean moist(One field) {
        switch (field.id()) {
            case "13E" -> facts.level(field.value(), field.id());
            case "3Z" -> {
                if (Moisture.TRIPLE_BEGUN.matcher(field.value()).matches()) {
                    facts.triple(field.value(), field.id());
                }
            }
            case "31P" -> {
                if (Moisture.PAIRS.matcher(field.value()).matches()) {
                    facts.pairs(field.value(), field.id());
                }
            }
            case "Q" -> facts.quantity(field.value(), field.id());
            default -> {
                return false;
            }
        }
        return true;
    }

    private void dated(One field) {
        String value = field.value();
        switch (field.id()) {
            case "9D", "10D", "D" -> facts.dateCode(value, Dates.code(value), field.id());
            case "11D" -> facts.dateCode(value, week(value), field.id());
            case "16D", "6D" -> facts.date(Fact.MADE_ON, day(value, Dates::yearFirst), field.id());
            case "14D" -> facts.date(Fact.EXPIRES_ON, day(value, Dates::yearFirst), field.id());
            case "17D" -> facts.date(Fact.MADE_ON, day(value, Dates::dayFirst), field.id());
            case "15D" -> facts.date(Fact.EXPIRES_ON, day(value, Dates::dayFirst), field.id());
            default -> {
                // A field that is nobody's business here.
            }
        }
    }

    private static Optional<String> week(String value) {
        return value.matches("\\d{6}") ? Dates.week(value) : Optional.empty();
    }

    /** Eight digits and perhaps a qualifier. */
    private static Optional<String> day(String value, Function<String, Optional<String>> reader) {
        return value.matches("\\d{8}.?") ? reader.apply(value.substring(0, 8)) : Optional.empty();
    }
}
