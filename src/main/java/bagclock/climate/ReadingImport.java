package bagclock.climate;

import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.readings.Kept;
import bagclock.readings.ReadingsFile;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts what became of a file of readings into words. */
final class ReadingImport {
    private static final int MOST_SHOWN = 50;

    private final Messages messages;
    private final Texts texts;

    ReadingImport(Messages messages, Texts texts) {
        this.messages = messages;
        this.texts = texts;
    }

    /** The empty form. */
    ImportPage empty(Set<String> zones) {
        return page("", "", List.of(), 0, zones);
    }

    /** Nothing was entered. */
    ImportPage missing(Set<String> zones) {
        return page("", messages.text("climate.import.nothing"), List.of(), 0, zones);
    }

    /** Some lines can't be read; the good ones are offered. */
    ImportPage unread(String text, ReadingsFile file, Set<String> zones) {
        String refusal = messages.text("climate.import.bad", file.bad().size());
        return page(text, refusal, file.bad(), file.good().size(), zones);
    }

    /** The good ones were kept; some were refused for what was there before. */
    ImportPage refused(Kept kept, Set<String> zones) {
        String refusal = messages.text(
                "climate.import.kept-some", kept.added(), kept.refused().size());
        return page("", refusal, kept.refused(), 0, zones);
    }

    private ImportPage page(String text, String refusal, List<Kept.BadLine> bad, int good, Set<String> zones) {
        List<ImportPage.BadLine> shown = bad.stream()
                .limit(MOST_SHOWN)
                .map(line -> new ImportPage.BadLine(
                        Long.toString(line.line()), line.column(), texts.refusal(line.refusal())))
                .toList();
        return new ImportPage(
                messages.text("climate.import"),
                Field.of("text", messages.text("climate.import.text"), text)
                        .hinting(messages.text("climate.import.text.hint")),
                refusal,
                shown,
                bad.size() > MOST_SHOWN ? messages.text("climate.import.more", bad.size() - MOST_SHOWN) : "",
                good == 0 ? "" : messages.text("climate.import.keep-good", good),
                zones.stream().sorted().collect(Collectors.joining(", ")));
    }
}
