package bagclock.climate;

import bagclock.logfile.LogReport;
import bagclock.platform.Texts;
import bagclock.readings.FoundLines;
import java.util.stream.Stream;

/** Says what was found in files of rooms' loggers: the same before an import and in its report. */
final class FoundWords {
    private final Texts texts;

    FoundWords(Texts texts) {
        this.texts = texts;
    }

    /** In one file. */
    FoundLines of(LogReport report) {
        LogReport.Times times = report.times();
        return new FoundLines(texts, report)
                .counted("climate.file.found.without-value", report.withoutValue())
                .counted("climate.file.found.clipped", report.clipped())
                .counted("climate.file.found.repeated", times.repeated())
                .counted("climate.file.found.backwards", times.backwards())
                .counted("climate.file.found.gaps", times.gapCount())
                .counted("climate.file.found.faults", report.faultCount());
    }

    /** In a file alone. */
    FoundLines of(LogReport report, long incomplete) {
        return of(report).counted("climate.file.found.incomplete", incomplete);
    }

    /** In all that an import read. */
    Stream<String> of(RoomLog.Found found) {
        Stream<String> ofFiles = found.files().stream()
                .flatMap(file -> of(file.report(), file.incomplete()).lines().stream()
                        .map(line -> file.name().isEmpty() ? line : file.name() + ": " + line));
        Stream<String> ofBoth = found.pairing().stream().flatMap(pairing -> new PairWords(texts).lines(pairing));
        return Stream.concat(ofFiles, ofBoth);
    }
}
