package bagclock.core.proof;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An interruption adds to the time needed (rules 8). */
class HotTimeTest {
    private static Instant at(int minute) {
        return Logs.START.plus(Duration.ofMinutes(minute));
    }

    private static Spell spell(int from, int to) {
        return new Spell(at(from), at(to));
    }

    @Test
    void anInterruptionMovesTheReadyTime() {
        HotTime time = new HotTime(at(30), List.of(spell(100, 120), spell(110, 130), spell(0, 40)));

        assertThat(time.after(Duration.ofMinutes(60))).isEqualTo(at(100));
        assertThat(time.after(Duration.ofMinutes(61))).isEqualTo(at(131));
        assertThat(time.until(at(115))).isEqualTo(Duration.ofMinutes(60));
        assertThat(time.until(at(10))).isZero();
        assertThat(time.until(at(200))).isEqualTo(Duration.ofMinutes(130));
    }

    static LongStream seeds() {
        return Counts.seeds(200, 20_000);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsNeededHasPassedWhenItIsReady(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Spell> lost = new ArrayList<>();
        for (int i = random.nextInt(6); i > 0; i--) {
            int from = random.nextInt(500);
            lost.add(spell(from, from + random.nextInt(60)));
        }
        HotTime time = new HotTime(at(random.nextInt(100)), lost);
        Duration needed = Duration.ofMinutes(random.nextInt(1, 400));

        assertThat(time.until(time.after(needed))).isEqualTo(needed);
        assertThat(time.after(needed)).isAfterOrEqualTo(time.start().plus(needed));
        assertThat(time.until(time.after(needed).minusMillis(1))).isLessThan(needed);
    }
}
