package bagclock.ovens;

import bagclock.core.proof.Chart;
import bagclock.core.proof.Trace;
import bagclock.core.proof.Trace.Sample;
import bagclock.logfile.Bounds;
import bagclock.logfile.Layout;
import bagclock.logfile.LogFile;
import bagclock.logfile.LogReport;
import bagclock.logfile.LogSource;
import bagclock.logfile.Question;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The chart of an oven as it was read.
 *
 * @param open what must still be said
 * @param report empty as long as something is open or no channel is named
 */
record ReadChart(LogFile file, ChartAnswers answers, List<Question> open, Optional<LogReport> report, Chart chart) {
    private static final Chart NOTHING = new Chart(List.of(), Optional.empty());

    static ReadChart of(LogSource source, Layout layout, ChartAnswers answers) {
        LogFile file = new LogFile(source, answers.say(layout), answers.forReader(), Bounds.OVEN);
        List<Question> open = file.layout().open(file.answers());
        if (!open.isEmpty() || answers.probes().isEmpty()) {
            return new ReadChart(file, answers, open, Optional.empty(), NOTHING);
        }
        List<List<Sample>> samples = new ArrayList<>();
        file.layout().channels().forEach(channel -> samples.add(new ArrayList<>()));
        try {
            LogReport report = file.read((line, atMs, values) -> {
                for (int i = 0; i < values.length; i++) {
                    if (!Double.isNaN(values[i])) {
                        samples.get(i).add(new Sample(Instant.ofEpochMilli(atMs), values[i]));
                    }
                }
            });
            return new ReadChart(file, answers, report.unclear(), Optional.of(report), chart(file, answers, samples));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Chart chart(LogFile file, ChartAnswers answers, List<List<Sample>> samples) {
        List<Trace> probes = new ArrayList<>();
        Optional<Trace> humidity = Optional.empty();
        for (int i = 0; i < samples.size(); i++) {
            Trace trace = new Trace(file.layout().channels().get(i).name(), samples.get(i));
            if (answers.probes().contains(trace.name())) {
                probes.add(trace);
            } else if (answers.humidity().filter(trace.name()::equals).isPresent()) {
                humidity = Optional.of(trace);
            }
        }
        return new Chart(probes, humidity);
    }

    /** Whether it can be weighed. */
    boolean isReady() {
        return report.isPresent() && open.isEmpty();
    }

    /** Channels that were left out, by name. */
    List<String> leftOut() {
        return file.layout().channels().stream()
                .map(channel -> channel.name())
                .filter(name -> !answers.probes().contains(name)
                        && answers.humidity().filter(name::equals).isEmpty())
                .toList();
    }
}
