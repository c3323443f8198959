package bagclock.readings;

import bagclock.logfile.LogFault;
import bagclock.logfile.LogReport;
import bagclock.platform.Texts;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** What was found in a file, line by line; what was not found has no line. */
public final class FoundLines {
    private final Texts texts;
    private final List<String> lines = new ArrayList<>();

    /** Begins with the span of time that the file covers. */
    public FoundLines(Texts texts, LogReport report) {
        this.texts = texts;
        report.span().ifPresent(span -> lines.add(span(report, texts.at(span.first()), texts.at(span.last()))));
    }

    private String span(LogReport report, String first, String last) {
        Duration step = report.times().step();
        return step.isZero()
                ? texts.messages().text("climate.file.found.moment", report.samples(), first)
                : texts.messages().text("climate.file.found.span", report.samples(), first, last, texts.span(step));
    }

    /** A line with a number, unless it is 0. */
    public FoundLines counted(String key, long count) {
        if (count > 0) {
            lines.add(texts.messages().text(key, count));
        }
        return this;
    }

    /** What is wrong with a line: what stood there is quoted, unless nothing did. */
    public static String fault(Texts texts, LogFault fault) {
        boolean isMissing =
                fault.kind() == LogFault.Kind.TIME_UNREADABLE && fault.text().isBlank();
        return isMissing
                ? texts.messages().text("climate.file.time-missing")
                : (texts.part(fault.kind()) + " " + fault.text()).strip();
    }

    /** All of them. */
    public List<String> lines() {
        return List.copyOf(lines);
    }
}
