package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.Counts;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The best day of an oven against a plain walk through all its days, with several frozen runs, on fine and rough cells. */
class PricedOvenTest {
    private static final int[] MOST_CELLS = {1_000, 60, 15};

    static LongStream seeds() {
        // 1892 and 1942: a day is dearer that can't pass a frozen run shorter than a cell.
        return LongStream.concat(Counts.seeds(20, 2_000), LongStream.of(1892, 1942))
                .distinct();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theBestDayIsTheBestOfAllDays(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Problem problem = problem(seed, random);
        for (int most : MOST_CELLS) {
            PricedLots priced = priced(problem, most, random);
            for (int oven = 0; oven < problem.ovens().length; oven++) {
                PricedOven day = new PricedOven(priced, oven);
                double best = day.best();
                day.lookBack();

                assertThat(best).isCloseTo(PlainDays.best(priced, oven, day), within(1e-6));
                someRunsAreWhatTheyCost(priced, oven, day, random);
            }
        }
    }

    private static void someRunsAreWhatTheyCost(PricedLots priced, int oven, PricedOven day, SplittableRandom random) {
        for (PricedRun run : day.runs()) {
            for (int i = 0; i < 5; i++) {
                int start = random.nextInt(1 + priced.cells().count());
                double around = day.around(run, start);
                double plain = PlainDays.best(priced, oven, day, run, start);
                if (plain == Double.POSITIVE_INFINITY) {
                    assertThat(around).as("run from cell %d", start).isInfinite();
                } else {
                    assertThat(around).as("run from cell %d", start).isCloseTo(plain, within(1e-6));
                }
            }
        }
    }

    private static PricedLots priced(Problem problem, int mostCells, SplittableRandom random) {
        PricedLots priced = new PricedLots(problem, new Cells(problem, 4_000, mostCells), Long.MAX_VALUE);
        double[] prices = IntStream.range(0, problem.lots().length)
                .mapToDouble(lot -> random.nextInt(200_000))
                .toArray();
        priced.pay(prices);
        return priced;
    }

    private static Problem problem(long seed, SplittableRandom random) {
        Problem drawn = new Replan(new ShopDraws(seed).small(6)).minutes().problem();
        Problem.Terms[] ovens = Arrays.stream(drawn.ovens())
                .map(oven -> withFrozen(oven, drawn.temperatures(), random))
                .toArray(Problem.Terms[]::new);
        return new Problem(
                drawn.temperatures(),
                ovens,
                drawn.lots(),
                drawn.attended(),
                drawn.recovery(),
                random.nextBoolean() ? Aim.STAGES : new Aim(1, 600, 3, 5, false),
                drawn.anchor());
    }

    /** Up to three frozen runs, some of them shorter than a rough cell, with the changes between them. */
    private static Problem.Terms withFrozen(Problem.Terms oven, int temperatures, SplittableRandom random) {
        int[] fixed = new int[3 * (temperatures == 0 ? 0 : random.nextInt(4))];
        int state = oven.state();
        int now = 0;
        for (int i = 0; i < fixed.length; i += 3) {
            int temperature = random.nextInt(temperatures);
            int gap = random.nextBoolean() ? 0 : 30 * random.nextInt(20);
            int length = 30 * (1 + (random.nextBoolean() ? 0 : random.nextInt(12)));
            fixed[i] = now + oven.change()[state][temperature] + gap;
            fixed[i + 1] = fixed[i] + length;
            fixed[i + 2] = temperature;
            now = fixed[i + 1];
            state = temperature + 1;
        }
        return new Problem.Terms(
                oven.capacity(),
                oven.heatUp(),
                oven.coolDown(),
                oven.state(),
                oven.change(),
                oven.price(),
                oven.blocked(),
                fixed);
    }
}
