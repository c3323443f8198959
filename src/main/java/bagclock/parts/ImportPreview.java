package bagclock.parts;

import bagclock.core.standard.Standard;
import bagclock.parts.PartsFile.Effect;
import bagclock.parts.PartsImportPage.BadLine;
import bagclock.parts.PartsImportPage.Explained;
import bagclock.parts.PartsImportPage.Line;
import bagclock.platform.Field;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts what a file would do into words. */
final class ImportPreview {
    private static final int MOST_SHOWN = 50;

    private final PartWords words;

    ImportPreview(PartWords words) {
        this.words = words;
    }

    /** What stands above the lines: why nothing was kept, and what would happen. */
    private record Said(String refusal, String summary) {}

    /** Names what a preview rests on: another plan when somebody altered a part type meanwhile. */
    static String plan(PartsFile file, Map<String, Versioned<PartType>> known) {
        String lines = file.good().stream()
                .map(line -> line.type() + "@"
                        + Optional.ofNullable(known.get(line.type().number()))
                                .map(type -> type.version().number())
                                .orElse(0))
                .collect(Collectors.joining("\n"));
        return lines.length() + "-" + Integer.toHexString(lines.hashCode());
    }

    PartsImportPage empty(String text, String refusal) {
        PartsFile none = new PartsFile(List.of(), List.of(), List.of());
        return page(text, none, new Said(refusal, ""), List.of(), "");
    }

    PartsImportPage page(String text, PartsFile file, String plan, String refusal, Standard standard) {
        List<Line> doubts = file.good().stream()
                .filter(line -> line.effect() != Effect.SAME)
                .flatMap(line -> Doubts.about(line.type(), standard).stream()
                        .map(doubt -> new Line(
                                Long.toString(line.line()),
                                line.type().number(),
                                words.label(doubt.column()) + ": " + words.doubt(doubt))))
                .toList();
        String summary = words.text(
                "parts.import.summary",
                count(file, Effect.NEW),
                count(file, Effect.CHANGED),
                count(file, Effect.SAME),
                badLines(file));
        return page(text, file, new Said(refusal, summary), doubts, plan);
    }

    private static long count(PartsFile file, Effect effect) {
        return file.good().stream().filter(line -> line.effect() == effect).count();
    }

    private static long badLines(PartsFile file) {
        return file.bad().stream().map(PartsFile.BadLine::line).distinct().count();
    }

    private PartsImportPage page(String text, PartsFile file, Said said, List<Line> doubts, String plan) {
        List<PartsFile.Line> changes = file.good().stream()
                .filter(line -> line.effect() != Effect.SAME)
                .toList();
        return new PartsImportPage(
                words.text("parts.import"),
                Field.of("text", words.text("parts.import.text"), text).hinting(words.text("parts.import.text.hint")),
                said.refusal(),
                said.summary(),
                file.unknownColumns().isEmpty()
                        ? ""
                        : words.text("parts.import.unknown", String.join(", ", file.unknownColumns())),
                file.bad().stream().limit(MOST_SHOWN).map(this::bad).toList(),
                more(file.bad().size()),
                doubts.stream().limit(MOST_SHOWN).toList(),
                more(doubts.size()),
                changes.stream().limit(MOST_SHOWN).map(this::change).toList(),
                more(changes.size()),
                plan,
                changes.isEmpty() ? "" : words.text("parts.import.keep", changes.size()),
                explained());
    }

    private String more(int all) {
        return all > MOST_SHOWN ? words.text("parts.import.more", all - MOST_SHOWN) : "";
    }

    private BadLine bad(PartsFile.BadLine line) {
        return new BadLine(
                Long.toString(line.line()), line.column(), words.texts().refusal(line.refusal()));
    }

    private Line change(PartsFile.Line line) {
        String what = line.effect() == Effect.NEW
                ? words.text("parts.import.new", line.type().description())
                : words.text("parts.import.changes", words.labels(line.changed()));
        return new Line(Long.toString(line.line()), line.type().number(), what);
    }

    private List<Explained> explained() {
        return Arrays.stream(Column.values())
                .map(column -> new Explained(column.code(), words.label(column), words.hint(column)))
                .toList();
    }
}
