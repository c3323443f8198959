package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The site's choice to use cells drier than 60 %RH (table 7-1; the condition is the project's own, inference). */
class DrierAirTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static Story level4In2245(boolean useDrier) {
        return Story.of(PartUnderTest.level("4")).opened(0).air(22, 45).rules(useDrier, 2, 0);
    }

    /** Level 4, thin, 25 C / 50 %RH: 5 days in place of 72 h. */
    @Test
    void aLoggedDrierRoomLengthensTheLifeIfTheSiteSaysSo() {
        Answer answer = level4In2245(true).logged("bench", 0, 80, 22, 45).answer(80);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.used(answer)).isCloseTo(80 * 72 / 120.0, EXACT);
        assertThat(Told.endsAt(answer)).contains(120.0);
    }

    @Test
    void withoutTheSiteRuleNothingIsLengthened() {
        Answer answer = level4In2245(false).logged("bench", 0, 80, 22, 45).answer(80);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.used(answer)).isCloseTo(80, EXACT);
    }

    /** A declared worst case is no reading: one gap and the whole exposure counts at the own life. */
    @Test
    void aGapInTheReadingsPutsTheWholeExposureBackToTheOwnLife() {
        Story gap = level4In2245(true).logged("bench", 0, 40, 22, 45).logged("bench", 43, 60, 22, 45);

        assertThat(Told.used(gap.answer(41.9))).isCloseTo(41.9 * 72 / 120, EXACT);
        assertThat(Told.used(gap.answer(60))).isCloseTo(60, EXACT);
    }

    /** From the first reading in a cell shorter than the own life the whole exposure counts at it or stricter. */
    @Test
    void aReadingAbove60PutsTheWholeExposureBackToTheOwnLife() {
        Answer answer = level4In2245(true)
                .logged("bench", 0, 40, 22, 45)
                .read("bench", 40.5, 22, 65)
                .logged("bench", 41, 50, 22, 45)
                .answer(50);

        assertThat(Told.used(answer)).isCloseTo(49 + 1 * 72 / 48.0, EXACT);
    }

    /** 'Unlimited' uses nothing; the future needs a declared worst case as dry. */
    @Test
    void anUnlimitedCellUsesNothing() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .air(22, 30)
                .logged("bench", 0, 400, 22, 30)
                .rules(true, 2, 0)
                .answer(400);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.used(answer)).isZero();
        assertThat(Told.endsAt(answer)).isEmpty();
    }

    /** The future counts at the harsher of the last reading and the worst case, so a wetter worst case ends the favour. */
    @Test
    void aWetterDeclaredWorstCaseEndsTheFavourInTheFuture() {
        Answer answer =
                level4In2245(true).air(25, 70).logged("bench", 0, 50, 22, 45).answer(50);

        assertThat(Told.used(answer)).isCloseTo(50 * 72 / 120.0, EXACT);
        assertThat(Told.endsAt(answer).orElseThrow()).isCloseTo(50 + 48 * 22 / 72.0, Offset.offset(0.001));
    }

    /** Longer cells count at or below 30 C / 60 %RH only, and never beyond a maker's stated life. */
    @ParameterizedTest
    @CsvSource({"31, 20, 0, 72", "25, 50, 0, 120", "25, 50, 90, 90", "25, 50, 200, 200"})
    void longerCellsCountOnlyAtOrBelow3060AndWithinAMakersLife(
            double celsius, double percent, double makersLife, double lifeHours) {
        PartUnderTest part = PartUnderTest.level("4");
        Answer answer = Story.of(makersLife > 0 ? part.makersLife(makersLife) : part)
                .opened(0)
                .air(celsius, percent)
                .logged("bench", 0, 10, celsius, percent)
                .rules(true, 2, 0)
                .answer(10);

        double total = Told.total(answer).orElseThrow();
        assertThat(Told.used(answer)).isCloseTo(10 * total / lifeHours, EXACT);
    }

    /** Dry storage does not break it, a bake without credit does. */
    @Test
    void dryStorageDoesNotBreakItButABakeWithoutCreditDoes() {
        Story stored = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .stored(20, 5)
                .toFloor(30)
                .air(25, 50)
                .logged("bench", 0, 60, 25, 50)
                .rules(true, 2, 0);
        assertThat(Told.used(stored.answer(50))).isCloseTo(40 * 168 / 336.0, EXACT);

        Answer baked = stored.bake(50, 52, 125, 1).answer(60);
        assertThat(Told.used(baked)).isCloseTo(50, EXACT);
    }
}
