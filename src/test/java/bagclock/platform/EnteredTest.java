package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class EnteredTest {
    private static final Texts TEXTS = new Texts(ZoneOffset.UTC, Messages.load());

    private static long ms(String typed, DoubleUnaryOperator whole) {
        Optional<Duration> hours = Entered.of(Map.of("h", typed), TEXTS).hours("h", 0, 10_000, whole);
        return hours.orElseThrow().toMillis();
    }

    /** A hundredth of an hour is 36 s: no whole one may lose or win a millisecond on its way through a double. */
    @Test
    void hundredthsOfAnHourAreWholeOnBothSides() {
        for (int hundredths = 1; hundredths <= 20_000; hundredths++) {
            String typed = BigDecimal.valueOf(hundredths, 2).toPlainString();
            assertThat(ms(typed, Math::floor)).as(typed).isEqualTo(hundredths * 36_000L);
            assertThat(ms(typed, Math::ceil)).as(typed).isEqualTo(hundredths * 36_000L);
        }
    }

    @Test
    void aPartOfAMillisecondGoesToTheSideThatIsAskedFor() {
        assertThat(ms("0.1234567", Math::floor)).isEqualTo(444_444);
        assertThat(ms("0,1234567", Math::ceil)).isEqualTo(444_445);
    }
}
