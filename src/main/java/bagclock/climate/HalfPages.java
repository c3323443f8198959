package bagclock.climate;

import bagclock.climate.FilePages.Kept;
import bagclock.logfile.Channel.Kind;
import bagclock.logfile.LogFault;
import bagclock.logfile.LogFile;
import bagclock.logfile.LogReport;
import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.readings.FoundLines;
import bagclock.readings.LoggerFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Puts into words which files are read together. */
final class HalfPages {
    private static final int MOST_FAULTS = 25;

    private final Texts texts;
    private final Messages messages;

    HalfPages(Texts texts) {
        this.texts = texts;
        this.messages = texts.messages();
    }

    /** What the words are taken from. */
    Messages messages() {
        return messages;
    }

    /** Of a file that waits for its other half. */
    OtherHalf wanted(LogFile half, List<LoggerFile> fitting) {
        boolean isTemperature = Half.canBe(half, Set.of(Kind.TEMPERATURE));
        boolean isHumidity = Half.canBe(half, Half.HUMIDITIES);
        String key = isTemperature && isHumidity
                ? "climate.half.either"
                : isTemperature ? "climate.half.temperatures" : "climate.half.humidities";
        List<Choice> choices = fitting.stream()
                .map(file -> new Choice(file.id(), file.fileName(), texts.at(file.uploadedAt())))
                .toList();
        return new OtherHalf(
                messages.text(key),
                List.of(),
                true,
                Field.of(OtherHalf.OTHER, messages.text("climate.half.choose"), ""),
                choices,
                Field.of("file", messages.text("climate.half.upload"), ""),
                "");
    }

    /** Of a file that is read with another one. */
    OtherHalf joined(Kept kept, boolean canPart) {
        return kept.other()
                .map(other -> OtherHalf.joined(
                        messages.text("climate.half.joined"),
                        List.of(link(other)),
                        canPart ? kept.file().id() : ""))
                .orElse(OtherHalf.NONE);
    }

    /** Of a file whose values count through others; the one that was joined last can be parted. */
    OtherHalf through(Kept kept) {
        String partFrom = kept.through().stream()
                .filter(Kept::isNew)
                .map(one -> one.file().id())
                .findFirst()
                .orElse("");
        return OtherHalf.joined(
                messages.text("climate.half.through"),
                kept.through().stream().map(one -> link(one.file())).toList(),
                partFrom);
    }

    private static OtherHalf.Link link(LoggerFile file) {
        return new OtherHalf.Link(file.id(), file.fileName());
    }

    /** What was seen in both, each with the name of its file. */
    FilePage.Seen seen(PairPreview preview, List<ZonePage.Row> rows, Function<LogReport, FoundLines> found) {
        List<Half> both = List.of(preview.temperature(), preview.humidity());
        List<String> lines = new ArrayList<>();
        lines.add(messages.text(
                "climate.half.found.from", both.get(0).name(), both.get(1).name()));
        List<ImportPage.BadLine> faults = new ArrayList<>();
        for (int i = 0; i < preview.reports().size(); i++) {
            LogReport report = preview.reports().get(i);
            String name = both.get(i).name();
            found.apply(report).lines().forEach(line -> lines.add(name + ": " + line));
            TwoFiles.named(both.get(i), report.faults())
                    .limit(MOST_FAULTS)
                    .map(this::bad)
                    .forEach(faults::add);
        }
        preview.pairing().stream()
                .flatMap(pairing -> new PairWords(texts).lines(pairing))
                .forEach(lines::add);
        if (preview.belowZero() > 0) {
            lines.add(messages.text("climate.file.found.below-zero", preview.belowZero()));
        }
        return new FilePage.Seen(lines, rows, List.of(), faults);
    }

    private ImportPage.BadLine bad(LogFault fault) {
        return new ImportPage.BadLine(Long.toString(fault.line()), fault.column(), FoundLines.fault(texts, fault));
    }
}
