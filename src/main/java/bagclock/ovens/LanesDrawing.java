package bagclock.ovens;

import bagclock.core.oven.PlanSum;
import bagclock.core.oven.Run;
import bagclock.core.oven.Shop;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Draws a plan. What began before the axis is cut off at its left. */
final class LanesDrawing {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final int MOST_TICKS = 9;
    private static final int WORDS_OF_A_TICK = 80;
    private static final int LEAST_FOR_LABEL = 60;
    private static final int[] STEPS_H = {1, 2, 3, 6, 12, 24, 48, 168, 336};

    private final OvenWords words;
    private final Texts texts;
    private final Instant now;
    private final Instant from;
    private final Duration length;

    /** An axis from a bit before now. */
    LanesDrawing(OvenWords words, Texts texts, Instant now, Duration ahead) {
        this.words = words;
        this.texts = texts;
        this.now = now;
        this.from = now.minus(ahead.dividedBy(12));
        this.length = ahead.plus(ahead.dividedBy(12));
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
            for (Run run : runs) {
                if (run.oven().equals(oven.code()) && isSeen(run.startAt(), run.endAt())) {
                    blocks.add(block(run, shop.isRunning(run), planned, late));
                }
            }
            lanes.add(new Lanes.Lane(oven.code(), oven.name(), Lanes.TOP + Lanes.LANE * lanes.size(), blocks));
        }
        double unit = length.toMillis() / 60_000.0 / (Lanes.WIDTH - Lanes.LEFT);
        return new Lanes(
                words.text("plan.lanes.words", runs.size(), texts.span(length)),
                number(x(now)),
                Long.toString(from.toEpochMilli()),
                number(unit),
                lanes,
                ticks());
    }

    private boolean isSeen(Instant start, Instant end) {
        return start.isBefore(from.plus(length)) && end.isAfter(from);
    }

    private Lanes.Block out(Instant start, Instant end) {
        String told = words.text("plan.out", texts.at(start, now), texts.at(end, now));
        return new Lanes.Block(
                "out", number(x(start)), width(start, end), words.text("plan.out.short"), "", "", told, "", "");
    }

    private Lanes.Block block(Run run, boolean isRunning, Shop planned, Set<String> lateLots) {
        boolean isFrozen = planned.frozen().contains(run);
        long late = run.lots().stream().filter(lateLots::contains).count();
        String lots = String.join(", ", run.lots());
        boolean hasRoom = x(run.endAt()) - x(run.startAt()) > LEAST_FOR_LABEL;
        String title = words.text(
                "plan.run.title",
                texts.temperature(run.temperature()),
                texts.at(run.startAt(), now),
                texts.at(run.endAt(), now),
                lots);
        return new Lanes.Block(
                isRunning ? "running" : isFrozen ? "frozen" : "planned",
                number(x(run.startAt())),
                width(run.startAt(), run.endAt()),
                hasRoom ? texts.temperature(run.temperature()) : "",
                hasRoom ? words.text("plan.run.lots", run.lots().size()) : "",
                late == 0 ? "" : words.text("plan.late.mark", late),
                late == 0 ? title : title + " " + words.text("plan.late.mark", late),
                isRunning ? "" : "move-" + run.lots().get(0),
                "#run-" + run.lots().get(0));
    }

    private double x(Instant at) {
        double share = (double) Duration.between(from, at).toMillis() / (double) length.toMillis();
        return Lanes.LEFT + Math.max(0, Math.min(1, share)) * (Lanes.WIDTH - Lanes.LEFT);
    }

    private String width(Instant start, Instant end) {
        return number(Math.max(3, x(end) - x(start)));
    }

    /** Whole hours or midnights of the site, as many as fit. */
    private List<Lanes.Tick> ticks() {
        List<Lanes.Tick> ticks = new ArrayList<>();
        int step = STEPS_H[STEPS_H.length - 1];
        for (int hours : STEPS_H) {
            if (length.toHours() / hours <= MOST_TICKS) {
                step = hours;
                break;
            }
        }
        LocalDate day = LocalDate.ofInstant(from, texts.zone());
        ZonedDateTime at = day.atStartOfDay(texts.zone());
        while (at.toInstant().isBefore(from.plus(length))) {
            if (!at.toInstant().isBefore(from)) {
                double x = x(at.toInstant());
                boolean hasRoom = x < Lanes.WIDTH - WORDS_OF_A_TICK;
                String words = hasRoom ? (at.getHour() == 0 ? DAY : HOUR).format(at) : "";
                ticks.add(new Lanes.Tick(number(x), words));
            }
            at = step < 24 ? at.plusHours(step) : at.plusDays(step / 24);
        }
        return ticks;
    }

    private static String number(double value) {
        return Double.toString(Math.round(value * 100) / 100.0);
    }
}
