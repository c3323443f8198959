package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A lot pays for being moved in a cell if it is moved at every minute of the cell, and only then. */
class PricedLotsTest {
    private static final int PRICE = 90;

    static LongStream seeds() {
        return Counts.seeds(20, 1_000);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aCellCostsAMoveIfEachOfItsMinutesDoes(long seed) {
        Problem problem =
                anchored(new Replan(new ShopDraws(seed).small(6)).minutes().problem(), seed);
        for (int most : new int[] {1_000, 40, 10}) {
            Cells cells = new Cells(problem, 4_000, most);
            PricedLots priced = new PricedLots(problem, cells, Long.MAX_VALUE);
            for (int lot = 0; lot < problem.lots().length; lot++) {
                for (int oven = 0; oven < problem.ovens().length; oven++) {
                    for (int cell = 0; cell < cells.count(); cell++) {
                        assertThat(priced.cost(lot, oven, cell, cell + 1) - priced.late(lot, cell + 1))
                                .as("lot %d in oven %d from cell %d of %d", lot, oven, cell, cells.count())
                                .isEqualTo(isMoved(problem, cells, lot, oven, cell) ? PRICE : 0);
                    }
                }
            }
        }
    }

    private static boolean isMoved(Problem problem, Cells cells, int lot, int oven, int cell) {
        return IntStream.rangeClosed(cells.start(cell), cells.last(cell))
                .allMatch(minute -> problem.anchor().isMoved(lot, oven, minute));
    }

    private static Problem anchored(Problem problem, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] ovens = new int[problem.lots().length];
        Arrays.setAll(ovens, lot -> random.nextInt(problem.ovens().length + 1) - 1);
        int[] starts = new int[ovens.length];
        Arrays.setAll(starts, lot -> random.nextInt(4_000));
        return problem.anchored(new Problem.Anchor(ovens, starts, PRICE));
    }
}
