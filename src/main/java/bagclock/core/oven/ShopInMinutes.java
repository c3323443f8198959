package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A shop as the engines compute with it, and the way back. Times needed and ready times are rounded up to the minute,
 * times borne and due times down.
 */
public final class ShopInMinutes {
    private static final long MINUTE_MS = 60_000;

    private final Shop shop;
    private final List<Lot> lots;
    private final List<Celsius> temperatures;
    private final Problem problem;

    private ShopInMinutes(Shop shop) {
        this.shop = shop;
        this.lots = shop.free();
        this.temperatures = temperatures(shop);
        this.problem = new Problem(
                temperatures.size(),
                shop.ovens().stream().map(this::terms).toArray(Problem.Terms[]::new),
                lots.stream().map(this::piece).toArray(Problem.Piece[]::new),
                attended(shop.customs().attended()),
                shop.customs().doorRecovery().map(ShopInMinutes::up).orElse(Problem.NO),
                shop.customs().aim(),
                Problem.Anchor.none(lots.size()));
    }

    /** Of a shop whose every free lot fits an oven. */
    public static ShopInMinutes of(Shop shop) {
        return new ShopInMinutes(shop);
    }

    /** For the engines. */
    public Problem problem() {
        return problem;
    }

    /** The free lot with this index. */
    public Lot lot(int index) {
        return lots.get(index);
    }

    /** The plan that a sketch stands for, with the frozen runs. */
    public Plan plan(Sketch sketch) {
        Decoder decoder = new Decoder(problem);
        List<Run> runs = new ArrayList<>(shop.frozen());
        for (int oven = 0; oven < sketch.ovens().size(); oven++) {
            if (!decoder.place(oven, sketch.ovens().get(oven))) {
                throw new IllegalStateException(
                        "no time for the runs of " + shop.ovens().get(oven).code());
            }
            for (Batch batch : sketch.ovens().get(oven)) {
                List<Run.Stay> stays = new ArrayList<>();
                for (int lot : batch.lots()) {
                    stays.add(new Run.Stay(lots.get(lot).tag(), moment(decoder.inAt(lot)), moment(decoder.outAt(lot))));
                }
                runs.add(new Run(shop.ovens().get(oven).code(), temperatures.get(batch.temperature()), stays));
            }
        }
        return new Plan(runs);
    }

    /** What is left of a plan for the free lots of this shop, in its order; lots that it can't keep so are left out. */
    public Sketch sketch(Plan plan) {
        Sketch sketch = Sketch.empty(problem);
        Decoder decoder = new Decoder(problem);
        for (Run run : plan.runs()) {
            int oven = ovenIndex(run.oven());
            int temperature = temperatures.indexOf(run.temperature());
            if (oven < 0 || temperature < 0) {
                continue;
            }
            int[] kept = run.lots().stream()
                    .mapToInt(this::index)
                    .filter(lot -> lot >= 0 && problem.can(lot, oven, temperature))
                    .toArray();
            Batch batch = Batch.of(problem, oven, temperature, kept);
            batch = isOpened(run) && problem.recovery() != Problem.NO ? batch.opened(problem, oven, true) : batch;
            List<Batch> more = new ArrayList<>(sketch.ovens().get(oven));
            more.add(batch);
            if (batch.isSound(problem, oven) && decoder.place(oven, more)) {
                sketch = sketch.with(oven, more);
            }
        }
        return sketch;
    }

    private static boolean isOpened(Run run) {
        return run.stays().stream()
                .anyMatch(stay ->
                        !stay.inAt().equals(run.startAt()) || !stay.outAt().equals(run.endAt()));
    }

    /** The free lots that a sketch does not hold, by index. */
    public List<Integer> missing(Sketch sketch) {
        boolean[] held = new boolean[lots.size()];
        sketch.ovens()
                .forEach(batches -> batches.forEach(batch -> {
                    for (int lot : batch.lots()) {
                        held[lot] = true;
                    }
                }));
        List<Integer> missing = new ArrayList<>();
        for (int lot = 0; lot < held.length; lot++) {
            if (!held[lot]) {
                missing.add(lot);
            }
        }
        return missing;
    }

    /** The problem, with a price for each lot that a plan moves away from where this plan has it. */
    public Problem anchored(Plan before, Duration price) {
        int[] oven = new int[lots.size()];
        int[] start = new int[lots.size()];
        for (int lot = 0; lot < lots.size(); lot++) {
            String tag = lots.get(lot).tag();
            oven[lot] = before.runOf(tag).map(run -> ovenIndex(run.oven())).orElse(Problem.NO);
            start[lot] = before.stay(tag).map(stay -> downAt(stay.inAt())).orElse(Problem.NO);
        }
        return problem.anchored(new Problem.Anchor(oven, start, price.toMinutes()));
    }

    /** The moment of a minute. */
    public Instant moment(int minute) {
        return shop.now().plus(Duration.ofMinutes(minute));
    }

    private int index(String tag) {
        for (int lot = 0; lot < lots.size(); lot++) {
            if (lots.get(lot).tag().equals(tag)) {
                return lot;
            }
        }
        return Problem.NO;
    }

    private int ovenIndex(String code) {
        return shop.ovens().stream().map(Oven::code).toList().indexOf(code);
    }

    private static List<Celsius> temperatures(Shop shop) {
        List<Celsius> all = new ArrayList<>();
        shop.lots().forEach(lot -> lot.programmes().forEach(one -> all.add(one.temperature())));
        shop.frozen().forEach(run -> all.add(run.temperature()));
        shop.ovens().forEach(oven -> oven.habits().last().ifPresent(all::add));
        return all.stream().distinct().sorted().toList();
    }

    private Problem.Terms terms(Oven oven) {
        int states = temperatures.size() + 1;
        int[][] change = new int[states][temperatures.size()];
        long[][] price = new long[states][temperatures.size()];
        for (int from = 0; from < states; from++) {
            for (int to = 0; to < temperatures.size(); to++) {
                Optional<Celsius> before = from == 0 ? Optional.empty() : Optional.of(temperatures.get(from - 1));
                ChangeOvers.Change between = oven.habits().changes().between(before, temperatures.get(to));
                change[from][to] = up(between.time());
                price[from][to] = between.price();
            }
        }
        return new Problem.Terms(
                oven.positions(),
                up(oven.habits().heatUp()),
                up(oven.habits().coolDown()),
                oven.habits().last().map(last -> temperatures.indexOf(last) + 1).orElse(0),
                change,
                price,
                blocked(oven.habits().outOfService()),
                fixed(oven));
    }

    private int[] fixed(Oven oven) {
        return shop.frozen().stream()
                .filter(run -> run.oven().equals(oven.code()))
                .sorted(Comparator.comparing(Run::startAt))
                .flatMapToInt(run ->
                        IntStream.of(downAt(run.startAt()), upAt(run.endAt()), temperatures.indexOf(run.temperature())))
                .toArray();
    }

    private Problem.Piece piece(Lot lot) {
        int[][] least = new int[shop.ovens().size()][temperatures.size()];
        int[][] most = new int[shop.ovens().size()][temperatures.size()];
        for (int oven = 0; oven < least.length; oven++) {
            Map<Celsius, Programme> best = best(lot, shop.ovens().get(oven));
            for (int at = 0; at < temperatures.size(); at++) {
                Programme programme = best.get(temperatures.get(at));
                least[oven][at] = programme == null ? Problem.NO : up(programme.least());
                most[oven][at] = programme == null ? Problem.NO : down(programme.most());
                if (least[oven][at] > most[oven][at]) {
                    least[oven][at] = Problem.NO;
                }
            }
        }
        return new Problem.Piece(
                lot.positions(),
                Math.max(0, upAt(lot.wish().readyFrom())),
                lot.wish().neededBy().map(this::downAt).orElse(Problem.NEVER),
                lot.wish().weight(),
                least,
                most);
    }

    /** The shortest programme at each temperature that the oven can do for the lot. */
    private static Map<Celsius, Programme> best(Lot lot, Oven oven) {
        Map<Celsius, Programme> best = new HashMap<>();
        for (Programme programme : lot.programmes()) {
            if (lot.mayGoTo(oven) && programme.fits(oven)) {
                best.merge(
                        programme.temperature(),
                        programme,
                        (one, two) -> two.least().compareTo(one.least()) < 0 ? two : one);
            }
        }
        return best;
    }

    private int[] blocked(List<Span> spans) {
        return spans.stream()
                .sorted(Comparator.comparing(Span::startInclusive))
                .flatMapToInt(span -> IntStream.of(downAt(span.startInclusive()), upAt(span.endExclusive())))
                .toArray();
    }

    private int[] attended(List<Span> spans) {
        return spans.stream()
                .sorted(Comparator.comparing(Span::startInclusive))
                .filter(span -> downAt(span.endExclusive()) >= upAt(span.startInclusive()))
                .flatMapToInt(span -> IntStream.of(upAt(span.startInclusive()), downAt(span.endExclusive())))
                .toArray();
    }

    private int downAt(Instant moment) {
        return clip(Math.floorDiv(Duration.between(shop.now(), moment).toMillis(), MINUTE_MS));
    }

    private int upAt(Instant moment) {
        return clip(-Math.floorDiv(-Duration.between(shop.now(), moment).toMillis(), MINUTE_MS));
    }

    private static int clip(long minute) {
        return (int) Math.max(-Problem.NEVER, Math.min(Problem.NEVER, minute));
    }

    private static int up(Duration time) {
        return clip(-Math.floorDiv(-time.toMillis(), MINUTE_MS));
    }

    private static int down(Duration time) {
        return clip(time.toMillis() / MINUTE_MS);
    }
}
