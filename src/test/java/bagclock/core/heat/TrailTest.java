package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.TrailEntry;
import bagclock.core.exposure.TrailEntry.Where;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The account of used life: where it was used, and that its lines add up to what the answer says. */
class TrailTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static Story level(String code) {
        return Story.of(PartUnderTest.level(code));
    }

    /** Used hours by the lines of the trail. */
    private static double sum(Answer answer) {
        double shares = answer.trail().stream()
                .mapToDouble(entry -> entry.used().numerator().doubleValue()
                        / entry.used().denominator().doubleValue())
                .sum();
        return shares * Told.total(answer).orElseThrow();
    }

    private static void addsUp(Answer answer) {
        assertThat(sum(answer)).isCloseTo(Told.used(answer), EXACT);
    }

    /** Air outside table 7-1 uses up what is left, and is a line of its own. */
    @Test
    void airOutsideTheTableIsALineThatUsesTheRest() {
        Answer answer = level("3")
                .read("oven room", 10, 36, 50)
                .toFloor(0)
                .toZone(10, "oven room")
                .answer(11);

        assertThat(Told.used(answer)).isEqualTo(168.0);
        addsUp(answer);
        assertThat(answer.trail()).hasSize(2);
    }

    @Test
    void anUnknownHistoryIsTheWholeLife() {
        Answer answer = level("3").toFloor(0).unknown(5).answer(6);

        assertThat(answer.trail()).isNotEmpty();
        addsUp(answer);
    }

    /** Level 4 runs on in bag and cabinet: the lines say where. */
    @Test
    void theLinesSayWhereThePartWas() {
        assertThat(level("4").toFloor(0).resealed(10).answer(20).trail())
                .extracting(TrailEntry::where)
                .containsExactly(Where.FLOOR, Where.BAG);
        assertThat(level("4").toFloor(0).stored(10, 5).answer(20).trail())
                .extracting(TrailEntry::where)
                .containsExactly(Where.FLOOR, Where.DRY_STORAGE);
    }

    /** The label's time of level 6 is one line, from the end of the bake. */
    @Test
    void level6HasTheLabelsTime() {
        PartUnderTest part = PartUnderTest.level("6").makersBake(70, 48).useWithin(6);
        Answer answer = Story.of(part).opened(0).bake(1, 49, 70, 48).answer(52);

        assertThat(Told.used(answer)).isEqualTo(3.0);
        assertThat(answer.trail()).hasSize(1);
        addsUp(answer);
    }

    /** Where drier air lengthens the life the lines count by the longer cells too. */
    @Test
    void drierAirAddsUpToo() {
        Story drier =
                level("3").rules(true, 2, 0).logged("bench", 0, 100, 22, 40).toFloor(0);
        Story plain = level("3").logged("bench", 0, 100, 22, 40).toFloor(0);

        assertThat(Told.used(drier.answer(100))).isLessThan(Told.used(plain.answer(100)));
        addsUp(drier.answer(100));
        addsUp(plain.answer(100));
    }

    /** Exactly 30 C / 60 %RH is the part's own life, and what was drier keeps its longer cells. */
    @Test
    void airAtTheLimitDoesNotEndTheLongerCells() {
        Story story = level("3")
                .rules(true, 2, 0)
                .logged("bench", 0, 9.5, 30, 60)
                .logged("bench", 10, 100, 22, 40)
                .toFloor(0);

        assertThat(Told.used(story.answer(100))).isLessThan(100.0);
        addsUp(story.answer(100));
    }
}
