package bagclock.scan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a maker's or distributor's label. What can be read in two ways is not decided here. */
public final class Decoder {
    private static final int LONGEST = 2000;
    private static final int MOST_CHOICES = 6;
    private static final Pattern SINGLE = Pattern.compile("(1P|Q(?=\\d+$)|1T|9D|10D|16D|14D|13E|4L|3S)[^\\x1d\\x1e]+");
    private static final Pattern AGAIN = Pattern.compile(">?\\[\\)>?.?0[56]");
    private static final String NEXT = "(?=30P|1P|2P|1?[0146]?K|9D|10D|16D|14D|1T|4L|Q\\d|1[1-5]Z|20Z|$)";

    private Decoder() {}

    /** Reads one scan as it arrived. */
    public static Reading read(String received) {
        if (received.isBlank() || received.length() > LONGEST) {
            return Reading.refused(Flag.NOT_A_LABEL);
        }
        Facts facts = new Facts();
        Tidied tidied = Tidied.of(received);
        tidied.flags().forEach(facts::flag);
        List<String> copies = copies(tidied.text());
        if (copies.size() > 1 && copies.stream().map(Decoder::bare).distinct().count() > 1) {
            return Reading.refused(Flag.TWO_LABELS);
        } else if (copies.size() > 1) {
            facts.flag(Flag.DOUBLED);
        }
        return read(copies.get(0), facts);
    }

    /** One label from several codes, one a line. */
    public static Reading readAll(String lines) {
        return lines.strip()
                .lines()
                .map(Decoder::read)
                .reduce(Reading::with)
                .orElseGet(() -> Reading.refused(Flag.NOT_A_LABEL));
    }

    /** The same scan as text that a page can carry: without orders and names unless that would change its reading. */
    public static String portable(String received) {
        Reading reading = read(received);
        Reading again = read(reading.kept());
        boolean same = again.found().equals(reading.found()) && again.standing() == reading.standing();
        return same ? reading.kept() : visible(received);
    }

    /** The scan with pictures in place of its controls. */
    public static String visible(String received) {
        return Tidied.trimmed(received)
                .replace('\u001d', '\u241d')
                .replace('\u001e', '\u241e')
                .replace('\u0004', '\u2404')
                .replace('\0', '\u2404')
                .replaceAll("\\p{Cntrl}", " ");
    }

    /** A label that was scanned twice without a pause arrives as one text. */
    private static List<String> copies(String text) {
        Matcher header = Envelope.HEADER.matcher(text);
        Matcher again = AGAIN.matcher(text);
        if (header.lookingAt() && again.find(header.end())) {
            return List.of(text.substring(0, again.start()), text.substring(again.start()));
        }
        int half = text.length() / 2;
        boolean twice = half > 4 && bare(text.substring(0, half)).equals(bare(text.substring(text.length() - half)));
        String one = text.substring(0, half);
        return twice ? List.of(one, one) : List.of(text);
    }

    private static String bare(String text) {
        return Tidied.trimmed(text);
    }

    private static Reading read(String text, Facts facts) {
        if (Envelope.isOne(text)) {
            return enveloped(text, facts);
        } else if (text.indexOf(Tidied.GS) >= 0) {
            facts.flag(Flag.NO_HEADER);
            List<String> fields = List.of(text.split("[\\x1d\\x1e\\x04]+"));
            Fields.read(fields, facts);
            return reading(facts, kept(fields));
        }
        List<String> lines = List.of(text.split("[\\r\\n]+"));
        if (lines.stream().allMatch(line -> SINGLE.matcher(line).matches()) && !text.contains(",")) {
            Fields.read(lines, facts);
            return reading(facts, kept(lines));
        }
        return Shapes.read(text, facts)
                ? reading(facts, Shapes.withoutOrders(text))
                : Reading.refused(Flag.NOT_A_LABEL);
    }

    private static Reading enveloped(String text, Facts facts) {
        Envelope envelope = Envelope.of(text);
        envelope.flags().forEach(facts::flag);
        if (envelope.flags().contains(Flag.NO_SEPARATORS)) {
            return new Reading(
                    List.of(), facts.flags(), choices(envelope.fields().get(0)), "");
        }
        Fields.read(envelope.fields(), facts);
        String end = envelope.flags().contains(Flag.NO_END) ? "" : "\u241e\u2404";
        return reading(facts, "[)>\u241e06\u241d" + kept(envelope.fields()) + end);
    }

    private static Reading reading(Facts facts, String kept) {
        boolean isMapped = facts.flags().contains(Flag.CHARACTERS_MAPPED);
        return Reading.of(facts.found(), facts.flags(), isMapped ? CharacterMap.MARK + kept : kept);
    }

    private static String kept(List<String> fields) {
        List<String> open = new ArrayList<>(fields);
        open.removeIf(Fields::isPrivate);
        return String.join("\u241d", open);
    }

    /** Where the fields run together: every text that could be the part number, or the lot. */
    private static Map<Fact, List<String>> choices(String text) {
        Map<Fact, List<String>> choices = new EnumMap<>(Fact.class);
        choices.put(Fact.PART_NUMBER, possible(text, "1P"));
        choices.put(Fact.LOT, possible(text, "1T"));
        choices.values().removeIf(List::isEmpty);
        return choices;
    }

    private static List<String> possible(String text, String identifier) {
        Set<String> values = new LinkedHashSet<>();
        for (int at = text.indexOf(identifier); at >= 0; at = text.indexOf(identifier, at + 1)) {
            String rest = text.substring(at + identifier.length());
            Matcher next = Pattern.compile(NEXT).matcher(rest);
            while (next.find() && values.size() < MOST_CHOICES) {
                if (next.start() > 0) {
                    values.add(rest.substring(0, next.start()));
                }
            }
        }
        return List.copyOf(values);
    }
}
