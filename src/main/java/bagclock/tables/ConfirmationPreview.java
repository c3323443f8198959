package bagclock.tables;

import bagclock.core.standard.CellKey;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.ComparedCell;
import bagclock.tables.ConfirmationsPage.Line;
import java.util.List;
import java.util.Map;

/** Puts what a file of comparisons would do into words. */
final class ConfirmationPreview {
    private static final int MOST_SHOWN = 100;

    private final Messages messages;
    private final Texts texts;
    private final CellValues values;

    ConfirmationPreview(Texts texts, CellValues values) {
        this.messages = texts.messages();
        this.texts = texts;
        this.values = values;
    }

    /**
     * What a preview rests on.
     *
     * @param comparison the newest one
     * @param again somebody compared cells since the preview before
     */
    record Basis(int comparison, boolean again) {}

    ConfirmationsPage empty(String refusal) {
        return new ConfirmationsPage(
                messages.text("tables.import"), field(""), refusal, "", "", List.of(), List.of(), "", 0, "");
    }

    private Field field(String text) {
        return Field.of("text", messages.text("tables.import.text"), text)
                .hinting(messages.text("tables.import.text.hint"));
    }

    ConfirmationsPage page(
            String text,
            ConfirmationsFile file,
            List<ConfirmationsFile.Line> fresh,
            Map<CellKey, ComparedCell> before,
            Basis basis) {
        List<Line> changes = fresh.stream()
                .filter(line -> !value(line.cell()).equals(now(line.cell().key(), before)))
                .map(line -> new Line(
                        Long.toString(line.line()),
                        TablePages.label(line.cell().key()),
                        messages.text("tables.import.change", now(line.cell().key(), before), value(line.cell()))))
                .toList();
        List<Line> bad = file.bad().stream()
                .map(line -> new Line(Long.toString(line.line()), line.column(), texts.refusal(line.refusal())))
                .toList();
        int hidden = Math.max(0, changes.size() - MOST_SHOWN) + Math.max(0, bad.size() - MOST_SHOWN);
        return new ConfirmationsPage(
                messages.text("tables.import"),
                field(text),
                basis.again() ? messages.text("tables.changed-meanwhile") : "",
                messages.text(
                        "tables.import.summary",
                        fresh.size() - changes.size(),
                        changes.size(),
                        file.good().size() - fresh.size(),
                        bad.size()),
                file.unknownColumns().isEmpty()
                        ? ""
                        : messages.text("tables.import.unknown", String.join(", ", file.unknownColumns())),
                bad.stream().limit(MOST_SHOWN).toList(),
                changes.stream().limit(MOST_SHOWN).toList(),
                hidden > 0 ? messages.text("tables.import.more", hidden) : "",
                basis.comparison(),
                fresh.isEmpty() ? "" : messages.text("tables.import.keep", fresh.size()));
    }

    private String now(CellKey key, Map<CellKey, ComparedCell> before) {
        ComparedCell compared = before.get(key);
        return compared == null ? values.shipped(key) : value(compared);
    }

    private static String value(ComparedCell cell) {
        return cell.value().orElse("");
    }
}
