package bagclock.ovens;

import bagclock.core.Refusal;
import bagclock.core.exposure.Event;
import bagclock.core.proof.Proven;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.HistoryLine;
import bagclock.ledger.Act;
import bagclock.ledger.Entry;
import bagclock.ledger.Notes;
import bagclock.platform.Secret;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A chart that comes after its run ended corrects the hours of the bakes, by events that correct those of the ends. Where
 * a probe was above the band and no engineer has decided, the history counts as unknown from the end of the run too: a
 * chart never leaves a part more trusted than the rules allow.
 */
final class LateProof {
    private final Desk desk;
    private final ChartStore store;
    private final OvenWords words;

    LateProof(Desk desk, ChartStore store, OvenWords words) {
        this.desk = desk;
        this.store = store;
        this.words = words;
    }

    /**
     * Who says it, of which chart.
     *
     * @param decided whether an engineer has decided about what was too hot
     */
    record Word(String who, boolean decided, Instant now) {}

    /** Corrects the ends of a run; what was refused, in words. */
    List<String> prove(Load load, Function<Instant, Charts.Weighed> weighed, Word word) {
        List<String> refused = new ArrayList<>();
        for (Load.Loaded item : load.items()) {
            Charts.Weighed chart = weighed.apply(item.outAt().orElseThrow());
            List<Refusal> refusals = prove(item, chart, word);
            if (refusals.isEmpty()) {
                Optional<Proven> verdict = item.needed().map(chart.proof()::verdict);
                keep(
                        load,
                        item,
                        new Hours(chart.proof().time(), Optional.of(chart.file().id()), verdict),
                        word);
            } else {
                refused.add(words.text("ovens.fit", item.tag(), words.refusals(refusals)));
            }
        }
        return refused;
    }

    private List<Refusal> prove(Load.Loaded item, Charts.Weighed chart, Word word) {
        Instant out = item.outAt().orElseThrow();
        List<Refusal> refusals = undone(item, word);
        Optional<Entry> end = end(item, word.now());
        if (!refusals.isEmpty() || end.isEmpty()) {
            return refusals;
        }
        Command.Header header = new Command.Header(word.who(), out, Secret.token());
        Command bake = new Command.EndBake(
                header,
                item.tag(),
                Optional.of(chart.proof().time()),
                Optional.of(chart.file().sha256()));
        List<Refusal> corrected =
                tell(new Command.Correct(header, item.tag(), end.get().seq(), bake), word.now());
        boolean isOpen = chart.proof().isTooHot() && !word.decided();
        return corrected.isEmpty() && isOpen
                ? tell(
                        new Command.EnterUnknownExposure(
                                new Command.Header(word.who(), out, Secret.token()), item.tag()),
                        word.now())
                : corrected;
    }

    /** Takes back what a chart corrected; the hours are again as they were told. */
    List<String> takeBack(Load load, Word word) {
        List<String> refused = new ArrayList<>();
        for (Load.Loaded item : load.items()) {
            List<Refusal> refusals = undone(item, word);
            if (!refusals.isEmpty()) {
                refused.add(words.text("ovens.fit", item.tag(), words.refusals(refusals)));
                continue;
            }
            end(item, word.now())
                    .map(LateProof::hours)
                    .ifPresent(told -> keep(load, item, new Hours(told, Optional.empty(), Optional.empty()), word));
        }
        return refused;
    }

    private static Duration hours(Entry entry) {
        Event.BakeEnded end = (Event.BakeEnded) ((Act.Happened) entry.act()).event();
        return end.atTemperature().orElse(Duration.ZERO);
    }

    /** Whether the history of an item counts as unknown, since its run was too hot and nobody has decided. */
    boolean isUndecided(Load.Loaded item, Instant now) {
        return isCorrected(item, now) && standing(item, now).stream().anyMatch(LateProof::isUnknown);
    }

    /** Whether a chart that came after the end gives the hours of an item. */
    boolean isCorrected(Load.Loaded item, Instant now) {
        return standing(item, now).stream().anyMatch(LateProof::isFromLateChart);
    }

    private List<Refusal> undone(Load.Loaded item, Word word) {
        List<Refusal> refusals = new ArrayList<>();
        List<Entry> standing = standing(item, word.now());
        boolean isCorrected = standing.stream().anyMatch(LateProof::isFromLateChart);
        for (Entry entry : standing) {
            if (isFromLateChart(entry) || (isCorrected && isUnknown(entry))) {
                Command.Header header = new Command.Header(word.who(), word.now(), Secret.token());
                refusals.addAll(tell(new Command.TakeBack(header, item.tag(), entry.seq()), word.now()));
            }
        }
        return refusals;
    }

    /** What stands of the moment at which an item came out. */
    private List<Entry> standing(Load.Loaded item, Instant now) {
        return desk.item(item.tag(), now).stream()
                .flatMap(view -> view.lines().stream())
                .filter(HistoryLine::stands)
                .map(HistoryLine::entry)
                .filter(entry -> item.outAt().filter(entry.happenedAt()::equals).isPresent())
                .toList();
    }

    private Optional<Entry> end(Load.Loaded item, Instant now) {
        return standing(item, now).stream()
                .filter(entry ->
                        entry.act() instanceof Act.Happened happened && happened.event() instanceof Event.BakeEnded)
                .findFirst();
    }

    private static boolean isFromLateChart(Entry entry) {
        return entry.corrects().isPresent()
                && entry.act() instanceof Act.Happened happened
                && happened.event() instanceof Event.BakeEnded
                && happened.notes().containsKey(Notes.CHART);
    }

    private static boolean isUnknown(Entry entry) {
        return entry.act() instanceof Act.Happened happened && happened.event() instanceof Event.UnknownExposure;
    }

    /** Hours at temperature, and how they are known. */
    private record Hours(Duration time, Optional<String> fileId, Optional<Proven> verdict) {}

    private void keep(Load load, Load.Loaded item, Hours hours, Word word) {
        store.add(new ChartStore.End(
                load.oven().code(),
                load.loadedAt(),
                item.tag(),
                word.now(),
                word.who(),
                item.outAt().orElseThrow(),
                load.setPoint().degrees(),
                hours.time().toMillis(),
                item.needed().map(Duration::toMillis),
                hours.fileId(),
                hours.verdict().map(Enum::name).orElse("")));
    }

    private List<Refusal> tell(Command command, Instant now) {
        return desk.handle(command, now).fold(receipt -> List.of(), refusals -> refusals);
    }
}
