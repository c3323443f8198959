package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.logfile.LogFault;
import bagclock.logfile.LogReport;
import bagclock.logfile.Question;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Texts;
import bagclock.readings.FileEvent;
import bagclock.readings.FoundLines;
import bagclock.readings.LoggerFile;
import bagclock.readings.Progress;
import java.util.List;
import java.util.Optional;

/** Puts a file of a logger into words. */
final class FilePages {
    private static final int MOST_FAULTS = 50;

    private final Messages messages;
    private final Texts texts;
    private final Names names;
    private final RoomFields asked;

    FilePages(Messages messages, Texts texts, Names names) {
        this.messages = messages;
        this.texts = texts;
        this.names = names;
        this.asked = new RoomFields(messages);
    }

    /** A file as it is stored, with how far its import is. */
    record Kept(LoggerFile file, String place, List<FileEvent> events, Progress progress) {
        Optional<FileEvent> last() {
            return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1));
        }

        boolean is(FileEvent.What what) {
            return last().filter(event -> event.what() == what).isPresent();
        }
    }

    /** Before an import, or after it was taken back. */
    FilePage preview(Kept kept, Preview preview, Entered entered) {
        Optional<LogReport> report = preview.report();
        return new FilePage(
                kept.file().fileName(),
                kept.file().id(),
                lead(kept),
                problem(preview),
                asked.of(preview, entered),
                report.map(found -> found(found, preview)).orElse(List.of()),
                preview.first().stream().map(this::row).toList(),
                report.map(this::gaps).orElse(List.of()),
                report.map(this::faults).orElse(List.of()),
                state(kept),
                false,
                0,
                0,
                preview.isReady() && !entered.isRefused(),
                false);
    }

    /** While it is imported and afterwards. */
    FilePage imported(Kept kept) {
        Progress progress = kept.progress();
        boolean running = kept.is(FileEvent.What.BEGUN);
        return new FilePage(
                kept.file().fileName(),
                kept.file().id(),
                lead(kept),
                "",
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                kept.last().map(FilePages::lines).orElse(List.of()),
                state(kept),
                running,
                progress.samplesDone(),
                Math.max(1, progress.samplesAll()),
                false,
                !kept.is(FileEvent.What.TAKEN_BACK));
    }

    /** No line of it has a time and a value. */
    FilePage unreadable(Kept kept) {
        return new FilePage(
                kept.file().fileName(),
                kept.file().id(),
                lead(kept),
                messages.text("climate.file.unreadable"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                "",
                false,
                0,
                0,
                false,
                false);
    }

    private String lead(Kept kept) {
        LoggerFile file = kept.file();
        return messages.text(
                "climate.file.lead",
                file.logger(),
                kept.place(),
                texts.at(file.uploadedAt()),
                names.of(file.who()),
                file.sha256().substring(0, 12));
    }

    private String problem(Preview preview) {
        if (preview.open().isEmpty() && preview.channels().isEmpty()) {
            return messages.text("climate.file.one-quantity");
        } else if (preview.report().isPresent() && preview.first().isEmpty()) {
            return messages.text("climate.file.no-readings");
        }
        boolean said = preview.open().stream().allMatch(question -> question == Question.CHANNELS)
                && preview.channels().isEmpty();
        return said || preview.open().isEmpty() ? "" : messages.text("climate.file.say-first");
    }

    /** How its import stands, in a sentence; empty before the first. */
    String state(Kept kept) {
        if (kept.last().isEmpty()) {
            return "";
        }
        FileEvent last = kept.last().get();
        String at = texts.at(last.happenedAt());
        String who = names.of(last.who());
        return switch (last.what()) {
            case BEGUN ->
                messages.text(
                        "climate.file.running",
                        kept.progress().samplesDone(),
                        kept.progress().samplesAll());
            case DONE -> messages.text("climate.file.done", last.added(), last.known(), last.refused(), at, who);
            case FAILED -> messages.text("climate.file.failed", at);
            case TAKEN_BACK -> messages.text("climate.file.taken-back", last.added(), at, who);
        };
    }

    private List<String> found(LogReport report, Preview preview) {
        LogReport.Times times = report.times();
        return new FoundLines(texts, report)
                .counted("climate.file.found.without-value", report.withoutValue())
                .counted("climate.file.found.incomplete", preview.incomplete())
                .counted("climate.file.found.clipped", report.clipped())
                .counted("climate.file.found.repeated", times.repeated())
                .counted("climate.file.found.backwards", times.backwards())
                .counted("climate.file.found.gaps", times.gapCount())
                .counted("climate.file.found.below-zero", preview.belowZero())
                .counted("climate.file.found.faults", report.faultCount())
                .lines();
    }

    private ZonePage.Row row(Reading reading) {
        return new ZonePage.Row(
                texts.machine(reading.at()),
                texts.at(reading.at()),
                tenth(reading.air().temperature().degrees()) + " °C",
                tenth(reading.air().humidity().percent()) + " % RH");
    }

    private String tenth(double value) {
        return texts.number(Math.round(value * 100) / 100.0);
    }

    private List<String> gaps(LogReport report) {
        return report.times().gaps().stream()
                .map(gap -> messages.text(
                        "climate.file.gap", texts.at(gap.from()), texts.at(gap.to()), texts.span(gap.length())))
                .toList();
    }

    private List<ImportPage.BadLine> faults(LogReport report) {
        return report.faults().stream()
                .limit(MOST_FAULTS)
                .map(fault -> new ImportPage.BadLine(Long.toString(fault.line()), fault.column(), why(fault)))
                .toList();
    }

    private String why(LogFault fault) {
        return texts.part(fault.kind()) + " " + fault.text();
    }

    private static List<ImportPage.BadLine> lines(FileEvent event) {
        return event.report()
                .lines()
                .limit(MOST_FAULTS)
                .map(line -> line.split("\t", 3))
                .filter(cells -> cells.length == 3)
                .map(cells -> new ImportPage.BadLine(cells[0], cells[1], cells[2]))
                .toList();
    }

    /** The list with the form. */
    FilesPage list(Entered entered, List<bagclock.platform.Choice> places, List<String> known, List<Kept> files) {
        Field logger = entered.field(
                "logger", messages.text("climate.file.logger"), messages.text("climate.file.logger.hint"));
        return new FilesPage(
                messages.text("climate.files"),
                logger,
                entered.field("place", messages.text("climate.file.place")),
                places,
                entered.field("file", messages.text("climate.import.file")),
                known,
                files.stream()
                        .map(kept -> new FilesPage.Line(
                                kept.file().id(),
                                kept.file().fileName(),
                                kept.file().logger(),
                                kept.place(),
                                texts.at(kept.file().uploadedAt()),
                                kept.last().isEmpty() ? messages.text("climate.file.waiting") : state(kept)))
                        .toList());
    }
}
