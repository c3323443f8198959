package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.Event;
import bagclock.core.heat.Assumption.Fact;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Missing facts: never milder than any value that the fact could have (the project's own decision). */
class MissingFactsTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static java.util.List<Fact> assumed(Answer answer) {
        return answer.assumed().stream().map(Assumption::fact).toList();
    }

    /** S3 asks for the level first; no floor life is shown for an unknown one. */
    @Test
    void anUnknownLevelIsAHoldWithoutAFloorLife() {
        Answer answer = Story.of(PartUnderTest.levelUnknown()).opened(0).answer(1);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.LEVEL_UNKNOWN);
        assertThat(Told.total(answer)).isEmpty();
        assertThat(answer.clock().code()).isEqualTo("none");
        assertThat(answer.bakes()).isEmpty();
        assertThat(assumed(answer)).contains(Fact.LEVEL);
    }

    /** The shortest cell of every class that the part may belong to: 35 C / 40 %RH, level 4: 48 h thick, 72 h else. */
    @Test
    void anUnknownThicknessCountsAtTheShortestCell() {
        Answer answer = Story.of(PartUnderTest.level("4").thicknessUnknown())
                .opened(0)
                .air(35, 40)
                .answer(1);

        assertThat(Told.used(answer)).isCloseTo(1.5, EXACT);
        assertThat(assumed(answer)).contains(Fact.THICKNESS);
        Answer thin = Story.of(PartUnderTest.level("3").thicknessUnknown())
                .opened(0)
                .air(30, 70)
                .answer(1);
        assertThat(Told.used(thin)).isCloseTo(7, EXACT);
        Answer balls = Story.of(PartUnderTest.level("4").kind(BodyKind.ARRAY).thicknessUnknown())
                .opened(0)
                .air(35, 40)
                .answer(1);
        assertThat(Told.used(balls)).isCloseTo(1.5, EXACT);
    }

    /** If a bake is then needed: hold, measure the body; no row, no column. */
    @Test
    void aBakeForAnUnknownThicknessIsAHold() {
        Answer answer =
                Story.of(PartUnderTest.level("3").thicknessUnknown()).opened(0).answer(200);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.BODY_NOT_MEASURED);
        assertThat(answer.next()).contains(StepCode.MEASURE_BODY);
        assertThat(answer.bakes()).isEmpty();
        assertThat(answer.bakeColumn()).isEmpty();
    }

    @Test
    void insideItsLifeAnUnmeasuredPartIsClear() {
        assertThat(Story.of(PartUnderTest.level("3").thicknessUnknown())
                        .opened(0)
                        .answer(100)
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    /** Body unknown: the strictest row of its thickness is listed, and a needed bake is a hold. */
    @Test
    void aBakeForAnUnknownBodyIsAHoldWithTheStrictestRowListed() {
        Answer answer = Story.of(PartUnderTest.level("3")
                        .kind(BodyKind.UNKNOWN)
                        .edges("", "")
                        .stacked(Optional.empty())
                        .blocking(Optional.empty())
                        .maxBakeC(125))
                .opened(0)
                .answer(200);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.BODY_NOT_MEASURED);
        assertThat(Told.bakeHours(answer, 125)).contains(96.0);
        assertThat(Told.bakeHours(answer, 90)).contains(23.0);
        assertThat(assumed(answer)).contains(Fact.BODY, Fact.EDGES, Fact.STACKED_DIE, Fact.BLOCKING_PLANES);
    }

    /** A maker's bake needs no measure. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void aMakersBakeNeedsNoMeasure(boolean thicknessKnown) {
        PartUnderTest part = PartUnderTest.level("3").kind(BodyKind.UNKNOWN).makersBake(60, 12);
        Answer answer = Story.of(thicknessKnown ? part : part.thicknessUnknown())
                .opened(0)
                .answer(200);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.bakeColumn()).contains(Answer.Column.MAKER);
    }

    /** No peak on the label, size or solder system unknown: the lowest cell that is possible (J-STD-020). */
    @Test
    void anUnknownSizeTakesTheLowestPossibleClass() {
        Story story = Story.of(PartUnderTest.withoutRatedPeak("3")
                        .thicknessUnknown()
                        .edges("", "")
                        .leadFree(Optional.empty()))
                .opened(0);

        assertThat(story.place(1, 5).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(story.heat(1, HeatPlan.Purpose.PLACEMENT, 5, 220).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.heat(1, HeatPlan.Purpose.PLACEMENT, 5, 221).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(assumed(story.place(1, 5))).contains(Fact.CLASSIFICATION, Fact.LEAD_FREE);
    }

    /** Known thickness, unknown volume: the lowest of its row. */
    @ParameterizedTest
    @CsvSource({"1.2, 260", "2.0, 245", "2.6, 245"})
    void anUnknownVolumeTakesTheLowestOfItsRow(String thickness, double peak) {
        Story story = Story.of(
                        PartUnderTest.withoutRatedPeak("3").thick(thickness).edges("", ""))
                .opened(0);

        assertThat(story.heat(1, HeatPlan.Purpose.PLACEMENT, 5, peak).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.heat(1, HeatPlan.Purpose.PLACEMENT, 5, peak + 1).verdict())
                .isEqualTo(Verdict.HOLD);
    }

    /** Each missing fact of history, climate and heat is named. */
    @Test
    void everyMissingFactIsNamed() {
        Story story = Story.of(PartUnderTest.level("3").in(new CarrierLimit.Unknown()))
                .event(new Event.Opened(
                        Story.at(0), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()))
                .event(new Event.ToDryStorage(Story.at(1), Optional.empty(), Optional.empty()))
                .bake(2, 3, 90, Optional.empty(), Optional.empty())
                .event(new Event.Heated(Story.at(4), Optional.empty()))
                .nothingDeclared();

        Answer answer = story.heat(5, Optional.empty(), Optional.empty(), 5, Optional.empty());
        assertThat(assumed(answer))
                .contains(
                        Fact.CARD,
                        Fact.BAG,
                        Fact.CARD_READ_AT,
                        Fact.STORAGE_HUMIDITY,
                        Fact.OVEN_HUMIDITY,
                        Fact.TIME_AT_TEMPERATURE,
                        Fact.PAST_PEAK,
                        Fact.WORST_CASE,
                        Fact.HEAT_PEAK,
                        Fact.HEAT_PURPOSE,
                        Fact.HEAT_LOCAL,
                        Fact.CARRIER,
                        Fact.BAKE_LIMIT);
        assertThat(assumed(Story.of(PartUnderTest.level("3")).answer(1))).contains(Fact.HISTORY);
    }
}
