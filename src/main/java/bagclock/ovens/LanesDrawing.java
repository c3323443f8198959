package bagclock.ovens;

import bagclock.core.oven.Lot;
import bagclock.core.oven.Oven;
import bagclock.core.oven.PlanSum;
import bagclock.core.oven.Run;
import bagclock.core.oven.Shop;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Draws a plan: what is done, what runs, what is planned. What began before the axis is cut off at its left. */
final class LanesDrawing {
    private static final int LEAST_FOR_LABEL = 60;
    private static final int LEAST_FOR_RAMP = 2;
    private static final int ROOM_OF_TICK = 80;

    private final OvenWords words;
    private final Texts texts;
    private final Instant now;
    private final TimeAxis axis;

    /** An axis from a bit before now. */
    LanesDrawing(OvenWords words, Texts texts, Instant now, Duration ahead) {
        this.words = words;
        this.texts = texts;
        this.now = now;
        Duration before = ahead.dividedBy(12);
        this.axis = new TimeAxis(now.minus(before), now.plus(ahead), Lanes.LEFT, Lanes.WIDTH, texts.zone());
    }

    Lanes draw(ShopNow shop, Shop planned, List<Run> runs, PlanSum sum) {
        Set<String> late = sum.late().stream().map(PlanSum.Late::lot).collect(Collectors.toSet());
        List<Lanes.Lane> lanes = new ArrayList<>();
        for (BakeOven oven : shop.ovens()) {
            List<Lanes.Block> blocks = new ArrayList<>();
            planned.ovens().stream()
                    .filter(one -> one.code().equals(oven.code()))
                    .flatMap(one -> one.habits().outOfService().stream())
                    .filter(span -> isSeen(span.startInclusive(), span.endExclusive()))
                    .forEach(span -> blocks.add(out(span.startInclusive(), span.endExclusive())));
            seen(shop.ended(), oven).forEach(run -> blocks.add(done(run, oven)));
            seen(runs, oven).forEach(run -> blocks.add(block(run, shop, planned, late)));
            lanes.add(new Lanes.Lane(oven.code(), oven.name(), Lanes.TOP + Lanes.LANE * lanes.size(), blocks));
        }
        Duration length = Duration.between(axis.from(), axis.to());
        double unit = length.toMillis() / 60_000.0 / (Lanes.WIDTH - Lanes.LEFT);
        return new Lanes(
                words.text("plan.lanes.words", runs.size(), texts.span(length)),
                number(axis.x(now)),
                number(unit),
                lanes,
                axis.ticks().stream()
                        .map(tick -> new Lanes.Tick(
                                number(tick.x()), tick.x() > Lanes.WIDTH - ROOM_OF_TICK ? "" : tick.label()))
                        .toList());
    }

    private Stream<Run> seen(List<Run> runs, BakeOven oven) {
        return runs.stream().filter(run -> run.oven().equals(oven.code()) && isSeen(run.startAt(), run.endAt()));
    }

    private boolean isSeen(Instant start, Instant end) {
        return start.isBefore(axis.to()) && end.isAfter(axis.from());
    }

    private Lanes.Block out(Instant start, Instant end) {
        String told = words.text("plan.out", texts.at(start, now), texts.at(end, now));
        Lanes.Words inside = new Lanes.Words(words.text("plan.out.short"), "", "", told);
        return new Lanes.Block("out", number(axis.x(start)), width(start, end), List.of(), inside, "");
    }

    private Lanes.Block done(Run run, BakeOven oven) {
        Lanes.Words inside = inside(run, filled(run.lots().size(), oven.positions()), "", "plan.run.done");
        return new Lanes.Block(
                "done", number(axis.x(run.startAt())), width(run.startAt(), run.endAt()), List.of(), inside, "");
    }

    private Lanes.Block block(Run run, ShopNow shop, Shop planned, Set<String> lateLots) {
        boolean isRunning = shop.isRunning(run);
        boolean isFrozen = planned.frozen().contains(run);
        long late = run.lots().stream().filter(lateLots::contains).count();
        Optional<Oven> oven = planned.ovens().stream()
                .filter(one -> one.code().equals(run.oven()))
                .findFirst();
        String filled = oven.map(one -> filled(positions(run, planned), one.positions()))
                .orElse("");
        return new Lanes.Block(
                isRunning ? "running" : isFrozen ? "frozen" : "planned",
                number(axis.x(run.startAt())),
                width(run.startAt(), run.endAt()),
                oven.map(one -> ramps(run, isRunning, planned, one)).orElse(List.of()),
                inside(run, filled, late == 0 ? "" : words.text("plan.late.mark", late), "plan.run.title"),
                isRunning ? "" : "move-" + run.lots().get(0));
    }

    private String filled(int taken, int positions) {
        return words.text("plan.run.filled", taken, positions);
    }

    private Lanes.Words inside(Run run, String filled, String late, String key) {
        boolean hasRoom = axis.x(run.endAt()) - axis.x(run.startAt()) > LEAST_FOR_LABEL;
        String title = words.text(
                key,
                texts.temperature(run.temperature()),
                texts.at(run.startAt(), now),
                texts.at(run.endAt(), now),
                String.join(", ", run.lots()),
                filled);
        return new Lanes.Words(
                hasRoom ? texts.temperature(run.temperature()) : "",
                hasRoom ? filled : "",
                late,
                late.isEmpty() ? title : title + " " + late);
    }

    /** The most positions that are taken at a time. */
    private static int positions(Run run, Shop planned) {
        return run.stays().stream()
                .map(Run.Stay::inAt)
                .distinct()
                .mapToInt(at -> run.stays().stream()
                        .filter(stay -> !stay.inAt().isAfter(at) && stay.outAt().isAfter(at))
                        .mapToInt(stay -> positions(stay.lot(), planned))
                        .sum())
                .max()
                .orElse(0);
    }

    /** What waits for a bake has its own number of positions, what runs takes one each. */
    private static int positions(String tag, Shop planned) {
        return planned.lots().stream()
                .filter(lot -> lot.tag().equals(tag))
                .mapToInt(Lot::positions)
                .findFirst()
                .orElse(1);
    }

    /** Heating up and cooling down, as far as they are seen. */
    private List<Lanes.Ramp> ramps(Run run, boolean isRunning, Shop planned, Oven oven) {
        Instant ready = isRunning ? run.endAt() : run.startAt().plus(PlanSum.shut(planned, run));
        return Stream.of(
                        ramp(run.startAt(), run.startAt().plus(oven.habits().heatUp())),
                        ramp(ready.minus(oven.habits().coolDown()), ready))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Lanes.Ramp> ramp(Instant from, Instant to) {
        boolean isWide = axis.x(to) - axis.x(from) > LEAST_FOR_RAMP;
        return isWide ? Optional.of(new Lanes.Ramp(number(axis.x(from)), number(axis.x(to)))) : Optional.empty();
    }

    private String width(Instant start, Instant end) {
        return number(Math.max(3, axis.x(end) - axis.x(start)));
    }

    private static String number(double value) {
        return Double.toString(Math.round(value * 100) / 100.0);
    }
}
