package bagclock.desk;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.FloorRate;
import bagclock.core.standard.DeratingGrid;
import bagclock.core.standard.Life;
import bagclock.readings.AirTime;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The life at each cell of the derating grid: all that a running sum needs to know of a part. Parts with the same lives
 * share their sums.
 *
 * @param lives by cell; empty outside the part's table
 */
record CellLives(List<Optional<Life>> lives) {
    /** Digits after the point of a share of a life; a millisecond is more than 1e-14 of any life. */
    static final int SCALE = 30;

    private static final String NONE = "-";
    private static final int KEY_LENGTH = 16;

    CellLives {
        lives = List.copyOf(lives);
    }

    static CellLives of(FloorRate rate) {
        List<Optional<Life>> lives = new ArrayList<>();
        for (int cell = 0; cell < DeratingGrid.CELLS; cell++) {
            lives.add(rate.in(new Air(DeratingGrid.warmest(cell), DeratingGrid.wettest(cell))));
        }
        return new CellLives(lives);
    }

    static CellLives parse(String text) {
        List<Optional<Life>> lives = new ArrayList<>();
        for (String life : text.split(" ", -1)) {
            int slash = life.indexOf('/');
            lives.add(
                    life.equals(NONE)
                            ? Optional.empty()
                            : Optional.of(new Life(
                                    Long.parseLong(life.substring(0, slash)),
                                    Long.parseLong(life.substring(slash + 1)))));
        }
        return new CellLives(lives);
    }

    String text() {
        return String.join(
                " ",
                lives.stream()
                        .map(life -> life.map(l -> l.numeratorMs() + "/" + l.denominator())
                                .orElse(NONE))
                        .toList());
    }

    String key() {
        return Gathering.sha256(text()).substring(0, KEY_LENGTH);
    }

    /** The share of a life that a millisecond in this air uses up; empty outside the table. */
    Optional<BigDecimal> rate(Air air) {
        int counter = AirTime.counterOf(air);
        return counter == AirTime.OUTSIDE
                ? Optional.empty()
                : lives.get(counter).map(life -> share(1, life));
    }

    /** What some time uses up, unread time at the rate of the worst case; time outside the table is left out. */
    BigDecimal sum(AirTime time, Air worst) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int cell = 0; cell < DeratingGrid.CELLS; cell++) {
            long ms = time.ms(cell);
            sum = ms == 0
                    ? sum
                    : sum.add(lives.get(cell).map(life -> share(ms, life)).orElse(BigDecimal.ZERO));
        }
        int counter = AirTime.counterOf(worst);
        long unread = time.ms(AirTime.UNREAD);
        boolean counts = unread != 0 && counter != AirTime.OUTSIDE;
        return counts
                ? sum.add(lives.get(counter).map(life -> share(unread, life)).orElse(BigDecimal.ZERO))
                : sum;
    }

    private static BigDecimal share(long ms, Life life) {
        return life.isUnlimited()
                ? BigDecimal.ZERO
                : BigDecimal.valueOf(ms)
                        .multiply(BigDecimal.valueOf(life.denominator()))
                        .divide(BigDecimal.valueOf(life.numeratorMs()), SCALE, RoundingMode.HALF_EVEN);
    }
}
