package bagclock.ovens;

import bagclock.logfile.Channel;
import bagclock.logfile.Layout;
import bagclock.logfile.LogReport;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Texts;
import bagclock.readings.Asked;
import bagclock.readings.AskedFields;
import bagclock.readings.FoundLines;
import bagclock.readings.LoggerFile;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the chart of a load into words before it is kept. */
final class ChartPages {
    private static final int MOST_FAULTS = 20;

    private final OvenWords words;
    private final ChartWords chartWords;
    private final Texts texts;
    private final AskedFields fields;

    ChartPages(OvenWords words, ChartWords chartWords, Texts texts) {
        this.words = words;
        this.chartWords = chartWords;
        this.texts = texts;
        this.fields = new AskedFields(texts.messages());
    }

    /** The chart that a page shows. */
    record Shown(Load load, LoggerFile file, Layout layout, ReadChart read) {}

    ChartPage page(Shown shown, Optional<Charts.Weighed> weighed, Entered entered, Instant now) {
        List<Channel> channels = shown.layout().channels();
        List<Choice> numbered = new ArrayList<>();
        for (int i = 0; i < channels.size(); i++) {
            numbered.add(Choice.of(Integer.toString(i), channels.get(i).name()));
        }
        List<Choice> air = new ArrayList<>(List.of(Choice.of("", words.text("ovens.chart.air.none"))));
        air.addAll(numbered);
        return new ChartPage(
                shown.file().fileName(),
                action(shown.load(), shown.file()),
                OvenPages.href(shown.load()),
                chartWords.file(shown.file()),
                problem(shown.read()),
                asked(shown, entered),
                entered.field(ChartForm.PROBE, words.text("ovens.chart.probes"), words.text("ovens.chart.probes.hint")),
                numbered,
                entered.field(ChartForm.AIR, words.text("ovens.chart.air")),
                air,
                shown.read().report().map(this::found).orElse(List.of()),
                shown.read().report().map(this::faults).orElse(List.of()),
                weighed.map(one -> chartWords.part(shown.load(), one, now)).stream()
                        .toList(),
                decides(shown.load(), weighed, entered));
    }

    /** Of a run that ended; of a load it is asked when it comes out. */
    private Field decides(Load load, Optional<Charts.Weighed> weighed, Entered entered) {
        boolean isAsked = load.outAt().isPresent()
                && weighed.filter(one -> one.proof().isTooHot()).isPresent();
        return isAsked
                ? entered.field("decided", words.text("ovens.chart.decides"), words.text("ovens.ended.decides.hint"))
                : Field.of("decided", "", "");
    }

    private static String action(Load load, LoggerFile file) {
        return OvenPages.href(load) + "/charts/" + file.id();
    }

    /** No line of it has a time and a value. */
    ChartPage unreadable(Load load, LoggerFile file) {
        Field none = Field.of(ChartForm.PROBE, "", "");
        return new ChartPage(
                file.fileName(),
                action(load, file),
                OvenPages.href(load),
                chartWords.file(file),
                words.text("climate.file.unreadable"),
                List.of(),
                none,
                List.of(),
                none,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                none);
    }

    private String problem(ReadChart read) {
        if (read.answers().probes().isEmpty()) {
            return words.text("ovens.chart.probes.none");
        }
        return read.open().isEmpty() ? "" : words.text("climate.file.say-first");
    }

    private List<Asked> asked(Shown shown, Entered entered) {
        List<Asked> asked = new ArrayList<>(fields.of(shown.read().file().layout(), entered));
        fields.doubled(shown.read().file(), shown.read().open(), entered).ifPresent(asked::add);
        return asked;
    }

    private List<String> found(LogReport report) {
        return new FoundLines(texts, report)
                .counted("climate.file.found.without-value", report.withoutValue())
                .counted("climate.file.found.backwards", report.times().backwards())
                .counted("climate.file.found.faults", report.faultCount())
                .lines();
    }

    private List<String> faults(LogReport report) {
        return report.faults().stream()
                .limit(MOST_FAULTS)
                .map(fault ->
                        words.text("ovens.chart.fault", fault.line(), fault.column(), FoundLines.fault(texts, fault)))
                .toList();
    }
}
