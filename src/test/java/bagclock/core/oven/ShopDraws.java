package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/** Draws shops; the same seed draws the same shop. All times are whole half hours. */
public final class ShopDraws {
    public static final Instant NOW = Instant.parse("2026-03-12T06:00:00Z");
    static final Duration STEP = Duration.ofMinutes(30);
    private static final List<Celsius> TEMPERATURES = List.of(new Celsius(40), new Celsius(90), new Celsius(125));

    private final SplittableRandom random;

    public ShopDraws(long seed) {
        random = new SplittableRandom(seed);
    }

    static Duration steps(int steps) {
        return STEP.multipliedBy(steps);
    }

    static Instant at(int steps) {
        return NOW.plus(steps(steps));
    }

    private int below(int most) {
        return random.nextInt(most);
    }

    private boolean once(int in) {
        return random.nextInt(in) == 0;
    }

    /** One to two ovens and up to as many lots; each lot fits an oven. */
    public Shop small(int mostLots) {
        List<Oven> ovens = new ArrayList<>();
        int count = 1 + below(2);
        for (int i = 0; i < count; i++) {
            ovens.add(oven("O" + i));
        }
        List<Run> frozen = once(3) ? List.of(frozen(ovens.get(0))) : List.of();
        List<Lot> lots = new ArrayList<>();
        int wanted = 1 + below(mostLots);
        List<Span> attended = attended();
        Optional<Duration> recovery = Optional.empty();
        Shop.Customs customs = new Shop.Customs(attended, recovery, Aim.STAGES);
        for (int i = 0; i < wanted; i++) {
            lots.add(lot("L" + i, ovens));
        }
        lots.addAll(frozen.stream()
                .flatMap(run -> run.lots().stream())
                .map(tag -> lot(tag, ovens))
                .toList());
        return Intake.of(new Shop(NOW, ovens, lots, frozen, customs)).shop();
    }

    /** The same shop, with doors that may be opened. */
    static Shop withDoors(Shop shop, int recoverySteps) {
        return new Shop(
                shop.now(),
                shop.ovens(),
                shop.lots(),
                shop.frozen(),
                new Shop.Customs(
                        shop.customs().attended(),
                        Optional.of(steps(recoverySteps)),
                        shop.customs().aim()));
    }

    private List<Span> attended() {
        if (!once(3)) {
            return List.of();
        }
        List<Span> days = new ArrayList<>();
        for (int day = 0; day < 30; day++) {
            days.add(new Span(at(day * 48 + 2), at(day * 48 + 2 + 16)));
        }
        return days;
    }

    private Oven oven(String code) {
        List<Span> out = new ArrayList<>();
        if (once(3)) {
            int from = below(20);
            out.add(new Span(at(from), at(from + 1 + below(20))));
        }
        return new Oven(
                code,
                new Celsius(once(3) ? 60 : 30),
                new Celsius(once(3) ? 100 : 150),
                1 + below(4),
                once(2) ? Optional.of(new RelativeHumidity(5)) : Optional.empty(),
                new Oven.Habits(
                        steps(below(2)),
                        steps(below(2)),
                        ChangeOvers.of(steps(below(2)), steps(1 + below(4))),
                        once(2) ? Optional.of(TEMPERATURES.get(below(3))) : Optional.empty(),
                        out));
    }

    private Run frozen(Oven oven) {
        int from = below(12) - 4;
        Run.Stay stay = new Run.Stay("F0", at(from), at(from + 4 + below(12)));
        return new Run(oven.code(), TEMPERATURES.get(below(3)), List.of(stay));
    }

    private Lot lot(String tag, List<Oven> ovens) {
        List<Programme> programmes = new ArrayList<>();
        int base = 2 + below(8);
        int spare = once(3) ? below(3) : 40;
        int[] factor = {8, 3, 1};
        for (int i = 0; i < 3; i++) {
            if (!once(3)) {
                Duration least = steps(base * factor[i]);
                programmes.add(new Programme(
                        TEMPERATURES.get(i),
                        least,
                        least.plus(steps(spare)),
                        i < 2 && once(2) ? Optional.of(new RelativeHumidity(5)) : Optional.empty()));
            }
        }
        Set<String> only = once(5) ? Set.of(ovens.get(below(ovens.size())).code()) : Set.of();
        int ready = once(2) ? 0 : below(20);
        Optional<Instant> due = once(5) ? Optional.empty() : Optional.of(at(ready + base + below(40)));
        return new Lot(tag, 1 + below(2), programmes, only, new Lot.Wish(at(ready), due, 1 + below(3)));
    }

    /** Forty lots for three ovens, or others in this likeness; tightness 1 is loose, 3 is tight. */
    public Shop workshop(int lots, int ovens, int tightness) {
        List<Oven> all = new ArrayList<>();
        for (int i = 0; i < ovens; i++) {
            int kind = i % 3;
            all.add(new Oven(
                    "OVEN-" + (i + 1),
                    new Celsius(kind == 0 ? 60 : 30),
                    new Celsius(kind == 2 ? 95 : 150),
                    kind == 0 ? 12 : kind == 1 ? 10 : 16,
                    kind == 0 ? Optional.empty() : Optional.of(new RelativeHumidity(5)),
                    new Oven.Habits(
                            Duration.ofMinutes(30),
                            Duration.ofMinutes(30),
                            ChangeOvers.of(Duration.ofMinutes(30), Duration.ofMinutes(90)),
                            Optional.empty(),
                            List.of())));
        }
        List<Lot> drawn = new ArrayList<>();
        double span = lots * 48.0 / ovens / tightness;
        for (int i = 0; i < lots; i++) {
            drawn.add(workshopLot("L" + i, (int) span));
        }
        return new Shop(NOW, all, drawn, List.of(), Shop.Customs.USUAL);
    }

    private Lot workshopLot(String tag, int span) {
        int kind = below(20);
        boolean[] may = {kind >= 12, kind < 17, kind < 12};
        int base = 10 + below(40);
        double[] factor = {26, 3.6, 1};
        List<Programme> programmes = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            if (may[i]) {
                Duration least = steps((int) Math.ceil(base * factor[i]));
                Duration spare = least.dividedBy(2).compareTo(Duration.ofHours(8)) > 0
                        ? least.dividedBy(2)
                        : Duration.ofHours(8);
                programmes.add(new Programme(
                        TEMPERATURES.get(i),
                        least,
                        least.plus(spare),
                        i == 2 ? Optional.empty() : Optional.of(new RelativeHumidity(5))));
            }
        }
        int ready = once(2) ? 0 : below(Math.max(1, span));
        int fastest = (int) (base * (may[2] ? 1 : may[1] ? 3.6 : 26));
        int due = ready + fastest + 4 + below(Math.max(1, span * 2));
        int weight = new int[] {1, 2, 5}[below(3)];
        return new Lot(tag, 1 + below(6), programmes, Set.of(), new Lot.Wish(at(ready), Optional.of(at(due)), weight));
    }
}
