package bagclock.ovens;

import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Secret;
import bagclock.platform.Texts;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts one load into words. */
final class RunPages {
    private final OvenWords words;
    private final ChartWords chartWords;
    private final Texts texts;
    private final OvenPages pages;
    private final Charts charts;
    private final PlanAtLoad plan;
    private final OvenStore store;

    RunPages(ChartWords chartWords, Charts charts, PlanAtLoad plan, OvenStore store, Texts texts) {
        this.words = chartWords.words();
        this.chartWords = chartWords;
        this.charts = charts;
        this.plan = plan;
        this.store = store;
        this.texts = texts;
        this.pages = new OvenPages(words, texts);
    }

    OvenWords words() {
        return words;
    }

    ChartWords chartWords() {
        return chartWords;
    }

    Charts charts() {
        return charts;
    }

    /**
     * What the page of a load says beside the load.
     *
     * @param key makes a second sending harmless
     * @param missing what an unload leaves undone
     * @param places where parts may go
     */
    record Told(String key, List<String> missing, List<Choice> places) {
        /** Nothing was sent yet. */
        static Told fresh(List<Choice> places) {
            return new Told(Secret.token(), List.of(), places);
        }
    }

    RunPage run(Load load, Entered entered, Told told, Instant now) {
        Optional<Charts.Weighed> kept = charts.kept(load, now, now);
        return new RunPage(
                words.text("ovens.run", load.oven().name()),
                OvenPages.href(load),
                told.key(),
                pages.ready(load, now),
                pages.facts(load, now) + calibration(load),
                plan.kept(load, now),
                load.items().stream().map(item -> line(load, item, now)).toList(),
                kept.map(weighed -> chartWords.part(load, weighed, now)).stream()
                        .toList(),
                entered.field("file", words.text("ovens.chart.field"), words.text("ovens.chart.field.hint")),
                entered.field("hotAt", words.text("ovens.hot-at")),
                breaks(load, entered, now),
                told.missing(),
                unloading(load, entered, told, kept));
    }

    private String calibration(Load load) {
        return store.pastCalibration(load.oven().code(), load.loadedAt())
                .map(due -> " " + words.text("ovens.calibration", due))
                .orElse("");
    }

    private RunPage.Breaks breaks(Load load, Entered entered, Instant now) {
        return new RunPage.Breaks(
                load.interruptions().stream()
                        .map(one -> new RunPage.Break(one.number(), broke(one, now)))
                        .toList(),
                entered.field("breakKind", words.text("ovens.break.kind")),
                Arrays.stream(Interruption.Kind.values())
                        .map(kind -> Choice.of(kind.name(), texts.part(kind)))
                        .toList(),
                entered.field("brokeAt", words.text("ovens.break.from")),
                entered.field("backAt", words.text("ovens.break.to"), words.text("ovens.break.to.hint")));
    }

    private String broke(Interruption one, Instant now) {
        return words.text(
                one.cold() ? "ovens.break.cold" : "ovens.break.line",
                texts.part(one.kind()),
                texts.at(one.spell().from(), now),
                texts.at(one.spell().to(), now),
                words.hours(one.spell().length()));
    }

    /** What charts prove, in a word, by the address of the load. */
    Map<String, String> proofs(List<Load> loads, Instant now) {
        Map<String, String> proofs = new HashMap<>();
        for (Load load : loads) {
            charts.kept(load, now, now)
                    .map(weighed -> chartWords.part(load, weighed, now))
                    .ifPresent(part -> proofs.put(OvenPages.href(load), words.text("ovens.chart.so-far", part.word())));
        }
        return proofs;
    }

    private RunPage.Unloading unloading(Load load, Entered entered, Told told, Optional<Charts.Weighed> kept) {
        boolean isTooHot = kept.filter(weighed -> weighed.proof().isTooHot()).isPresent();
        return new RunPage.Unloading(
                kept.map(weighed -> words.text("ovens.chart.hours")).orElse(""),
                entered.field(
                        "decided",
                        isTooHot ? words.text("ovens.chart.decides") : "",
                        words.text("ovens.chart.decides.hint")),
                entered.field("outAt", words.text("ovens.out-at")),
                entered.field(
                        "hours",
                        words.text("ovens.hours-at-temperature"),
                        words.text("ovens.hours-at-temperature.hint")),
                entered.field("tag", words.text("ovens.items-out")),
                load.items().stream()
                        .map(item -> new Choice(item.tag(), item.tag(), OvenPages.part(item.view())))
                        .toList(),
                entered.field("to", words.text("ovens.to"), words.text("ovens.to.hint")),
                told.places());
    }

    private RunPage.Line line(Load load, Load.Loaded item, Instant now) {
        return new RunPage.Line(
                item.tag(),
                OvenPages.part(item.view()),
                Long.toString(item.view().item().quantity()),
                item.needed().map(words::hours).orElseGet(() -> words.text("ovens.needed.never")),
                item.needed()
                        .map(needed -> texts.at(load.readyAfter(needed), now))
                        .orElse(""));
    }
}
