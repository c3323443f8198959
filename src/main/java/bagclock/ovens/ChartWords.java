package bagclock.ovens;

import bagclock.core.proof.Band;
import bagclock.core.proof.ChartProof;
import bagclock.core.proof.Excursion;
import bagclock.core.proof.ProbeProof;
import bagclock.core.proof.Proven;
import bagclock.core.proof.Spell;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.platform.Names;
import bagclock.platform.Texts;
import bagclock.readings.LoggerFile;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts what a chart proves into words. */
final class ChartWords {
    private static final int HASH_SHOWN = 12;

    private final OvenWords words;
    private final Texts texts;
    private final Names names;

    ChartWords(OvenWords words, Texts texts, Names names) {
        this.words = words;
        this.texts = texts;
        this.names = names;
    }

    /** The words of ovens that these are made of. */
    OvenWords words() {
        return words;
    }

    /** The verdict in a word. */
    String word(Proven verdict) {
        return texts.part(verdict);
    }

    ChartPart part(Load load, Charts.Weighed weighed, Instant now) {
        ChartProof proof = weighed.proof();
        Optional<Duration> needed = Charts.needed(load);
        List<ChartDrawing.Numbered> numbered = numbered(proof);
        return new ChartPart(
                weighed.file().id(),
                needed.filter(time -> proof.verdict(time) == Proven.PROVEN).isPresent(),
                needed.map(proof::verdict).map(this::word).orElseGet(() -> words.text("ovens.chart.nothing")),
                sentence(proof, needed, weighed.stay().to(), now),
                facts(weighed),
                drawings(load, weighed, numbered),
                proof.probes().stream().map(probe -> probe(probe, proof)).toList(),
                outside(proof, numbered),
                load.items().stream()
                        .map(item -> new ChartPart.Item(item.tag(), needed(item), verdict(proof, item)))
                        .toList(),
                file(weighed.file()));
    }

    private String needed(Load.Loaded item) {
        return item.needed().map(words::hours).orElseGet(() -> words.text("ovens.needed.never"));
    }

    private String verdict(ChartProof proof, Load.Loaded item) {
        return item.needed()
                .map(time -> proof.verdict(time) == Proven.SHORT
                        ? words.text(
                                "ovens.chart.short-by",
                                words.hours(proof.missing(time).orElse(Duration.ZERO)))
                        : word(proof.verdict(time)))
                .orElse("");
    }

    private String sentence(ChartProof proof, Optional<Duration> needed, Instant until, Instant now) {
        String counted = words.hours(floor(proof.time()));
        if (needed.isEmpty()) {
            return words.text("ovens.chart.nothing.text", counted);
        }
        String all = words.hours(needed.get());
        return switch (proof.verdict(needed.get())) {
            case PROVEN -> words.text("ovens.chart.proven.text", counted, all, texts.at(until, now));
            case SHORT ->
                words.text(
                        "ovens.chart.short.text",
                        words.hours(proof.missing(needed.get()).orElse(Duration.ZERO)),
                        counted,
                        all);
            case TOO_HOT -> words.text("ovens.chart.hot.text");
            case HUMIDITY_NOT_SHOWN ->
                words.text("ovens.chart.humidity.text", words.hours(floor(proof.warmTime())), counted, all);
        };
    }

    /** Time proven is never shown longer than it is. */
    private static Duration floor(Duration time) {
        return Duration.ofMinutes(time.toMinutes());
    }

    private List<String> facts(Charts.Weighed weighed) {
        ChartProof proof = weighed.proof();
        Band band = proof.asked().temperature();
        List<String> facts = new ArrayList<>();
        facts.add(words.text("ovens.chart.band", degrees(band.least()), degrees(band.most())));
        if (!weighed.rule().equals(BandRule.TABLE)) {
            facts.add(words.text("ovens.chart.band.site"));
        }
        proof.asked().maxHumidity().ifPresent(most -> facts.add(humidity(proof, most)));
        facts.add(words.text(
                "ovens.chart.rule",
                texts.span(ProbeProof.LONGEST_STEP),
                texts.span(ChartProof.UNWATCHED),
                degrees(ChartProof.NEAR_ROOM_C)));
        List<String> leftOut = weighed.read().leftOut();
        if (!leftOut.isEmpty()) {
            facts.add(words.text("ovens.chart.left-out", String.join(", ", leftOut)));
        }
        return facts;
    }

    private String humidity(ChartProof proof, RelativeHumidity most) {
        if (proof.humidity().isPresent()) {
            return words.text("ovens.chart.humidity.read", texts.humidity(most));
        }
        return words.text(
                proof.asked().humidityKnown() ? "ovens.chart.humidity.oven" : "ovens.chart.humidity.none",
                texts.humidity(most));
    }

    private static List<ChartDrawing.Numbered> numbered(ChartProof proof) {
        List<ChartDrawing.Numbered> numbered = new ArrayList<>();
        proof.excursions().forEach(one -> numbered.add(new ChartDrawing.Numbered(numbered.size() + 1, one)));
        return numbered;
    }

    private List<ChartLines> drawings(Load load, Charts.Weighed weighed, List<ChartDrawing.Numbered> numbered) {
        ChartProof proof = weighed.proof();
        TimeAxis axis = new TimeAxis(
                weighed.stay().from(), weighed.stay().to(), ChartLines.LEFT, ChartLines.RIGHT, texts.zone());
        List<ChartLines> drawings = new ArrayList<>();
        Band band = proof.asked().temperature();
        drawings.add(new ChartDrawing(axis, band, proof.probes())
                .draw(
                        proof.probes(),
                        proof.counted(),
                        numbered.stream()
                                .filter(one -> one.excursion().kind() != Excursion.Kind.HUMID)
                                .toList(),
                        new ChartDrawing.Words(
                                "chart-temperature",
                                words.text(
                                        "ovens.chart.temperature", load.oven().name()),
                                words.text("ovens.chart.summary", words.hours(floor(proof.time()))),
                                " °C",
                                words.text("ovens.chart.band.short", degrees(band.least()), degrees(band.most())))));
        proof.humidity()
                .ifPresent(dry -> drawings.add(humidity(
                        dry,
                        axis,
                        proof,
                        numbered.stream()
                                .filter(one -> one.excursion().kind() == Excursion.Kind.HUMID)
                                .toList())));
        return drawings;
    }

    private ChartLines humidity(ProbeProof dry, TimeAxis axis, ChartProof proof, List<ChartDrawing.Numbered> numbered) {
        RelativeHumidity most = proof.asked().maxHumidity().orElseThrow();
        return new ChartDrawing(axis, new Band(0, most.percent()), List.of(dry))
                .draw(
                        List.of(dry),
                        dry.inBand(),
                        numbered,
                        new ChartDrawing.Words(
                                "chart-humidity",
                                words.text("ovens.chart.humidity"),
                                words.text("ovens.chart.humidity.summary", words.hours(floor(dry.time()))),
                                " %",
                                words.text("ovens.holds", texts.humidity(most))));
    }

    private ChartPart.Probe probe(ProbeProof probe, ChartProof proof) {
        boolean isColdest = proof.probes().size() > 1
                && proof.coldest().filter(probe::equals).isPresent();
        return new ChartPart.Probe(
                probe.trace().name(),
                probe.lowest().isPresent() ? degrees(probe.lowest().getAsDouble()) : "",
                probe.highest().isPresent() ? degrees(probe.highest().getAsDouble()) : "",
                words.hours(floor(probe.time())),
                isColdest ? words.text("ovens.chart.coldest") : "");
    }

    private List<ChartPart.Outside> outside(ChartProof proof, List<ChartDrawing.Numbered> numbered) {
        record At(Instant from, ChartPart.Outside row) {}
        List<At> rows = new ArrayList<>();
        numbered.forEach(one -> rows.add(new At(one.excursion().spell().from(), row(one))));
        for (ProbeProof probe : proof.probes()) {
            probe.gaps().forEach(gap -> rows.add(new At(gap.from(), row(probe, gap))));
        }
        return rows.stream().sorted(Comparator.comparing(At::from)).map(At::row).toList();
    }

    private ChartPart.Outside row(ChartDrawing.Numbered numbered) {
        Excursion one = numbered.excursion();
        String extreme = one.kind() == Excursion.Kind.HUMID
                ? texts.humidity(new RelativeHumidity(tenths(one.extreme())))
                : degrees(one.extreme());
        String what = texts.part(one.kind()) + ", " + extreme;
        boolean isLong = one.kind() == Excursion.Kind.BELOW && one.isLong();
        return row(
                Integer.toString(numbered.number()),
                isLong ? what + ". " + words.text("ovens.chart.long", texts.span(Excursion.LONG)) : what,
                one.channel(),
                one.spell());
    }

    private ChartPart.Outside row(ProbeProof probe, Spell gap) {
        boolean isUnwatched = gap.length().compareTo(ChartProof.UNWATCHED) > 0;
        return row(
                "",
                words.text(isUnwatched ? "ovens.chart.gap.anew" : "ovens.chart.gap"),
                probe.trace().name(),
                gap);
    }

    private ChartPart.Outside row(String number, String what, String probe, Spell spell) {
        return new ChartPart.Outside(
                number, what, probe, texts.at(spell.from()), texts.at(spell.to()), texts.span(spell.length()));
    }

    /** Name, upload and hash of a file. */
    String file(LoggerFile file) {
        return words.text(
                "ovens.chart.file",
                file.fileName(),
                texts.at(file.uploadedAt()),
                names.of(file.who()),
                file.sha256().substring(0, HASH_SHOWN));
    }

    private String degrees(double value) {
        return texts.temperature(new Celsius(tenths(value)));
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
