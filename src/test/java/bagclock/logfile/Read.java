package bagclock.logfile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A file that was read: its layout, its samples as text, its report. */
record Read(Layout layout, List<String> samples, LogReport report) {
    static Layout layout(String text) {
        return layout(text.getBytes(StandardCharsets.UTF_8));
    }

    static Layout layout(byte[] bytes) {
        try {
            return LayoutFinder.find(LogSource.of(bytes)).orElseThrow();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    static Read of(String text, Answers answers) {
        return of(text.getBytes(StandardCharsets.UTF_8), answers);
    }

    static Read of(String text, Charset charset, Answers answers) {
        return of(text.getBytes(charset), answers);
    }

    static Read of(byte[] bytes, Answers answers) {
        Layout layout = layout(bytes);
        List<String> samples = new ArrayList<>();
        LogFile file = new LogFile(LogSource.of(bytes), layout, answers, Bounds.ROOM);
        try {
            LogReport report = file.read((line, atMs, values) -> samples.add(text(atMs, values)));
            return new Read(layout, samples, report);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static String text(long atMs, double[] values) {
        StringBuilder text = new StringBuilder(Instant.ofEpochMilli(atMs).toString());
        for (double value : values) {
            text.append(Double.isNaN(value) ? " -" : String.format(Locale.ROOT, " %.2f", value));
        }
        return text.toString();
    }

    List<String> channels() {
        return layout.channels().stream()
                .map(channel -> channel.kind().map(Enum::name).orElse("?"))
                .toList();
    }

    List<LogFault.Kind> faults() {
        return report.faults().stream().map(LogFault::kind).toList();
    }
}
