package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A part goes into a bag as new only dry: right after a bake that counted, whatever its level. */
class SealedProofTest {
    @ParameterizedTest
    @CsvSource({"1, 48, true", "1, 47, false", "3, 48, true", "3, 47, false", "6, 48, true", "6, 47, false"})
    void onlyABakeThatCountedIsProof(String level, double hours, boolean proven) {
        PartUnderTest part = PartUnderTest.level(level).makersBake(70, 48);
        Story story =
                Story.of(part).toFloor(0).bake(1, 60, 70, hours).sealed(60).opened(70);

        assertThat(SealedProof.refusal(Story.STANDARD, story.history(71)).isEmpty())
                .isEqualTo(proven);
    }

    @ParameterizedTest
    @CsvSource({"1", "3", "6"})
    void aMakersBagNeedsNone(String level) {
        Story story = Story.of(PartUnderTest.level(level)).sealed(0).opened(1);

        assertThat(SealedProof.refusal(Story.STANDARD, story.history(2))).isEmpty();
    }
}
