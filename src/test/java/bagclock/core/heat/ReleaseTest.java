package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What an engineer may release for one heat; the project's own rule. */
class ReleaseTest {
    private static Story level3() {
        return Story.of(PartUnderTest.level("3"));
    }

    @Test
    void aBakeAndAHoldMayBeReleased() {
        assertThat(Release.isPossible(level3().opened(0).answer(200))).isTrue();
        assertThat(Release.isPossible(level3().opened(0)
                        .heated(1, 245)
                        .heated(2, 245)
                        .heated(3, 245)
                        .place(4, 1)))
                .isTrue();
    }

    @Test
    void whatIsClearOrWaitsNeedsNone() {
        assertThat(Release.isPossible(level3().opened(0).answer(1))).isFalse();
        Story resting = Story.of(PartUnderTest.level("4")).opened(0).stored(8, 5);
        assertThat(resting.answer(80).verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Release.isPossible(resting.answer(80))).isFalse();
    }

    /** Open the bag, measure the body, end the bake: another way out is at hand. */
    @Test
    void whatHasAnotherWayOutIsNotReleased() {
        assertThat(Release.isPossible(level3().sealed(0).answer(1))).isFalse();
        Story unmeasured = Story.of(PartUnderTest.level("3").thicknessUnknown()).opened(0);
        assertThat(unmeasured.answer(200).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Release.isPossible(unmeasured.answer(200))).isFalse();
        assertThat(Release.isPossible(level3().unknown(0).inOven(1, 125).answer(2)))
                .isFalse();
        assertThat(Release.isPossible(level3().unknown(0).inOven(1, 125).answer(200)))
                .isFalse();
    }
}
