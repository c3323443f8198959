package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.BodyKind;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which bake: J-STD-033D, table 4-1 (S1, S2; cells from memory are marked in the table's file). */
class WhichBakeTest {
    /** Rows by thickness, the upper limit belongs to the row; 90 and 40 C ask for 5 %RH, 125 C for none. */
    @ParameterizedTest
    @CsvSource({
        "3, 1.4, 9, 33, 312",
        "3, 1.41, 27, 96, 888",
        "3, 2.0, 27, 96, 888",
        "3, 2.01, 48, 240, 1896",
        "3, 4.5, 48, 240, 1896",
        "2, 1.4, 5, 17, 192",
        "2a, 1.4, 7, 23, 216",
        "4, 1.4, 11, 37, 360",
        "5, 2.0, 40, 144, 1368",
        "5a, 1.4, 16, 54, 528"
    })
    void anUnknownHistoryTakesTheLongColumn(String level, String mm, double at125, double at90, double at40) {
        Answer answer =
                Story.of(PartUnderTest.level(level).thick(mm)).unknown(0).answer(1);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
        assertThat(Told.bakeHours(answer, 125)).contains(at125);
        assertThat(Told.bakeHours(answer, 90)).contains(at90);
        assertThat(Told.bakeHours(answer, 40)).contains(at40);
        assertThat(Told.offer(answer, 125).orElseThrow().maxHumidity()).isEmpty();
        assertThat(Told.offer(answer, 90).orElseThrow().maxHumidity()).contains(new RelativeHumidity(5));
        assertThat(Told.offer(answer, 40).orElseThrow().maxHumidity()).contains(new RelativeHumidity(5));
        assertThat(answer.next()).containsExactly(StepCode.BAKE);
    }

    /** Past the life by 72 h of floor time or less; exactly 72 is within. */
    @ParameterizedTest
    @CsvSource({"239.99, WITHIN_72H, 7", "240, WITHIN_72H, 7", "240.01, OVER_72H, 9", "100, WITHIN_72H, 7"})
    void exactly72HoursPastTheLifeIsTheShortColumn(double hour, Answer.Column column, double hours) {
        Answer answer = Story.of(PartUnderTest.level("3")).opened(0).answer(hour);

        assertThat(answer.bakeColumn()).contains(column);
        assertThat(Told.bakeHours(answer, 125)).contains(hours);
    }

    /** From the shorter of the part's and the level's life. */
    @ParameterizedTest
    @CsvSource({
        "24, 96, WITHIN_72H",
        "24, 96.01, OVER_72H",
        "300, 240, WITHIN_72H",
        "300, 299, WITHIN_72H",
        "300, 300.01, OVER_72H"
    })
    void the72HoursCountFromTheShorterLife(double makersLife, double hour, Answer.Column column) {
        Answer answer = Story.of(PartUnderTest.level("3").makersLife(makersLife))
                .opened(0)
                .answer(hour);

        assertThat(answer.bakeColumn()).contains(column);
    }

    /** The time of dry storage is not floor time. */
    @Test
    void dryStorageDoesNotCountTowardsThe72Hours() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .stored(100, 10)
                .toFloor(1000)
                .answer(1140);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.bakeColumn()).contains(Answer.Column.WITHIN_72H);
    }

    /** Memory: an array with an edge above 17 mm and stacked dies take 96 h at 125 C, at 90 and 40 C their row. */
    @ParameterizedTest
    @CsvSource({
        "17, 17, false, true, 9",
        "17.1, 10, false, true, 96",
        "10, 17.1, false, true, 96",
        "17.1, 10, false, false, 9",
        "10, 10, true, false, 96",
        "20, 20, true, false, 96"
    })
    void largeArraysAndStackedDiesTakeTheLongRowAt125(
            String length, String width, boolean stacked, boolean blocking, double hours) {
        Answer answer = Story.of(PartUnderTest.level("3")
                        .body(BodyKind.ARRAY, "1.2")
                        .edges(length, width)
                        .stacked(Optional.of(stacked))
                        .blocking(Optional.of(blocking)))
                .unknown(0)
                .answer(1);

        assertThat(Told.bakeHours(answer, 125)).contains(hours);
        assertThat(Told.bakeHours(answer, 90)).contains(33.0);
        assertThat(Told.bakeHours(answer, 40)).contains(312.0);
    }

    /** Unknown planes count as blocking, an unstated stack counts as stacked for arrays only. */
    @Test
    void unknownPlanesBlockAndUnstatedArraysAreStacked() {
        PartUnderTest large = PartUnderTest.level("3")
                .body(BodyKind.LAND_ARRAY, "1.2")
                .edges("18", "18")
                .blocking(Optional.empty());
        assertThat(Told.bakeHours(Story.of(large).unknown(0).answer(1), 125)).contains(96.0);
        PartUnderTest small =
                PartUnderTest.level("3").body(BodyKind.ARRAY, "1.2").stacked(Optional.empty());
        assertThat(Told.bakeHours(Story.of(small).unknown(0).answer(1), 125)).contains(96.0);
        PartUnderTest leaded =
                PartUnderTest.level("3").body(BodyKind.LEADED, "1.2").stacked(Optional.empty());
        assertThat(Told.bakeHours(Story.of(leaded).unknown(0).answer(1), 125)).contains(9.0);
        PartUnderTest stackedLeaded =
                PartUnderTest.level("3").body(BodyKind.LEADED, "1.2").stacked(Optional.of(true));
        assertThat(Told.bakeHours(Story.of(stackedLeaded).unknown(0).answer(1), 125))
                .contains(96.0);
    }

    /** Edges of an array not known: 96 h, not allowed before they are measured; a run of 96 h counts all the same. */
    @ParameterizedTest
    @CsvSource({"'', ''", "10, ''", "'', 10"})
    void anArrayOfUnknownEdgesMustBeMeasured(String length, String width) {
        PartUnderTest part =
                PartUnderTest.level("3").body(BodyKind.ARRAY, "1.2").edges(length, width);
        Answer answer = Story.of(part).unknown(0).answer(1);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.bakeHours(answer, 125)).contains(96.0);
        assertThat(Told.offer(answer, 125).orElseThrow().bars())
                .extracting(BakeOffer.Bar::code)
                .containsExactly(BakeOffer.BarCode.MEASURE_EDGES);
        assertThat(Told.allows(answer, 90)).isTrue();
        Story baked = Story.of(part).unknown(0);
        assertThat(baked.bake(1, 96, 125, 95).answer(96).verdict()).isNotEqualTo(Verdict.CLEAR);
        assertThat(Story.of(part).unknown(0).bake(1, 97, 125, 96).answer(97).verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    @Test
    void oneKnownEdgeAbove17IsLarge() {
        Answer answer = Story.of(
                        PartUnderTest.level("3").body(BodyKind.ARRAY, "1.2").edges("18", ""))
                .unknown(0)
                .answer(1);

        assertThat(Told.bakeHours(answer, 125)).contains(9.0);
    }

    /** Memory: the table ends at 4.5 mm; only the maker's rule goes on. */
    @Test
    void above4point5MillimetresOnlyTheMakersRuleCounts() {
        Answer answer =
                Story.of(PartUnderTest.level("3").thick("4.51")).unknown(0).answer(1);
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.BODY_WITHOUT_BAKE_ROW);
        assertThat(answer.bakes()).isEmpty();
        assertThat(answer.bakeColumn()).isEmpty();
        assertThat(answer.next()).contains(StepCode.ENTER_MAKERS_BAKE);

        Answer ruled = Story.of(PartUnderTest.level("3").thick("5").makersBake(110, 60))
                .unknown(0)
                .answer(1);
        assertThat(ruled.verdict()).isEqualTo(Verdict.BAKE);
    }

    /** A maker's bake replaces the table, with or without the table beside it as the maker says. */
    @Test
    void aMakersBakeReplacesTheTableUnlessHeAllowsBoth() {
        Answer only =
                Story.of(PartUnderTest.level("3").makersBake(60, 72)).unknown(0).answer(1);
        assertThat(only.bakes()).hasSize(1);
        assertThat(only.bakeColumn()).contains(Answer.Column.MAKER);
        assertThat(only.has(FindingCode.MAKERS_BAKE)).isTrue();

        Answer both = Story.of(PartUnderTest.level("3").makersBake(60, 72).tableToo())
                .unknown(0)
                .answer(1);
        assertThat(both.bakes()).hasSize(4);
        assertThat(both.bakeColumn()).contains(Answer.Column.OVER_72H);
    }

    /** No row for level 1: no bakes, no column. */
    @Test
    void level1HasNoBakes() {
        Answer answer = Story.of(PartUnderTest.level("1")).unknown(0).answer(1);

        assertThat(answer.bakes()).isEmpty();
        assertThat(answer.bakeColumn()).isEmpty();
        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
    }
}
