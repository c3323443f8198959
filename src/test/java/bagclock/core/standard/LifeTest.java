package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class LifeTest {
    @Test
    void equalFractionsAreEqual() {
        assertThat(new Life(6, 4)).isEqualTo(new Life(3, 2)).hasSameHashCodeAs(new Life(3, 2));
        assertThat(new Life(7, 0)).isEqualTo(Life.UNLIMITED);
        assertThat(Life.of(Duration.ofDays(7))).isEqualTo(new Life(604_800_000, 1));
    }

    @Test
    void unlimitedIsTheLongest() {
        assertThat(Life.UNLIMITED.isUnlimited()).isTrue();
        assertThat(Life.UNLIMITED).isGreaterThan(new Life(Long.MAX_VALUE, 1));
        assertThat(new Life(1, Long.MAX_VALUE)).isLessThan(Life.UNLIMITED);
        assertThat(Life.UNLIMITED).isEqualByComparingTo(Life.UNLIMITED);
        assertThat(Life.shorterOf(Life.UNLIMITED, new Life(5, 1))).isEqualTo(new Life(5, 1));
        assertThat(Life.shorterOf(new Life(5, 1), Life.UNLIMITED)).isEqualTo(new Life(5, 1));
    }

    @Test
    void comparesExactlyWhereFloatingPointWouldNot() {
        Life longer = new Life(Long.MAX_VALUE, Long.MAX_VALUE - 1);
        Life shorter = new Life(Long.MAX_VALUE - 1, Long.MAX_VALUE - 2);
        assertThat(longer).isLessThan(shorter);
        assertThat(shorter).isGreaterThan(longer);
        assertThat(new Life(1, 3)).isLessThan(new Life(1, 2));
    }

    @Test
    void scalingIsExact() {
        Life year = Life.of(Duration.ofDays(365));
        assertThat(year.scaled(new Life(1, 1), new Life(3, 1))).isEqualTo(new Life(31_536_000_000L / 3, 1));
        assertThat(year.scaled(new Life(1, 1), new Life(231, 1)).denominator()).isEqualTo(77);
        assertThat(year.scaled(Life.UNLIMITED, new Life(3, 1))).isEqualTo(Life.UNLIMITED);
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> year.scaled(new Life(1, 1), Life.UNLIMITED));
    }

    @Test
    void noLifeIsZeroOrNegative() {
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> new Life(0, 1));
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> new Life(1, -1));
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> Life.of(Duration.ZERO));
    }
}
