package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import bagclock.core.quantity.Celsius;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans of drawn shops against what the shops have become: what was planned stays, or is named with why. */
class HeldTest {
    static LongStream shops() {
        // 373: alone, a pinned run would need a longer change-over than after the run before it.
        return LongStream.concat(Counts.seeds(300, 5_000), LongStream.of(373)).distinct();
    }

    private static Plan planned(Shop shop) {
        Replan replan = new Replan(shop);
        Plan plan = replan.minutes().plan(replan.fresh().sketch());
        return new Plan(
                plan.runs().stream().filter(run -> !shop.frozen().contains(run)).toList());
    }

    private static Predicate<Run> some(long seed) {
        return run -> (run.hashCode() + seed) % 2 == 0;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("shops")
    void nothingIsLetGoAsLongAsNothingChanges(long seed) {
        Shop shop = new ShopDraws(seed).small(8);
        Plan plan = planned(shop);

        Held held = Held.of(shop, plan, some(seed));

        assertThat(held.letGo()).isEmpty();
        assertThat(held.kept()).allMatch(some(seed));
        assertThat(held.free()).noneMatch(some(seed));
        assertThat(both(held)).containsExactlyInAnyOrderElementsOf(plan.runs());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("shops")
    void whatCannotStayIsNamedWithWhy(long seed) {
        Shop shop = new ShopDraws(seed).small(8);
        Plan plan = planned(shop);
        Shop later = changed(shop, plan, new SplittableRandom(seed));

        Held held = Held.of(later, plan, some(seed));

        Set<String> found = new TreeSet<>();
        both(held).forEach(run -> found.addAll(run.lots()));
        held.letGo().forEach(one -> {
            found.addAll(one.lots());
            assertThat(one.faults()).isNotEmpty();
            assertThat(one.lots()).isNotEmpty().isSubsetOf(one.run().lots());
        });
        plan.runs().stream()
                .filter(run -> !run.startAt().isBefore(later.now()))
                .flatMap(run -> run.lots().stream())
                .filter(lot -> isNotInItsOven(later, plan, lot))
                .forEach(lot -> assertThat(found).contains(lot));
        isLawful(later, both(held));
    }

    private static boolean isNotInItsOven(Shop shop, Plan plan, String lot) {
        String oven = plan.runOf(lot).orElseThrow().oven();
        return shop.frozen().stream()
                .noneMatch(run -> run.oven().equals(oven) && run.lots().contains(lot));
    }

    private static List<Run> both(Held held) {
        List<Run> both = new ArrayList<>(held.kept());
        both.addAll(held.free());
        return both;
    }

    private static void isLawful(Shop shop, List<Run> stay) {
        List<Run> all = new ArrayList<>(shop.frozen());
        all.addAll(stay);
        List<Lot> lots = shop.lots().stream()
                .filter(lot -> all.stream().anyMatch(run -> run.lots().contains(lot.tag())))
                .toList();
        Shop those = new Shop(shop.now(), shop.ovens(), lots, shop.frozen(), shop.customs());
        assertThat(PlanCheck.faults(those, new Plan(all))).isEmpty();
    }

    /** An hour later; a lot is gone or in some oven, an oven is closed, smaller, gone or less hot, a bake takes longer. */
    private static Shop changed(Shop shop, Plan plan, SplittableRandom random) {
        Instant now = shop.now().plus(ShopDraws.steps(random.nextInt(3)));
        List<Oven> ovens = new ArrayList<>(shop.ovens());
        List<Lot> lots = new ArrayList<>(shop.lots());
        List<Run> frozen = new ArrayList<>(shop.frozen());
        Oven oven = ovens.get(random.nextInt(ovens.size()));
        int kind = random.nextInt(6);
        if (kind == 0 && !lots.isEmpty()) {
            lots.remove(random.nextInt(lots.size()));
        } else if (kind == 1) {
            ovens.set(ovens.indexOf(oven), smaller(oven));
        } else if (kind == 2) {
            ovens.set(ovens.indexOf(oven), closed(oven, now));
        } else if (kind == 3 && ovens.size() > 1 && frozen.isEmpty()) {
            ovens.remove(oven);
        } else if (kind == 4) {
            lots.replaceAll(HeldTest::longer);
        } else if (!plan.runs().isEmpty() && frozen.isEmpty()) {
            Run run = plan.runs().get(random.nextInt(plan.runs().size()));
            Run.Stay stay = new Run.Stay(run.lots().get(0), now, now.plus(ShopDraws.steps(9)));
            frozen.add(new Run(oven.code(), run.temperature(), List.of(stay)));
        }
        return new Shop(now, ovens, lots, frozen, shop.customs());
    }

    private static Oven smaller(Oven oven) {
        return new Oven(oven.code(), oven.lowest(), new Celsius(95), 1, oven.holds(), oven.habits());
    }

    private static Oven closed(Oven oven, Instant now) {
        Oven.Habits habits = oven.habits();
        List<Span> out = List.of(new Span(now.plus(ShopDraws.steps(2)), now.plus(ShopDraws.steps(30))));
        return new Oven(
                oven.code(),
                oven.lowest(),
                oven.highest(),
                oven.positions(),
                oven.holds(),
                new Oven.Habits(habits.heatUp(), habits.coolDown(), habits.changes(), habits.last(), out));
    }

    private static Lot longer(Lot lot) {
        List<Programme> longer = lot.programmes().stream()
                .map(one -> new Programme(
                        one.temperature(),
                        one.least().plus(ShopDraws.STEP),
                        one.most().plus(ShopDraws.STEP),
                        one.maxHumidity()))
                .toList();
        return new Lot(lot.tag(), lot.positions(), longer, lot.ovens(), lot.wish());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("shops")
    void whatShouldHaveBegunIsNamedUntilItsTimeIsOver(long seed) {
        Shop shop = new ShopDraws(seed).small(4);
        Plan plan = planned(shop);
        for (Run run : plan.runs()) {
            Plan alone = new Plan(List.of(run));
            Held late = Held.of(at(shop, run.endAt().minusSeconds(1)), alone, some(seed));
            assertThat(late.letGo()).hasSize(1).allMatch(Held.LetGo::isOverdue);
            assertThat(late.letGo().get(0).lots()).isEqualTo(run.lots());
            assertThat(Held.of(at(shop, run.endAt()), alone, some(seed)))
                    .isEqualTo(new Held(List.of(), List.of(), List.of()));
        }
    }

    private static Shop at(Shop shop, Instant moment) {
        return new Shop(moment, shop.ovens(), shop.lots(), shop.frozen(), shop.customs());
    }
}
