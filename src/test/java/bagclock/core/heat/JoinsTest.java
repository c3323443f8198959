package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.Event;
import bagclock.core.standard.CarrierLimit;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Joined lots: the worse of each value counts from the join on (the project's own decision, no source found). */
class JoinsTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static Story joined(Story mine, double hour, Story... others) {
        return mine.event(new Event.Joined(
                Story.at(hour), List.of(others).stream().map(Story::timeline).toList()));
    }

    private static Story level3() {
        return Story.of(PartUnderTest.level("3"));
    }

    @Test
    void theLeastLifeLeftCounts() {
        Answer mine = joined(level3().toFloor(0), 20, level3().toFloor(10)).answer(30);
        Answer theirs = joined(level3().toFloor(10), 20, level3().toFloor(0)).answer(30);

        assertThat(Told.used(mine)).isCloseTo(30, EXACT);
        assertThat(Told.used(theirs)).isCloseTo(30, EXACT);
    }

    @Test
    void theTrailStillAddsUp() {
        Answer theirs = joined(level3().toFloor(10), 20, level3().toFloor(0)).answer(30);

        double sum = theirs.trail().stream()
                .mapToDouble(entry -> entry.used().numerator().doubleValue()
                        / entry.used().denominator().doubleValue())
                .sum();
        assertThat(sum * 168).isCloseTo(30, EXACT);
    }

    @Test
    void anUnknownHistoryOfOneIsThatOfBoth() {
        assertThat(joined(level3().toFloor(0), 20, level3().unknown(5))
                        .answer(21)
                        .verdict())
                .isEqualTo(Verdict.BAKE);
        assertThat(joined(level3().unknown(0), 20, level3().toFloor(5))
                        .answer(21)
                        .verdict())
                .isEqualTo(Verdict.BAKE);
    }

    /** Highest bake total, highest number of bakes and passes, lowest carrier rating. */
    @Test
    void theHighestTotalsAndTheLowestCarrierCount() {
        Story baked = level3().toFloor(0)
                .bake(0, 90, 125, 90)
                .heated(91, 245)
                .heated(92, 245)
                .heated(93, 245);
        Answer answer = joined(level3().unknown(0), 100, baked).answer(101);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(answer.has(FindingCode.PASSES_USED_UP)).isTrue();
        assertThat(Told.offer(answer, 125).orElseThrow().bars())
                .extracting(BakeOffer.Bar::code)
                .contains(BakeOffer.BarCode.HOURS_ABOVE_90);

        Answer tray = joined(
                        level3().unknown(0).into(1, 125),
                        100,
                        level3().unknown(0).into(1, 90))
                .answer(101);
        assertThat(Told.allows(tray, 125)).isFalse();
        assertThat(Told.allows(tray, 90)).isTrue();
        Answer open = joined(level3().unknown(0).into(1, 125), 100, level3().unknown(0))
                .answer(101);
        assertThat(Told.allows(open, 125)).isTrue();
        Answer unmarked = joined(
                        Story.of(PartUnderTest.level("3")).unknown(0),
                        100,
                        level3().unknown(0).event(new Event.CarrierChanged(Story.at(1), new CarrierLimit.Unknown())))
                .answer(101);
        assertThat(Told.allows(unmarked, 90)).isFalse();
    }

    @Test
    void aJoinOfDryLotsStaysDry() {
        assertThat(Told.used(joined(level3().toFloor(0), 0, level3().toFloor(0)).answer(5)))
                .isCloseTo(5, EXACT);
    }

    /** Two parents, each folded by itself: the later correction of one reaches the child. */
    @Test
    void level6TakesTheEarlierBake() {
        PartUnderTest part = PartUnderTest.level("6").makersBake(70, 48).useWithin(10);
        Story early = Story.of(part).unknown(0).bake(1, 49, 70, 48);
        Story late = Story.of(part).unknown(0).bake(4, 52, 70, 48);

        assertThat(Told.endsAt(joined(late, 53, early).answer(53))).contains(59.0);
        Story none = Story.of(part).unknown(0);
        Story dry = Story.of(part).unknown(0).bake(4, 52, 70, 48);
        assertThat(joined(dry, 53, none).answer(53).verdict()).isEqualTo(Verdict.BAKE);
    }

    @Test
    void level1TakesTheWorseDampness() {
        Story wet = Story.of(PartUnderTest.level("1")).toFloor(0).wetted(1);

        assertThat(joined(Story.of(PartUnderTest.level("1")).toFloor(0), 5, wet)
                        .answer(6)
                        .verdict())
                .isEqualTo(Verdict.HOLD);
    }

    /** Time above 30/60, a stay at 10 %RH that lasted too long and an earlier use-within time of one are those of both. */
    @Test
    void theStricterFlagsCount() {
        Story damp = level3().toFloor(0).stored(1, 5).air(25, 65);
        Answer column = joined(
                        Story.of(PartUnderTest.level("3"))
                                .toFloor(0)
                                .air(25, 65)
                                .stored(0, 5),
                        1.5,
                        damp)
                .answer(2);
        assertThat(column.bakeColumn()).contains(Answer.Column.OVER_72H);

        PartUnderTest two = PartUnderTest.level("2");
        Story late = Story.of(two).opened(0).stored(1, 10);
        Answer stored = joined(Story.of(two).toFloor(8800), 8800, late).answer(8801);
        assertThat(stored.verdict()).isEqualTo(Verdict.BAKE);

        PartUnderTest timed = PartUnderTest.level("3").makersBake(60, 10).useWithin(24);
        Story early = Story.of(timed).unknown(0).bake(0, 10, 60, 10);
        Story later = Story.of(timed).unknown(0).bake(10, 20, 60, 10);
        assertThat(Told.until(joined(later, 21, early).answer(21))).contains(34.0);
        Story laterAgain = Story.of(timed).unknown(0).bake(10, 20, 60, 10);
        Story plain = Story.of(timed).toFloor(15);
        assertThat(Told.until(joined(plain, 21, laterAgain).answer(21))).contains(44.0);
    }

    /** Levels 4 to 5a: exposure of one is exposure of both, and the longer one counts for the rest. */
    @Test
    void theLongerExposureCounts() {
        PartUnderTest four = PartUnderTest.level("4");
        Story longer = Story.of(four).toFloor(2);
        Story joined = joined(Story.of(four).toFloor(6), 8, longer).stored(8, 5);

        assertThat(Told.used(joined.answer(67))).isCloseTo(65, EXACT);
        assertThat(Told.used(joined.answer(68))).isZero();
        Story dry =
                joined(Story.of(four).toFloor(0).stored(0, 5), 8, Story.of(four).toFloor(2));
        assertThat(Told.used(dry.answer(18))).isCloseTo(16, EXACT);
    }

    /** A life that ended outside the table has ended for both, though exactly the whole of it is used. */
    @Test
    void aLifeThatEndedOutsideTheTableHasEndedForBoth() {
        Story hot = level3().toFloor(0).toZone(10, "oven room").toZone(10.1, "bench");
        Answer answer = joined(level3().read("oven room", 10, 36, 50).toFloor(8), 11, hot)
                .answer(11);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
    }

    /** What the answer rests on is what either rests on. */
    @Test
    void whatEitherRestsOnIsTold() {
        Story elsewhere = level3().toZone(0, "shed");
        Story logged = level3().logged("bench", 0, 24, 25, 50).toFloor(0);
        assertThat(logged.answer(20).has(FindingCode.AIR_DECLARED)).isFalse();
        assertThat(joined(logged, 20, elsewhere).answer(20).has(FindingCode.AIR_DECLARED))
                .isTrue();

        Story unread = level3().logged("bench", 0, 24, 25, 50).nothingDeclared().toFloor(0);
        assertThat(unread.answer(20).has(FindingCode.AIR_UNKNOWN)).isFalse();
        assertThat(joined(unread, 20, level3().toZone(0, "shed")).answer(20).has(FindingCode.AIR_UNKNOWN))
                .isTrue();
    }

    /** Level 2 may be at 5 to 10 %RH for a year in all: 7,996 h of one since its rest and 800 h after the join are more. */
    @Test
    void theLongerStayAt10PercentGoesOn() {
        PartUnderTest two = PartUnderTest.level("2");
        Story stored = joined(
                        Story.of(two).toFloor(7980),
                        8002,
                        Story.of(two).opened(0).stored(1, 10))
                .stored(8003, 10);

        assertThat(stored.answer(8003 + 700).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(stored.answer(8003 + 800).verdict()).isEqualTo(Verdict.BAKE);
    }

    @Test
    void level6AboveTheLimitIsAboveItForBoth() {
        PartUnderTest part = PartUnderTest.level("6").makersBake(70, 48).useWithin(10);
        Story damp = Story.of(part).unknown(0).bake(1, 49, 70, 48).toZone(49, "shed");
        Story dry = Story.of(part).read("shed", 49, 25, 70).read("shed", 51, 25, 50);
        Answer answer = joined(dry.unknown(0).bake(1, 49, 70, 48), 52, damp).answer(53);

        assertThat(Told.because(answer)).isEqualTo(FindingCode.LEVEL_6_ABOVE_30_60);
        assertThat(Told.endsAt(answer)).contains(49.0);
    }

    @Test
    void level1AboveTheLimitIsMentionedForBoth() {
        PartUnderTest one = PartUnderTest.level("1");
        Story warm = Story.of(one).toZone(0, "shed");
        Story story = Story.of(one).read("shed", 0, 32, 50).toFloor(0);

        assertThat(joined(story, 5, warm).answer(6).has(FindingCode.LEVEL_1_ABOVE_30_85))
                .isTrue();
    }
}
