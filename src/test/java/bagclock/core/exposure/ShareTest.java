package bagclock.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.Life;
import java.math.BigInteger;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** Used life is exact: 'ends exactly then' does not hang on rounding (the project's own decision). */
class ShareTest {
    private static final Life HOUR = Life.of(Duration.ofHours(1));
    private static final Life THIRD = new Life(10_800_000, 3);
    private static final long HOUR_MS = 3_600_000;

    private static Span span(long from, long to) {
        return Span.floor(from, to, Optional.empty(), Span.Basis.READ);
    }

    @Test
    void sharesAddExactly() {
        Share third = Share.of(1, Life.of(Duration.ofMillis(3)));

        assertThat(third.plus(third).plus(third)).isEqualByComparingTo(Share.WHOLE);
        assertThat(third.plus(third).plus(third).isAboveWhole()).isFalse();
        assertThat(third.minus(third)).isEqualTo(Share.NONE);
        assertThat(Share.NONE.plus(third)).isEqualTo(third);
        assertThat(third.max(Share.WHOLE)).isEqualTo(Share.WHOLE);
        assertThat(Share.WHOLE.max(third)).isEqualTo(Share.WHOLE);
    }

    @Test
    void anUnlimitedLifeUsesNothing() {
        assertThat(Share.of(HOUR_MS, Life.UNLIMITED)).isEqualTo(Share.NONE);
        assertThat(Share.of(0, HOUR)).isEqualTo(Share.NONE);
    }

    @Test
    void aLifeThatIsAFractionOfMillisecondsIsCountedExactly() {
        assertThat(Share.of(HOUR_MS, THIRD)).isEqualByComparingTo(Share.WHOLE);
        assertThat(Share.WHOLE.hoursOf(THIRD)).isEqualByComparingTo("1");
        assertThat(new Share(BigInteger.ONE, BigInteger.TWO).floorMsOf(HOUR)).isEqualTo(HOUR_MS / 2);
    }

    /** The life itself is inside, a millisecond more is not; the moment is the last one inside. */
    @Test
    void theMomentAtWhichALifeRunsOutIsExact() {
        Usage usage = new Usage();

        assertThat(usage.spend(span(0, HOUR_MS), HOUR)).isEmpty();
        assertThat(usage.isPastWhole()).isFalse();
        assertThat(usage.spend(span(HOUR_MS, HOUR_MS + 1), HOUR)).isEqualTo(OptionalLong.of(HOUR_MS));
        assertThat(usage.isPastWhole()).isTrue();
        assertThat(usage.spend(span(HOUR_MS + 1, HOUR_MS + 2), HOUR)).isEmpty();
    }

    @Test
    void manyLivesAddUp() {
        Usage usage = new Usage();
        for (int i = 1; i <= 6; i++) {
            usage.spend(span(0, HOUR_MS), Life.of(Duration.ofHours(6L * i)));
        }
        usage.spend(span(0, HOUR_MS), Life.UNLIMITED);

        assertThat(usage.share()).isEqualByComparingTo(new Share(BigInteger.valueOf(147), BigInteger.valueOf(360)));
        Usage copy = usage.copy();
        copy.spend(span(0, HOUR_MS), HOUR);
        assertThat(usage.isPastWhole()).isFalse();
        assertThat(copy.isPastWhole()).isTrue();
    }

    @Test
    void raisingToTheWholeAddsWhatIsMissing() {
        Usage usage = new Usage();
        usage.spend(span(0, HOUR_MS / 4), HOUR);

        assertThat(usage.raiseToWhole()).isEqualByComparingTo(new Share(BigInteger.valueOf(3), BigInteger.valueOf(4)));
        assertThat(usage.share()).isEqualByComparingTo(Share.WHOLE);
        usage.spend(span(0, HOUR_MS), HOUR);
        assertThat(usage.raiseToWhole()).isEqualByComparingTo(Share.NONE);
    }
}
