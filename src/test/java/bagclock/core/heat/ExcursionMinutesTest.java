package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The site's excused minutes above 30 C / 60 %RH: the project's own rule (inference), 0 unless set. */
class ExcursionMinutesTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    /** Readings each quarter hour; one spell from hour 2 to the given minute. Both ends of an interval count. */
    private static Story spell(int excusedMinutes, int spellQuarters, double celsius, double percent) {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).rules(false, 2, excusedMinutes);
        for (int i = 0; i <= 40; i++) {
            boolean wet = i > 8 && i < 8 + spellQuarters;
            story.read("bench", i * 0.25, wet ? celsius : 25, wet ? percent : 50);
        }
        return story;
    }

    /** A spell no longer than the minutes counts at its cell and leaves column and reset alone. */
    @ParameterizedTest
    @CsvSource({"0, 2, OVER_72H", "29, 2, OVER_72H", "30, 2, WITHIN_72H", "60, 4, WITHIN_72H", "60, 5, OVER_72H"})
    void aSpellNoLongerThanTheMinutesLeavesTheColumnAlone(int minutes, int quarters, Answer.Column column) {
        Answer answer = spell(minutes, quarters, 25, 70).answer(10);

        assertThat(answer.bakeColumn()).contains(column);
        assertThat(Told.used(answer)).isCloseTo(10 + quarters * 0.25 * 2.5, EXACT);
    }

    @ParameterizedTest
    @CsvSource({"0, false", "60, true"})
    void anExcusedSpellLeavesTheResetAlone(int minutes, boolean reset) {
        Answer answer = spell(minutes, 4, 25, 70).stored(10, 5).answer(60);

        assertThat(Told.used(answer) == 0).isEqualTo(reset);
    }

    /** Outside the table an excused spell counts at the class's shortest cell and does not end the life. */
    @Test
    void anExcusedSpellOutsideTheTableDoesNotEndTheLife() {
        Answer answer = spell(60, 4, 36, 50).answer(10);

        assertThat(Told.used(answer)).isCloseTo(9 + 168 / 12.0, EXACT);
        assertThat(spell(59, 4, 36, 50).answer(10).has(FindingCode.OUTSIDE_TABLE))
                .isTrue();
    }

    /** A spell is all counted time above 30/60 on end, whatever events fall into it. */
    @Test
    void anEventDoesNotEndASpell() {
        Answer answer = spell(60, 5, 25, 70).toFloor(2.6).answer(10);

        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
    }

    /** Unknown climate is never excused. */
    @Test
    void unknownClimateIsNeverExcused() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .nothingDeclared()
                .rules(false, 2, 60)
                .answer(0.5);

        assertThat(answer.has(FindingCode.OUTSIDE_TABLE)).isTrue();
    }

    /** Two spells with dry time between them are two. */
    @Test
    void twoShortSpellsAreTwo() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).rules(false, 2, 60);
        for (int i = 0; i <= 40; i++) {
            boolean wet = i == 8 || i == 16;
            story.read("bench", i * 0.25, 25, wet ? 70 : 50);
        }

        assertThat(story.answer(10).bakeColumn()).contains(Answer.Column.WITHIN_72H);
    }

    /** Level 6 is not eased. */
    @Test
    void level6IsNotEased() {
        Story story = Story.of(PartUnderTest.level("6").makersBake(70, 48).useWithin(6))
                .toFloor(0)
                .bake(1, 50, 70, 48)
                .rules(false, 2, 60)
                .logged("bench", 0, 51, 25, 50)
                .read("bench", 51.25, 25, 65)
                .read("bench", 51.5, 25, 50);

        assertThat(story.answer(51).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.answer(52).has(FindingCode.LEVEL_6_ABOVE_30_60)).isTrue();
    }

    /** The whole-exposure condition of the drier cells is not eased. */
    @Test
    void theConditionOfTheDrierCellsIsNotEased() {
        Story story = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .rules(true, 2, 60)
                .logged("bench", 0, 9, 25, 50)
                .read("bench", 9.25, 25, 70)
                .logged("bench", 9.5, 20, 25, 50);

        assertThat(Told.used(story.answer(9))).isCloseTo(4.5, EXACT);
        assertThat(Told.used(story.answer(20))).isCloseTo(19.5 + 0.5 * 3.5, EXACT);
    }
}
