package bagclock.scan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Codes of makers and distributors that follow no standard: each is known by its whole shape. */
final class Shapes {
    private static final List<Shape> ALL = List.of(
            new Shape("\\{(?=.*pc:)(?=.*pm:).*\\}", Shapes::braces),
            new Shape("QTY:\\d+ PN:\\S+ .*", Shapes::words),
            new Shape("P\\S+ 1P\\S+ .*", Shapes::blanks),
            new Shape("1P([^,]+),Q(\\d+),1T([^,]+),(\\d\\d/\\d\\d),([A-Z]{2})", Shapes::commas),
            new Shape(
                    "UID(?:.*?)PID(?:.*?)TIM.*?SPL.*?LID.*?SPN(.+?)QTY(\\d+)DCD(\\w*?)MSD(\\w*?)COO([A-Z]*?)ESD.*ROH.*SER.*",
                    Shapes::tokens),
            new Shape("(?=.{38}$)(\\S{6,18}) +(\\d{6})(\\d{4})([A-Z]\\d{4}[A-Z])\\d{3}", Shapes::columns),
            new Shape("(\\w{7})/(CL\\w{5,18})/(\\d{4})/(\\d{7})", Shapes::slashes),
            new Shape(";;([^;]+);([^;]+);(\\d+);[^;]*;[^;]*;(\\d{4});MADE IN .+", Shapes::semicolons),
            new Shape("3N1(\\S+) (\\d+)", Shapes::twoWords));

    private static final Set<String> TAGS = Set.of("UID", "PID", "SPN", "QTY", "DCD", "MSD", "COO");

    private Shapes() {}

    /** A shape and what its parts say. */
    private record Shape(Pattern pattern, BiConsumer<Matcher, Facts> reader) {
        Shape(String pattern, BiConsumer<Matcher, Facts> reader) {
            this(Pattern.compile(pattern), reader);
        }
    }

    /** Notes what the text says; false if it has none of the shapes. */
    static boolean read(String text, Facts facts) {
        for (Shape shape : ALL) {
            Matcher matcher = shape.pattern().matcher(text);
            if (matcher.matches()) {
                facts.flag(Flag.BY_SHAPE);
                shape.reader().accept(matcher, facts);
                return true;
            }
        }
        return false;
    }

    /** The text without order numbers. */
    static String withoutOrders(String text) {
        return text.replaceAll("(pbn:|on:|PO:)[^,}\\s]*", "$1").replaceAll("(?<=\\s)K\\S+", "K");
    }

    private static Optional<String> after(String text, String pattern) {
        Matcher value = Pattern.compile(pattern).matcher(text);
        return value.find() ? Optional.of(value.group(1)) : Optional.empty();
    }

    private static void braces(Matcher text, Facts facts) {
        String all = text.group();
        after(all, "[{,]pm:([^,}]+)").ifPresent(value -> facts.add(Fact.PART_NUMBER, value, "pm"));
        after(all, "[{,]pc:([^,}]+)").ifPresent(value -> facts.add(Fact.ORDER_CODE, value, "pc"));
        after(all, "[{,]qty:([^,}]+)").ifPresent(value -> facts.quantity(value, "qty"));
    }

    private static void words(Matcher text, Facts facts) {
        String all = text.group();
        after(all, "(?:^| )MPN:(\\S+)").ifPresent(value -> facts.add(Fact.PART_NUMBER, value, "MPN"));
        after(all, "(?:^| )PN:(\\S+)").ifPresent(value -> facts.add(Fact.ORDER_CODE, value, "PN"));
        after(all, "(?:^| )QTY:(\\S+)").ifPresent(value -> facts.quantity(value, "QTY"));
        after(all, "(?:^| )CoO:(\\S+)").ifPresent(value -> facts.add(Fact.COUNTRY, value, "CoO"));
        after(all, "(?:^| )(RoHS)(?: |$)").ifPresent(value -> facts.add(Fact.SUBSTANCES, value, "RoHS"));
    }

    private static void blanks(Matcher text, Facts facts) {
        for (String field : text.group().split(" +")) {
            if (field.startsWith("1P")) {
                facts.add(Fact.PART_NUMBER, field.substring(2).replaceFirst("^MPN", ""), "1P");
            } else if (field.startsWith("P")) {
                facts.add(Fact.ORDER_CODE, field.substring(1), "P");
            } else if (field.startsWith("Q")) {
                facts.quantity(field.substring(1), "Q");
            }
        }
    }

    private static void commas(Matcher text, Facts facts) {
        facts.add(Fact.PART_NUMBER, text.group(1), "1P");
        facts.quantity(text.group(2), "Q");
        facts.add(Fact.LOT, text.group(3), "1T");
        facts.dateCode(text.group(4), Dates.code(text.group(4)), "4");
        facts.add(Fact.COUNTRY, text.group(5), "5");
    }

    private static void tokens(Matcher text, Facts facts) {
        if (TAGS.stream()
                .anyMatch(tag -> text.group().indexOf(tag) != text.group().lastIndexOf(tag))) {
            facts.flag(Flag.SEPARATORS_DOUBTFUL);
        }
        facts.add(Fact.PART_NUMBER, text.group(1), "SPN");
        facts.quantity(text.group(2), "QTY");
        facts.dateCode(text.group(3), Dates.code(text.group(3)), "DCD");
        facts.level(text.group(4), "MSD");
        facts.add(Fact.COUNTRY, text.group(5), "COO");
    }

    private static void columns(Matcher text, Facts facts) {
        facts.add(Fact.PART_NUMBER, text.group(1), "1");
        facts.quantity(text.group(2), "2");
        facts.dateCode(text.group(3), Dates.code(text.group(3)), "3");
        facts.add(Fact.LOT, text.group(4), "4");
    }

    private static void slashes(Matcher text, Facts facts) {
        facts.add(Fact.LOT, text.group(1), "1");
        facts.add(Fact.PART_NUMBER, text.group(2), "2");
        facts.dateCode(text.group(3), Dates.code(text.group(3)), "3");
        facts.quantity(text.group(4), "4");
    }

    private static void semicolons(Matcher text, Facts facts) {
        facts.add(Fact.PART_NUMBER, text.group(1), "1");
        facts.add(Fact.LOT, text.group(2), "2");
        facts.quantity(text.group(3), "3");
        facts.dateCode(text.group(4), Dates.code(text.group(4)), "6");
    }

    private static void twoWords(Matcher text, Facts facts) {
        facts.add(Fact.PART_NUMBER, text.group(1), "3N1");
        facts.quantity(text.group(2), "2");
    }
}
