package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import bagclock.core.heat.BakeOffer.Bar;
import bagclock.core.heat.BakeOffer.BarCode;
import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.SiteLimits;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Limits that a site makes stricter. The standard's: 200 C (J-STD-033D, rework clause) and 96 h above 90 C (J-STD-033D,
 * clause 4.2.7; S7). That they may only be tightened is the project's own.
 */
class SiteLimitsTest {
    private static final PartUnderTest LEVEL_3 = PartUnderTest.level("3");

    private static SiteLimits limits(double peakC, double hours) {
        return new SiteLimits(new Celsius(peakC), Story.hours(hours));
    }

    private static Standard site(double peakC, double hours) {
        return Story.STANDARD.within(limits(peakC, hours));
    }

    private static Question question(Story story, double hour, double peakC, Purpose purpose) {
        HeatPlan plan = new HeatPlan(
                Story.at(hour),
                Duration.ofMinutes(5),
                Optional.of(new Celsius(peakC)),
                Optional.of(purpose),
                Optional.of(true));
        return new Question(story.history(hour), Optional.of(plan));
    }

    @Test
    void nothingSaidIsTheStandard() {
        assertThat(Story.STANDARD.limits()).isEqualTo(SiteLimits.RULES);
        assertThat(SiteLimits.RULES).isEqualTo(limits(200, 96));
    }

    @Test
    void aSiteCanNotBeWider() {
        assertThatIllegalArgumentException().isThrownBy(() -> limits(200.5, 96));
        assertThatIllegalArgumentException().isThrownBy(() -> limits(200, 96.01));
        assertThatIllegalArgumentException().isThrownBy(() -> limits(200, 0));
    }

    /** Exactly the limit is no bar; above it the expired part must be baked, and the site is named. */
    @ParameterizedTest
    @CsvSource({"180, 180, CLEAR, false", "180, 181, BAKE, true", "180, 200, BAKE, true", "180, 201, BAKE, false"})
    void anExpiredPartAboveTheSitesPeakIsBaked(double limit, double peak, Verdict verdict, boolean named) {
        Story expired = Story.of(LEVEL_3).opened(0).mounted(1);

        Answer answer = Assess.of(site(limit, 96), question(expired, 1000, peak, Purpose.REMOVAL_REUSE));

        assertThat(answer.verdict()).isEqualTo(verdict);
        assertThat(answer.has(FindingCode.SITE_PEAK_LIMIT)).isEqualTo(named);
        assertThat(Assess.of(Story.STANDARD, question(expired, 1000, peak, Purpose.REMOVAL_REUSE))
                        .has(FindingCode.SITE_PEAK_LIMIT))
                .isFalse();
    }

    /** A neighbour between the site's limit and 200 C counts on the board. */
    @Test
    void aNeighbourAboveTheSitesPeakCounts() {
        BoardUnderTest board = new BoardUnderTest()
                .with("U1", LEVEL_3, Story.of(LEVEL_3).opened(0).mounted(1), Fate.STAYS, Optional.of(190.0));
        HeatPlan plan = new HeatPlan(
                Story.at(1000), Duration.ZERO, Optional.empty(), Optional.of(Purpose.PLACEMENT), Optional.of(true));
        BoardQuestion asked = board.question(1000, Optional.of(plan));

        assertThat(AssessBoard.of(Story.STANDARD, asked).whole().verdict()).isEqualTo(Verdict.CLEAR);
        BoardAnswer strict = AssessBoard.of(site(180, 96), asked);
        assertThat(strict.whole().verdict()).isEqualTo(Verdict.BAKE);
        assertThat(strict.parts().get(0).counts()).isTrue();
        assertThat(strict.whole().has(FindingCode.SITE_PEAK_LIMIT)).isTrue();
    }

    /** Level 3 to 1.4 mm needs 9 h at 125 C (table 4-1, more than 72 h): exactly what is left is allowed. */
    @ParameterizedTest
    @CsvSource({"48, 39, true", "48, 39.5, false", "96, 87, true"})
    void theSitesHoursBarABake(double limit, double bakedBefore, boolean allowed) {
        Story story =
                Story.of(PartUnderTest.level("3").before(bakedBefore, 1, 0)).opened(0);

        Answer answer = Assess.of(site(200, limit), new Question(story.history(1000), Optional.empty()));

        BakeOffer at125 = answer.bakes().get(0);
        assertThat(at125.isAllowed()).isEqualTo(allowed);
        assertThat(at125.bars().contains(new Bar(BarCode.SITE_HOURS_ABOVE_90, Story.hours(limit))))
                .isEqualTo(!allowed);
        assertThat(answer.has(FindingCode.SITE_BAKE_LIMIT)).isEqualTo(!allowed);
    }

    @Test
    void theStandardsOwnLimitIsNamedBeforeTheSites() {
        Story story = Story.of(PartUnderTest.level("3").before(90, 1, 0)).opened(0);

        Answer answer = Assess.of(site(200, 48), new Question(story.history(1000), Optional.empty()));

        assertThat(answer.bakes().get(0).bars()).extracting(Bar::code).contains(BarCode.HOURS_ABOVE_90);
        assertThat(answer.has(FindingCode.SITE_BAKE_LIMIT)).isFalse();
    }

    static LongStream seeds() {
        return Draws.seeds();
    }

    /** The law: a stricter limit never makes an answer milder, and allows no bake that was not allowed. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aStricterLimitIsNeverMilder(long seed) {
        Draws draws = new Draws(seed);
        BoardQuestion asked = BoardLawsTest.draw(draws);
        double peak = draws.pick(200.0, 199.0, 160.0);
        double hours = draws.pick(96.0, 48.0, 20.0);
        Standard loose = site(peak, hours);
        Standard strict = site(peak - draws.pick(0.0, 1.0, 40.0), hours - draws.pick(0.0, 1.0, 19.0));

        BoardAnswer mild = AssessBoard.of(loose, asked);
        BoardAnswer stern = AssessBoard.of(strict, asked);

        assertThat(stern.whole().verdict()).isGreaterThanOrEqualTo(mild.whole().verdict());
        for (int i = 0; i < mild.parts().size(); i++) {
            Answer before = mild.parts().get(i).answer();
            Answer after = stern.parts().get(i).answer();
            assertThat(after.verdict()).isGreaterThanOrEqualTo(before.verdict());
            assertThat(allowed(before)).containsAll(allowed(after));
            assertThat(after.floorLife()).isEqualTo(before.floorLife());
        }
    }

    private static List<Celsius> allowed(Answer answer) {
        return answer.bakes().stream()
                .filter(BakeOffer::isAllowed)
                .map(BakeOffer::temperature)
                .toList();
    }
}
