package bagclock.core.oven;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Measures what a rush lot does to a plan, one line for each shop: {@code LOTS OVENS SEEDS ANNEAL-S}. The shop is planned;
 * then a lot comes that must be out as soon as any oven could have it, at the highest weight. It is taken in at once, then
 * the plan gets better at the usual price for each lot that moves; beside it a plan of all lots from nothing, given as much
 * time.
 */
public final class RushBenchmark {
    private static final Duration FENCE = Duration.ofHours(1);
    private static final Duration MOVE_PRICE = Duration.ofMinutes(30);

    private RushBenchmark() {}

    /** Prints a table. */
    public static void main(String[] args) {
        Budget budget = Budget.of(Duration.ofMillis(Math.round(Double.parseDouble(args[3]) * 1000)), 1);
        System.out.println(
                "| shop | late before | taken in (ms) | late | moved | late better | moved | late from nothing |");
        for (int tightness = 1; tightness <= 3; tightness++) {
            for (int seed = 1; seed <= Integer.parseInt(args[2]); seed++) {
                Shop shop =
                        new ShopDraws(seed).workshop(Integer.parseInt(args[0]), Integer.parseInt(args[1]), tightness);
                measure("seed " + seed + ", tightness " + tightness, shop, budget);
            }
        }
    }

    private static void measure(String name, Shop shop, Budget budget) {
        Replan first = new Replan(shop);
        Plan before = annealed(first, first.minutes().problem(), first.fresh(), budget);
        Shop now = withRush(shop, before);
        long from = System.nanoTime();
        Replan replan = new Replan(now);
        Found inserted = replan.inserted(before);
        long took = System.nanoTime() - from;
        Plan atOnce = replan.minutes().plan(inserted.sketch());
        Problem anchored = replan.minutes().anchored(before, MOVE_PRICE);
        Plan better = annealed(replan, anchored, inserted, budget);
        Plan afresh = annealed(replan, replan.minutes().problem(), replan.fresh(), budget);
        for (Plan plan : List.of(atOnce, better, afresh)) {
            if (!PlanCheck.faults(now, plan).isEmpty()) {
                throw new IllegalStateException(PlanCheck.faults(now, plan).toString());
            }
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %d | %.1f | %.0f %% | %.1f | %.0f %% | %.1f |%n",
                name,
                late(shop, before),
                took / 1_000_000,
                late(now, atOnce),
                moved(shop, before, atOnce),
                late(now, better),
                moved(shop, before, better),
                late(now, afresh));
    }

    private static Plan annealed(Replan replan, Problem problem, Found from, Budget budget) {
        return replan.minutes()
                .plan(new Anneal().improve(problem, from.sketch(), budget).sketch());
    }

    /** What starts within the fence stays; the lot is as the first one that any oven takes at its hottest. */
    private static Shop withRush(Shop shop, Plan before) {
        List<Run> frozen = before.runs().stream()
                .filter(run -> run.startAt().isBefore(shop.now().plus(FENCE)))
                .toList();
        Lot model = shop.lots().stream()
                .filter(lot -> hottest(lot).isPresent())
                .findFirst()
                .orElseThrow();
        Lot.Wish wish = new Lot.Wish(
                shop.now(),
                hottest(model).map(one -> shop.now().plus(one.least().plusHours(1))),
                5);
        List<Lot> lots = new ArrayList<>(shop.lots());
        lots.add(new Lot("RUSH", 1, model.programmes(), Set.of(), wish));
        return new Shop(shop.now(), shop.ovens(), lots, frozen, shop.customs());
    }

    private static Optional<Programme> hottest(Lot lot) {
        return lot.programmes().stream()
                .filter(one -> one.temperature().degrees() >= 125)
                .findFirst();
    }

    private static double late(Shop shop, Plan plan) {
        return (double) PlanSum.of(shop, plan).lateHours().toMinutes() / 60;
    }

    private static double moved(Shop shop, Plan before, Plan after) {
        return 100.0 * Replan.moved(before, after).size() / shop.lots().size();
    }
}
