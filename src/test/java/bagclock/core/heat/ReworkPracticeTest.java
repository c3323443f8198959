package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.standard.BodyKind;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Situations that people asked about in public: rework, reballing, peaks. Figures may be ours. */
class ReworkPracticeTest {
    private static PartUnderTest ball(String level, String thickness) {
        return PartUnderTest.level(level).body(BodyKind.ARRAY, thickness).edges("15", "15");
    }

    private static Answer removal(Story story, double hour, Purpose purpose, double peak) {
        return story.heat(hour, purpose, 10, peak);
    }

    /** S10 p. 14, eevblog.com and synth-diy.org: hot air on an expired part: bake; the body kept at 200 C: clear. */
    @ParameterizedTest
    @CsvSource({"245, false, BAKE", "200, true, CLEAR"})
    void onlyHotAir(double peak, boolean local, Verdict expected) {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .heat(1000, Optional.of(Purpose.PLACEMENT), Optional.of(local), 10, Optional.of(peak));

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** S9 (TECHNET, October 2000): 90 C for 48 h: enough up to 1.4 mm, short column only to 2.0 mm, not above. */
    @ParameterizedTest
    @CsvSource({"1.4, 400, CLEAR", "1.4, 200, CLEAR", "1.7, 200, CLEAR", "1.7, 400, BAKE", "2.1, 200, BAKE"})
    void twoDaysAt90(String thickness, double opened, Verdict expected) {
        Answer answer = Story.of(PartUnderTest.level("3").thick(thickness))
                .opened(0)
                .dryBake(opened, opened + 48, 90, 48)
                .answer(opened + 48);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** S45 (smtnet.com threads 5588, 4408): kept or scrapped, above 200 C or not. */
    @ParameterizedTest
    @CsvSource({
        "REMOVAL_REUSE, 245, BAKE",
        "REMOVAL_REUSE, 195, CLEAR",
        "REMOVAL_SCRAP, 245, CLEAR",
        "WHOLE_BOARD, 195, BAKE"
    })
    void bakeAlwaysSometimesOrNever(Purpose purpose, double peak, Verdict expected) {
        Story story = Story.of(ball("3", "1.2")).opened(0).mounted(1).into(1, 125);

        assertThat(removal(story, 1000, purpose, peak).verdict()).isEqualTo(expected);
    }

    /** smtnet.com thread 6904: back from the field: expired, long column; hold until the board's limit is entered. */
    @Test
    void aBoardBackFromTheField() {
        Story story = Story.of(ball("3", "1.2")).unknown(0).mounted(0);
        assertThat(removal(story, 1, Purpose.REMOVAL_REUSE, 245).verdict()).isEqualTo(Verdict.HOLD);

        Answer limited = removal(story.into(2, 105), 3, Purpose.REMOVAL_REUSE, 245);
        assertThat(limited.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.allows(limited, 90)).isTrue();
        assertThat(Told.allows(limited, 125)).isFalse();
        assertThat(limited.bakeColumn()).contains(Answer.Column.OVER_72H);
    }

    /** S32 (circuitnet.com/experts/55400): 105 C for 12 h releases laminate, not an expired part. */
    @Test
    void twelveHoursAt105AreNoPartBake() {
        Answer answer =
                Story.of(ball("3", "1.2")).unknown(0).dryBake(1, 13, 105, 12).answer(13);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
    }

    /** TECHNET, March 1997, 38367: keep the array of 2.3 mm: the table says 48 h at 125 C, 24 h is custom. */
    @Test
    void aDayAt125IsShortForAThickArray() {
        Story story = Story.of(ball("3", "2.3")).unknown(0).mounted(0).into(0, 125);
        assertThat(Told.bakeHours(removal(story, 1, Purpose.REMOVAL_REUSE, 245), 125))
                .contains(48.0);

        Answer after = removal(story.bake(2, 26, 125, 24), 26, Purpose.REMOVAL_REUSE, 245);
        assertThat(after.verdict()).isNotEqualTo(Verdict.CLEAR);
    }

    /** etech-web.com/faq: reballing: two bakes of 24 h spend 48 of the 96 h; the clock restarts at the end of the bake. */
    @Test
    void reballingIsSeveralHeatsInARow() {
        Story story = Story.of(ball("3", "1.2").maxPasses(5))
                .unknown(0)
                .mounted(0)
                .into(0, 125)
                .bake(1, 25, 125, 24)
                .heated(26, 235)
                .removed(26)
                .into(26, 150);
        assertThat(Told.used(story.answer(35))).isEqualTo(10.0);
        assertThat(story.place(35, 10).verdict()).isEqualTo(Verdict.CLEAR);

        Answer expired = story.answer(25 + 200);
        assertThat(expired.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.bakeHours(expired, 125)).contains(7.0);
        Answer second = story.bake(225, 249, 125, 24).unknown(250).answer(251);
        assertThat(Told.allows(second, 125)).isTrue();
        assertThat(Told.allows(story.bake(252, 292, 125, 40).unknown(293).answer(294), 125))
                .isFalse();
    }

    /** techonline.com, package rework: three heats in all; two at assembly, so removal is the last. */
    @ParameterizedTest
    @CsvSource({"2, CLEAR", "3, HOLD"})
    void threeHeatsInAll(int before, Verdict expected) {
        Story story = Story.of(ball("3", "1.2").before(0, 0, before)).opened(0).mounted(1);

        assertThat(removal(story, 2, Purpose.REMOVAL_REUSE, 235).verdict()).isEqualTo(expected);
    }

    /** iconnect007.com 98074: a part that goes to the bin needs no protection. */
    @Test
    void aPartForTheBinNeedsNoBake() {
        Story story = Story.of(ball("3", "1.2")).unknown(0).mounted(0);

        assertThat(removal(story, 1, Purpose.REMOVAL_SCRAP, 245).verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** badcaps.net, groups.io TekScopes: 4 h at 110 C or 24 h at 100 C do not meet the table above 2.0 mm. */
    @ParameterizedTest
    @CsvSource({"110, 4", "100, 24"})
    void benchCustomIsNotTheTable(double celsius, double hours) {
        Answer answer = Story.of(ball("3", "2.1"))
                .unknown(0)
                .dryBake(1, 1 + hours, celsius, hours)
                .answer(1 + hours);

        assertThat(answer.verdict()).isNotEqualTo(Verdict.CLEAR);
        assertThat(Told.bakeHours(answer, 125)).contains(48.0);
        assertThat(Told.bakeHours(answer, 90)).contains(240.0);
    }

    /** makerfab.blogspot.com, September 2018: rated below the oven's 240 C: hold whatever the moisture. */
    @Test
    void tooHotIsNotTooWet() {
        Answer answer = Story.of(PartUnderTest.rated("3", 230).kind(BodyKind.LED))
                .opened(0)
                .heat(1, Purpose.WHOLE_BOARD, 5, 240);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.PEAK_ABOVE_RATING);
    }

    /** dtsheet.com 1654354, st.com leadfree: 2.8 mm, above 2000 mm3: 245 C; the label's rating beats the table. */
    @Test
    void thePeakDependsOnTheBody() {
        PartUnderTest large = PartUnderTest.withoutRatedPeak("3").thick("2.8").edges("30", "30");
        assertThat(Story.of(large).opened(0).heat(1, Purpose.PLACEMENT, 5, 255).verdict())
                .isEqualTo(Verdict.HOLD);
        assertThat(Story.of(large).opened(0).heat(1, Purpose.PLACEMENT, 5, 245).verdict())
                .isEqualTo(Verdict.CLEAR);
        PartUnderTest labelled = PartUnderTest.rated("3", 260).thick("2.8").edges("30", "30");
        assertThat(Story.of(labelled)
                        .opened(0)
                        .heat(1, Purpose.PLACEMENT, 5, 255)
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    /** A maker's data sheet of level 2a: on the board too, the 672 h of table 5-1 run on until the next heat. */
    @ParameterizedTest
    @CsvSource({"671, CLEAR", "673, BAKE"})
    void onTheBoardTheClockRunsOn(double hour, Verdict expected) {
        Story story = Story.of(ball("2a", "1.2")).opened(0).mounted(600).into(600, 125);

        assertThat(removal(story, hour, Purpose.REMOVAL_REUSE, 245).verdict()).isEqualTo(expected);
    }

    /** smtnet.com thread 16313: above the boiling point of water and yet a bake: its heat is slow, the soldering is not. */
    @Test
    void aDampPartMayBeBakedWhereItMayNotBeSoldered() {
        Story story = Story.of(ball("3", "1.2")).opened(0).mounted(1).into(1, 125);
        Answer answer = removal(story, 1000, Purpose.REMOVAL_REUSE, 245);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.allows(answer, 125)).isTrue();
    }

    /** circuitinsight.com 53787: soldered damp, tested good: a bake helps before the next heat, and says so of no other. */
    @Test
    void aBakeAfterADampHeatIsForTheNextHeatOnly() {
        Story story = Story.of(ball("3", "1.2")).opened(0).mounted(1000).heated(1000, 245);
        assertThat(removal(story, 1001, Purpose.REMOVAL_REUSE, 245).verdict()).isEqualTo(Verdict.BAKE);

        Story baked = story.into(1001, 125).dryBake(1002, 1002 + 48, 125, 48);
        assertThat(removal(baked, 1051, Purpose.REMOVAL_REUSE, 245).verdict()).isEqualTo(Verdict.CLEAR);
    }
}
