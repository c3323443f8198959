package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts a file of a logger into words. */
final class FilePages {
    private static final int MOST_FAULTS = 50;

    private final Messages messages;
    private final Texts texts;
    private final Names names;
    private final RoomFields asked;
    private final HalfPages halves;
    private final FoundWords found;

    FilePages(Texts texts, HalfPages halves, Names names) {
        this.messages = texts.messages();
        this.texts = texts;
        this.names = names;
        this.asked = new RoomFields(messages);
        this.halves = halves;
        this.found = new FoundWords(texts);
    }

    /**
     * A file as it is stored, with how far its import is.
     *
     * @param other the file that it is read with
     * @param through the files that are read with it
     */
    record Kept(
            LoggerFile file,
            String place,
            List<FileEvent> events,
            Progress progress,
            Optional<LoggerFile> other,
            List<Kept> through) {
        /** Keeps its own copies. */
        Kept {
            events = List.copyOf(events);
            through = List.copyOf(through);
        }

        /** Whether none of its readings count. */
        boolean isNew() {
            return events.isEmpty() || is(FileEvent.What.TAKEN_BACK);
        }

        Optional<FileEvent> last() {
            return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1));
        }

        boolean is(FileEvent.What what) {
            return last().filter(event -> event.what() == what).isPresent();
        }
    }

    /** Before an import, or after it was taken back. */
    FilePage preview(Kept kept, Preview preview, Entered entered, OtherHalf half) {
        Optional<LogReport> report = preview.report();
        FilePage.Seen seen = new FilePage.Seen(
                report.map(one -> found(one, preview)).orElse(List.of()),
                rows(preview.first()),
                report.map(this::gaps).orElse(List.of()),
                report.map(this::faults).orElse(List.of()));
        boolean ready = preview.isReady() && !entered.isRefused();
        return new FilePage(
                kept.file().fileName(),
                kept.file().id(),
                lead(kept),
                half.wanted() ? "" : problem(preview),
                half.wanted() ? List.of() : asked.of(preview, entered),
                seen,
                FilePage.Standing.resting(state(kept)),
                ready,
                half);
    }

    /**
     * With its other half, before an import.
     *
     * @param which whether a person must say which of both holds the temperatures
     */
    FilePage pair(Kept kept, PairPreview preview, Entered entered, boolean which) {
        return new FilePage(
                kept.file().fileName(),
                kept.file().id(),
                lead(kept),
                problem(preview),
                asked.of(preview, entered, which),
                halves.seen(preview, rows(preview.first()), found::of),
                FilePage.Standing.resting(state(kept)),
                preview.isReady() && !entered.isRefused(),
                halves.joined(kept, true));
    }

    /** While it is imported and afterwards. */
    FilePage imported(Kept kept) {
        Progress progress = kept.progress();
        FilePage.Standing standing = new FilePage.Standing(
                state(kept),
                kept.is(FileEvent.What.BEGUN),
                progress.samplesDone(),
                Math.max(1, progress.samplesAll()),
                !kept.is(FileEvent.What.TAKEN_BACK));
        return kept(kept, "", kept.last().map(FilePages::seen).orElse(FilePage.Seen.NOTHING), standing)
                .with(halves.joined(kept, false));
    }

    /** Its values count through other files. */
    FilePage through(Kept kept) {
        String states = kept.through().stream()
                .map(one -> one.file().fileName() + ": "
                        + (one.events().isEmpty() ? messages.text("climate.file.waiting") : state(one)))
                .collect(Collectors.joining(" "));
        boolean counts = kept.through().stream().anyMatch(one -> !one.isNew());
        return kept(kept, "", FilePage.Seen.NOTHING, new FilePage.Standing(states, false, 0, 0, counts))
                .with(halves.through(kept));
    }

    /** It can't be imported, for this reason. */
    FilePage impossible(Kept kept, String problem) {
        return kept(kept, problem, FilePage.Seen.NOTHING, FilePage.Standing.resting(""))
                .with(halves.joined(kept, true));
    }

    private FilePage kept(Kept kept, String problem, FilePage.Seen seen, FilePage.Standing standing) {
        return new FilePage(
                kept.file().fileName(),
                kept.file().id(),
                lead(kept),
                problem,
                List.of(),
                seen,
                standing,
                false,
                OtherHalf.NONE);
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

    private String problem(PairPreview preview) {
        if (!preview.open().isEmpty()) {
            return messages.text("climate.file.say-first");
        }
        return preview.first().isEmpty() ? messages.text("climate.half.no-readings") : "";
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
        return found.of(report, preview.incomplete())
                .counted("climate.file.found.below-zero", preview.belowZero())
                .lines();
    }

    private List<ZonePage.Row> rows(List<Reading> readings) {
        return readings.stream().map(this::row).toList();
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
                .map(fault -> new ImportPage.BadLine(
                        Long.toString(fault.line()), fault.column(), FoundLines.fault(texts, fault)))
                .toList();
    }

    /** A line of the report without a number says something of the whole. */
    private static FilePage.Seen seen(FileEvent event) {
        List<String> found = new ArrayList<>();
        List<ImportPage.BadLine> faults = new ArrayList<>();
        event.report().lines().map(line -> line.split("\t", 3)).forEach(cells -> {
            if (cells.length == 3 && cells[0].isEmpty() && cells[1].isEmpty()) {
                found.add(cells[2]);
            } else if (cells.length == 3 && faults.size() < MOST_FAULTS) {
                faults.add(new ImportPage.BadLine(cells[0], cells[1], cells[2]));
            }
        });
        return new FilePage.Seen(found, List.of(), List.of(), faults);
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
                entered.field("file", messages.text("climate.import.file"), messages.text("climate.files.two")),
                known,
                files.stream()
                        .map(kept -> new FilesPage.Line(
                                kept.file().id(),
                                kept.file().fileName(),
                                kept.file().logger(),
                                kept.place(),
                                texts.at(kept.file().uploadedAt()),
                                listed(kept)))
                        .toList());
    }

    private String listed(Kept kept) {
        if (!kept.through().isEmpty()) {
            return messages.text(
                    "climate.half.listed", kept.through().get(0).file().fileName());
        }
        return kept.last().isEmpty() ? messages.text("climate.file.waiting") : state(kept);
    }
}
