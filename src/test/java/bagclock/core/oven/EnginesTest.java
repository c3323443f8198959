package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The engines against every grouping and order of small shops, and every plan of theirs through the check. */
class EnginesTest {
    static LongStream small() {
        // 969: one run less, if two lots wait for weeks; the hour at which lots come out must not outweigh it.
        return LongStream.concat(Counts.seeds(60, 1_000), LongStream.of(969)).distinct();
    }

    static LongStream many() {
        return Counts.seeds(200, 10_000);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("small")
    void annealingFindsTheBestPlanOfASmallShop(long seed) {
        Shop shop = new ShopDraws(seed).small(5);
        Replan replan = new Replan(shop);
        Found start = replan.fresh();
        Problem problem = replan.minutes().problem();
        Found once = new Anneal().improve(problem, start.sketch(), Budget.of(40_000, seed));
        Found found = new Anneal().improve(problem, once.sketch(), Budget.of(40_000, seed + 1));

        Score best = Exhaustive.best(shop);
        assertThat(List.of(
                        found.score().late(),
                        found.score().ovenMinutes(),
                        found.score().runs()))
                .isEqualTo(List.of(best.late(), best.ovenMinutes(), best.runs()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("many")
    void everyPlanKeepsEveryLaw(long seed) {
        Shop shop = new ShopDraws(seed).small(12);
        if (seed % 4 == 0) {
            shop = ShopDraws.withDoors(shop, 1);
        }
        Replan replan = new Replan(shop);
        Found start = replan.fresh();
        Problem problem = replan.minutes().problem();
        isLawful(shop, replan, start);
        isLawful(shop, replan, new Anneal().improve(problem, start.sketch(), Budget.of(3_000, seed)));
        if (seed % 4 == 1) {
            isLawful(shop, replan, new PricePlanner().improve(problem, start.sketch(), Budget.of(100, seed)));
        }
        isLawful(shop, replan, wander(problem, start.sketch(), seed));
    }

    private static void isLawful(Shop shop, Replan replan, Found found) {
        Plan plan = replan.minutes().plan(found.sketch());
        assertThat(PlanCheck.faults(shop, plan)).isEmpty();
        Shop free = new Shop(shop.now(), shop.ovens(), shop.free(), shop.frozen(), shop.customs());
        PlanSum sum = PlanSum.of(free, plan);
        assertThat(sum.lateHours().toMinutes()).isEqualTo(found.score().late());
        assertThat(sum.runs()).isEqualTo(found.score().runs());
        assertThat(sum.ovenTime().toMinutes()).isEqualTo(found.score().ovenMinutes());
        Score again =
                new Decoder(replan.minutes().problem()).score(replan.minutes().sketch(plan));
        assertThat(again.compareTo(found.score())).isLessThanOrEqualTo(0);
    }

    // A random plan: any change that has a time is taken.
    private static Found wander(Problem problem, Sketch from, long seed) {
        Moves moves = new Moves(problem, new SplittableRandom(seed));
        Decoder decoder = new Decoder(problem);
        List<Track> tracks = TrackTest.tracks(problem, decoder, from);
        for (int i = 0; i < 60 && problem.lots().length > 0; i++) {
            TrackTest.take(tracks, moves.draw(tracks));
        }
        Sketch sketch = new Sketch(tracks.stream().map(Track::batches).toList());
        return new Found(sketch, decoder.score(sketch), Bounds.NONE);
    }
}
