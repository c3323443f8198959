package bagclock.stock;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.ledger.Notes;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.register.LabelName;
import bagclock.register.PartType;
import bagclock.scan.CharacterMap;
import bagclock.scan.Decoder;
import bagclock.scan.Fact;
import bagclock.scan.Found;
import bagclock.scan.Reading;
import bagclock.scan.Standing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The part of the receiving form that a label's scan fills; each value says where it was read. */
final class LabelFields {
    static final String SCAN = "scan";
    /** What this workstation put right; never from the form. */
    static final String MAP = "scannerMap";

    private static final String PART = "labelPart";
    private static final String LOT = "lot";
    private static final String DATE_CODE = "dateCode";
    private static final String LEVEL = "labelLevel";
    private static final String PEAK = "labelPeak";
    private static final String LIFE = "labelLife";
    private static final double LEAST_PEAK_C = 100;
    private static final double MOST_PEAK_C = 400;
    private static final String BETWEEN = ", ";
    private static final String ASKED = "asked";
    private static final String COMPARED = "compared";
    private static final String YES = "yes";

    /** Fields of the form by what fills them. */
    private static final Map<String, Fact> FILLED = Map.of(
            PART,
            Fact.PART_NUMBER,
            LOT,
            Fact.LOT,
            DATE_CODE,
            Fact.DATE_CODE,
            LEVEL,
            Fact.LEVEL,
            PEAK,
            Fact.PEAK,
            LIFE,
            Fact.LIFE,
            "quantity",
            Fact.QUANTITY,
            "sealedAt",
            Fact.SEALED_ON);

    /** What the ledger calls each. */
    private static final Map<String, String> NOTED = Map.of(
            PART,
            Notes.LABEL_PART,
            LOT,
            Notes.LOT,
            DATE_CODE,
            Notes.DATE_CODE,
            LEVEL,
            Notes.LABEL_LEVEL,
            PEAK,
            Notes.LABEL_PEAK,
            LIFE,
            Notes.LABEL_LIFE);

    /** What holds a reading in doubt up. */
    static final List<String> DOUBTS = List.of(ASKED, COMPARED);

    /** What is of one label, and of no other bag. */
    static final List<String> OF_A_LABEL =
            List.of(FieldNames.CODE, SCAN, PART, LOT, DATE_CODE, LEVEL, PEAK, LIFE, ASKED, COMPARED);

    private LabelFields() {}

    /** Part number and lot as the label gives them; empty unless it gives both. */
    static String lot(Map<String, String> values) {
        String part = values.getOrDefault(PART, "").strip();
        String lot = values.getOrDefault(LOT, "").strip();
        return part.isEmpty() || lot.isEmpty() ? "" : part + " " + lot;
    }

    static String typeHint(Optional<LabelMatch> label, Words words) {
        return label.map(match -> match.type().isPresent()
                        ? words.text(
                                "stock.label.type.known",
                                LabelMatch.number(match.reading()).orElse(""))
                        : words.text("stock.label.type.choose"))
                .orElse("");
    }

    /** What stands in the form's fields after a scan. */
    static Map<String, String> values(String scan, LabelMatch match) {
        Reading reading = match.reading();
        Map<String, String> values = new HashMap<>();
        values.put(SCAN, scan);
        FILLED.forEach((field, fact) -> reading.only(fact).ifPresent(value -> values.put(field, value)));
        LabelMatch.number(reading).ifPresent(number -> values.putIfAbsent(PART, number));
        reading.only(Fact.SEALED_ON).ifPresent(day -> values.put("sealedAt", day + "T00:00"));
        match.type().map(PartType::number).ifPresent(number -> values.put("type", number));
        if (reading.standing() == Standing.ASK) {
            values.put(ASKED, YES);
        }
        return values;
    }

    /** The hint of a field that the label filled, before its own. */
    static String hint(String field, Optional<LabelMatch> label, Words words, String own) {
        Fact fact = FILLED.get(field);
        if (label.isEmpty() || fact == null) {
            return own;
        }
        Reading reading = label.get().reading();
        List<String> choices = reading.choices().getOrDefault(fact, List.of());
        if (!choices.isEmpty()) {
            return words.text("stock.label.choices", String.join("  ·  ", choices)) + " " + own;
        }
        return reading.first(fact)
                .filter(found -> reading.only(fact).isPresent())
                .map(found -> words.text("stock.label.from", found.from()) + " " + own)
                .orElse(own)
                .strip();
    }

    static List<Input> inputs(Entered entered, LabelMatch match, Words words) {
        Optional<LabelMatch> label = Optional.of(match);
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.of(entered.field(SCAN, ""), Input.Kind.HIDDEN));
        inputs.add(Input.of(entered.field(ASKED, ""), Input.Kind.HIDDEN));
        inputs.add(Input.of(
                entered.field(PART, words.text("stock.label.part"), hint(PART, label, words, "")), Input.Kind.TEXT));
        inputs.add(Input.of(
                entered.field(LOT, words.text("stock.label.lot"), hint(LOT, label, words, "")), Input.Kind.TEXT));
        inputs.add(Input.of(
                entered.field(DATE_CODE, words.text("stock.label.date-code"), hint(DATE_CODE, label, words, "")),
                Input.Kind.TEXT));
        inputs.add(new Input(
                entered.field(LEVEL, words.text("stock.label.level"), hint(LEVEL, label, words, "")),
                Input.Kind.SELECT,
                levels(words)));
        inputs.add(Input.of(
                entered.field(PEAK, words.text("stock.label.peak"), hint(PEAK, label, words, "")), Input.Kind.NUMBER));
        inputs.add(Input.of(
                entered.field(LIFE, words.text("stock.label.life"), hint(LIFE, label, words, "")), Input.Kind.TEXT));
        if (!entered.text(ASKED).isEmpty()) {
            inputs.add(new Input(
                    entered.field(COMPARED, words.text("stock.label.compared")),
                    Input.Kind.CHOICES,
                    List.of(Choice.of(YES, words.text("stock.label.compared.yes")))));
        }
        return inputs;
    }

    private static List<Choice> levels(Words words) {
        List<Choice> levels = new ArrayList<>();
        levels.add(Choice.of("", words.text("stock.level.not-there")));
        levels.add(Choice.of(Reading.NOT_SENSITIVE, words.text("stock.level.none")));
        for (Level level : Level.values()) {
            levels.add(Choice.of(level.code(), level.code()));
        }
        return levels;
    }

    /** What the label said, for the ledger; a reading in doubt is refused until it was compared. */
    static Map<String, String> read(Entered entered) {
        if (entered.text(SCAN).isEmpty()) {
            return Map.of();
        }
        if (!entered.text(ASKED).isEmpty()) {
            entered.required(COMPARED);
        }
        entered.numberOrNone(PEAK, LEAST_PEAK_C, MOST_PEAK_C);
        Map<String, String> label = new HashMap<>();
        NOTED.forEach((field, note) -> {
            String text = entered.atMost(field, LabelName.LONGEST);
            if (!text.isEmpty()) {
                label.put(note, text);
            }
        });
        Reading reading = Decoder.readAll(entered.text(SCAN));
        // One field can't hold the peaks of a label that gives one for each solder process.
        if (!reading.all(Fact.PEAK).isEmpty()) {
            label.putIfAbsent(Notes.LABEL_PEAK, String.join(BETWEEN, reading.all(Fact.PEAK)));
        }
        reading.only(Fact.PACKAGE)
                .filter(number -> number.length() <= LabelName.LONGEST)
                .ifPresent(number -> label.put(Notes.LABEL_PACKAGE, number));
        String kept = reading.kept();
        if (!kept.isEmpty()) {
            label.put(Notes.SCAN, kept);
            asItCame(kept, entered.text(MAP)).ifPresent(came -> label.put(Notes.SCAN_AS_IT_CAME, came));
        }
        return label;
    }

    /** The peaks that a label gave, the lowest first; without what no peak can be. */
    static List<Celsius> peaks(Map<String, String> label) {
        return Stream.of(label.getOrDefault(Notes.LABEL_PEAK, "").split(BETWEEN))
                .map(text -> text.replace(',', '.'))
                .filter(text -> text.matches("\\d{1,9}(\\.\\d{0,9})?"))
                .map(Double::parseDouble)
                .filter(degrees -> degrees >= LEAST_PEAK_C && degrees <= MOST_PEAK_C)
                .map(Celsius::new)
                .sorted()
                .toList();
    }

    /** Peaks as they are kept, in degrees. */
    static String text(List<Celsius> peaks) {
        return peaks.stream()
                .map(peak ->
                        BigDecimal.valueOf(peak.degrees()).stripTrailingZeros().toPlainString())
                .collect(Collectors.joining(BETWEEN));
    }

    private static Optional<String> asItCame(String kept, String map) {
        String mark = String.valueOf(CharacterMap.MARK);
        return kept.contains(mark)
                ? Optional.of(CharacterMap.parse(map).arrived(kept.replace(mark, "")))
                : Optional.empty();
    }

    /** What was read and what is odd about it. */
    static ActPage.LabelPart part(String scan, LabelMatch match, Words words) {
        Reading reading = match.reading();
        return new ActPage.LabelPart(
                scan,
                reading.standing() == Standing.ASK,
                reading.found().stream().map(found -> line(found, words)).toList(),
                reading.flags().stream()
                        .map(flag -> words.text("stock.flag." + flag.name(), match.before()))
                        .toList());
    }

    private static String line(Found found, Words words) {
        return words.text(
                "stock.label.line", words.text("stock.fact." + found.fact().name()), found.value(), found.from());
    }
}
