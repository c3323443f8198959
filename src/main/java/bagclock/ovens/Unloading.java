package bagclock.ovens;

import bagclock.core.Refusal;
import bagclock.core.proof.Proven;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells the desk what comes out of an oven, and keeps how the hours are known. */
final class Unloading {
    private final Desk desk;
    private final Charts charts;
    private final OvenWords words;

    Unloading(Desk desk, Charts charts, OvenWords words) {
        this.desk = desk;
        this.charts = charts;
        this.words = words;
    }

    /**
     * How it comes out.
     *
     * @param to code of the place it goes to; empty: where it was before
     * @param chart that the hours come from; empty: they were told
     */
    record Out(Load load, Instant at, Duration hours, String to, Optional<Charts.Weighed> chart) {}

    /** Who sends, and the key of the form. */
    record Sender(String who, String key) {}

    /** What was refused, in words; empty if all of it is out. */
    List<String> end(List<Load.Loaded> taken, Out out, Sender sender, Instant now) {
        List<String> refused = new ArrayList<>();
        for (Load.Loaded item : taken) {
            List<Refusal> refusals = end(item, out, sender, now);
            if (!refusals.isEmpty()) {
                refused.add(words.text("ovens.fit", item.tag(), words.refusals(refusals)));
            }
        }
        return refused;
    }

    private List<Refusal> end(Load.Loaded item, Out out, Sender sender, Instant now) {
        String tag = item.tag();
        Command.Header header = new Command.Header(sender.who(), out.at(), sender.key() + "/" + tag);
        Optional<String> sha256 = out.chart().map(weighed -> weighed.file().sha256());
        List<Refusal> refusals = tell(new Command.EndBake(header, tag, Optional.of(out.hours()), sha256), now);
        if (refusals.isEmpty()) {
            charts.store().add(kept(item, out, sender.who(), now));
            if (!out.to().isEmpty()) {
                Command.Header after = new Command.Header(sender.who(), out.at(), sender.key() + "/" + tag + "/to");
                refusals = tell(new Command.Move(after, tag, out.to()), now);
            }
        }
        return refusals;
    }

    private static ChartStore.End kept(Load.Loaded item, Out out, String who, Instant now) {
        Optional<Proven> verdict = out.chart().flatMap(weighed -> item.needed().map(weighed.proof()::verdict));
        return new ChartStore.End(
                out.load().oven().code(),
                out.load().loadedAt(),
                item.tag(),
                now,
                who,
                out.at(),
                out.load().setPoint().degrees(),
                out.hours().toMillis(),
                item.needed().map(Duration::toMillis),
                out.chart().map(weighed -> weighed.file().id()),
                verdict.map(Enum::name).orElse(""));
    }

    private List<Refusal> tell(Command command, Instant now) {
        return desk.handle(command, now).fold(receipt -> List.of(), refusals -> refusals);
    }
}
