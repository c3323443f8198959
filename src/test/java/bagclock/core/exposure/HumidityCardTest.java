package bagclock.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.HumidityCard.Word;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** J-STD-033D, humidity indicator card (S16, S23): which spot decides; other sets of spots occur (S18, S28). */
class HumidityCardTest {
    @Test
    void aWetSpotAtOrAboveTheNeededOneIsWet() {
        assertThat(new HumidityCard(Map.of(5.0, true, 10.0, false)).says(10)).isEqualTo(Word.WET);
        assertThat(new HumidityCard(Map.of(5.0, true, 15.0, false)).says(10)).isEqualTo(Word.WET);
        assertThat(new HumidityCard(Map.of(5.0, false, 10.0, true)).says(10)).isEqualTo(Word.DRY);
    }

    @Test
    void aDrySpotAtOrBelowTheNeededOneProvesIt() {
        assertThat(new HumidityCard(Map.of(10.0, true)).says(10)).isEqualTo(Word.DRY);
        assertThat(new HumidityCard(Map.of(5.0, true)).says(10)).isEqualTo(Word.DRY);
        assertThat(new HumidityCard(Map.of(5.0, true)).says(60)).isEqualTo(Word.DRY);
    }

    @Test
    void aCardWithoutSuchASpotProvesNothing() {
        assertThat(new HumidityCard(Map.of(60.0, true)).says(10)).isEqualTo(Word.NO_PROOF);
        assertThat(new HumidityCard(Map.of(5.0, false)).says(10)).isEqualTo(Word.NO_PROOF);
        assertThat(new HumidityCard(Map.of()).says(60)).isEqualTo(Word.NO_PROOF);
    }

    @Test
    void anyWetSpotAsksForANewCard() {
        assertThat(new HumidityCard(Map.of(5.0, false, 10.0, true)).hasWetSpot())
                .isTrue();
        assertThat(new HumidityCard(Map.of(5.0, true)).hasWetSpot()).isFalse();
    }
}
