package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.standard.BodyKind;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Situations that people asked about in public: openings, the clock, the shop's climate. Figures may be ours. */
class ClockPracticeTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static Optional<HumidityCard> card(boolean five, boolean ten) {
        return Optional.of(new HumidityCard(Map.of(5.0, five, 10.0, ten, 60.0, true)));
    }

    /** smtnet.com forum thread 16331; S16: 5 % spot turned, 10 % spot dry: usable, 168 h from the opening. */
    @Test
    void aTurned5PercentSpotAloneLeavesTheWholeLife() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0, card(false, true), true)
                .answer(0);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.left(answer)).contains(168.0);
        assertThat(answer.has(FindingCode.RENEW_DESICCANT)).isTrue();
    }

    /** S25 (ez.analog.com/docs/DOC-16085): 12 months passed, card good: no bake, resealed for 12 months more. */
    @Test
    void aPassedShelfDateWithAGoodCardNeedsNoBake() {
        Story story = Story.of(PartUnderTest.level("3")).sealed(0).opened(13 * 730.5);
        assertThat(story.answer(13 * 730.5 + 1).verdict()).isEqualTo(Verdict.CLEAR);

        Answer resealed = story.resealed(13 * 730.5 + 20).answer(14 * 730.5);
        assertThat(Told.used(resealed)).isCloseTo(20, EXACT);
        assertThat(resealed.has(FindingCode.SHELF_LIFE_PASSED)).isFalse();
    }

    /** S26 (studylib.net/doc/18452783): a maker's 24 months: at 20 months in date, at 26 the card decides. */
    @ParameterizedTest
    @CsvSource({"20, true, CLEAR, false", "26, true, CLEAR, true", "26, false, BAKE, true"})
    void aMakersShelfLifeOf24Months(int months, boolean cardDry, Verdict verdict, boolean passed) {
        Answer answer = Story.of(PartUnderTest.level("3").shelfMonths(24))
                .sealed(0)
                .opened(months * 730.5, card(true, cardDry), true)
                .answer(months * 730.5 + 1);

        assertThat(answer.verdict()).isEqualTo(verdict);
        assertThat(answer.has(FindingCode.SHELF_LIFE_PASSED)).isEqualTo(passed);
    }

    /** S50 (e2e.ti.com thread 1510059): years on the shelf: the card decides, and solderability is to be looked at. */
    @Test
    void afterYearsTheCardDecidesAndSolderabilityIsNoticed() {
        Answer dry = Story.of(PartUnderTest.level("3")).sealed(0).opened(50_000).answer(50_001);
        assertThat(dry.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(dry.has(FindingCode.CHECK_SOLDERABILITY)).isTrue();

        Answer wet = Story.of(PartUnderTest.level("3"))
                .sealed(0)
                .opened(50_000, card(false, false), true)
                .answer(50_001);
        assertThat(wet.verdict()).isEqualTo(Verdict.BAKE);
    }

    /** electronicspoint.com t107682: level 2 from a plain bag: unknown, 18 h at 125 C just over 1.4 mm, else 5 h. */
    @ParameterizedTest
    @CsvSource({"1.41, 18", "1.4, 5"})
    void aLevel2PartFromAPlainBag(String thickness, double hours) {
        Answer answer =
                Story.of(PartUnderTest.level("2").thick(thickness)).unknown(0).answer(1);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.bakeHours(answer, 125)).contains(hours);
    }

    /** hotwires.net, "Drip drip drip": openings of 60 + 50 + 40 + 30 h add up to 180, 12 beyond the life. */
    @Test
    void manyOpeningsAddUp() {
        Story story = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .resealed(60)
                .opened(100)
                .resealed(150)
                .opened(200)
                .resealed(240)
                .opened(300);
        Answer third = story.answer(300);
        assertThat(third.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.left(third)).contains(18.0);

        Answer fourth = story.answer(330);
        assertThat(fourth.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.used(fourth)).isEqualTo(180.0);
        assertThat(Told.bakeHours(fourth, 125)).contains(7.0);
        assertThat(Told.bakeHours(fourth, 90)).contains(23.0);
        assertThat(Told.bakeHours(fourth, 40)).contains(9 * 24.0);
    }

    /** listserv.ipc.org TECHNET, October 2004, 131616: resealed with desiccant it pauses, without it runs. */
    @ParameterizedTest
    @CsvSource({"true, 148", "false, 68"})
    void resealingPausesOnlyWithFreshDesiccant(boolean fresh, double left) {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .event(new Event.Resealed(Story.at(20), fresh, fresh))
                .opened(100)
                .answer(100);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.left(answer)).contains(left);
    }

    /** S37 (ipcb.com/pcb-blog/9624): level 5, 16 h open and 70 h in dry storage: not safe, 48 h at 125 C above 2.0 mm. */
    @Test
    void dryStorageDoesNotSaveALevel5Part() {
        Answer answer = Story.of(PartUnderTest.level("5").body(BodyKind.LEADED, "2.5"))
                .opened(0)
                .stored(16, 5)
                .answer(86);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.bakeHours(answer, 125)).contains(48.0);
    }

    /** smtnet.com thread 1896: a box at 15 or 20 %RH is no dry storage, the clock runs. */
    @ParameterizedTest
    @CsvSource({"3, 20, 48", "3, 15, 48", "4, 20, 48", "3, 10, 20"})
    void aBoxAt20PercentIsNoDryStorage(String level, double percent, double used) {
        Answer answer = Story.of(PartUnderTest.level(level))
                .opened(0)
                .stored(20, percent)
                .answer(48);

        assertThat(Told.used(answer)).isCloseTo(used, EXACT);
    }

    /** listserv.ipc.org TECHNET 1996, 14127436: a cabinet at room temperature is never a bake. */
    @Test
    void aCabinetIsNeverABake() {
        Answer answer =
                Story.of(PartUnderTest.level("3")).unknown(0).stored(1, 1).answer(5000);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
    }

    /** circuitinsight.com 54893, ipcb.com 9624: level 5a, 6 h out, 60 h at 5 %RH resets, broken after 30 h it does not. */
    @Test
    void shortVisitsOfALevel5aPart() {
        Story story = Story.of(PartUnderTest.level("5a")).opened(0).stored(6, 5);
        Answer reset = story.answer(66);
        assertThat(reset.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.left(reset)).contains(24.0);

        Answer again = Story.of(PartUnderTest.level("5a"))
                .opened(0)
                .stored(6, 5)
                .toFloor(36)
                .stored(39, 5)
                .answer(500);
        assertThat(again.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(again.clock()).isEqualTo(ClockState.RUNNING);
        assertThat(Told.endsAt(again)).contains(24.0);
    }

    /** S23 (easymanua.ls, WE310G4): 168 h left at the opening with a good card, bake otherwise. */
    @ParameterizedTest
    @CsvSource({"true, CLEAR", "false, BAKE"})
    void aModuleAtItsOpening(boolean tenDry, Verdict expected) {
        Answer answer = Story.of(PartUnderTest.level("3").kind(BodyKind.MODULE).maxBakeC(125))
                .opened(0, card(true, tenDry), true)
                .answer(0);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** e2e.ti.com thread 936523: level 1 kept too damp: no table row, so a person decides. */
    @Test
    void level1AfterARecordedBreachIsHeld() {
        Story story = Story.of(PartUnderTest.level("1")).toFloor(0);

        assertThat(story.answer(1000).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.air(25, 90).answer(1000).verdict()).isEqualTo(Verdict.HOLD);
    }

    /** circuitnet.com/experts/88756: washed, then heated again: wet exposure. */
    @Test
    void aWashBeforeAnotherHeatIsWetExposure() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .mounted(1)
                .wetted(2)
                .answer(3);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(answer.has(FindingCode.PART_WETTED)).isTrue();
    }

    /** smtnet.com thread 11274: hours above 60 %RH use the next wetter row, never between. */
    @Test
    void aRoomAt65PercentCountsAtTheRowOf70() {
        Answer answer = Story.of(PartUnderTest.level("3")).opened(0).air(25, 65).answer(10);

        assertThat(Told.used(answer)).isCloseTo(10 * 168 / 48.0, EXACT);
    }

    /** Cree XR-E data sheet p. 10: level 4 at 22 C / 45 %RH rounds to 25/50: 120 h if logged throughout, else 72 h. */
    @ParameterizedTest
    @CsvSource({"true, 120", "false, 72"})
    void aCoolDryRoomLengthensOnlyWhereItWasLogged(boolean logged, double life) {
        Story story = Story.of(PartUnderTest.level("4")).opened(0).air(22, 45).rules(true, 2, 0);
        Answer answer = (logged ? story.logged("bench", 0, 60, 22, 45) : story).answer(60);

        assertThat(Told.endsAt(answer)).contains(life);
    }

    /** S29 (smtnet.com thread 19490): 40 h between the two sides: the first reflow does not reset, a cabinet pauses. */
    @Test
    void theFirstReflowDoesNotResetTheClock() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).mounted(140).heated(140, 245);
        assertThat(story.place(180, 5).verdict()).isNotEqualTo(Verdict.CLEAR);

        Story cabinet = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .mounted(140)
                .heated(140, 245)
                .stored(141, 5);
        assertThat(cabinet.place(180, 5).verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** S16: boards with level 2a parts waiting for a further process: 672 h in all, paused below 5 %RH. */
    @Test
    void partsOnABoardKeepAgeing() {
        Story story = Story.of(PartUnderTest.level("2a"))
                .opened(0)
                .mounted(10)
                .into(10, 125)
                .heated(11, 245);
        assertThat(story.place(672 - 1, 60).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.place(672 - 1, 61).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(story.stored(100, 5).place(2000, 60).verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** Elapsed hours, not clock hands: opened Sat 28 March 2026 20:00 in Paris, 24 h end on Sunday at 21:00. */
    @Test
    void aLifeRunsInElapsedHoursAcrossTheSummerTimeChange() {
        Instant opened = Instant.parse("2026-03-28T19:00:00Z");
        Answer answer = Story.of(PartUnderTest.level("5a"))
                .event(new Event.Opened(
                        opened, Optional.of(Story.DRY_CARD), Optional.empty(), Optional.of(true), Story.BENCH))
                .answer(Story.hour(opened) + 1);

        assertThat(answer.floorLife().endsAt()).contains(Instant.parse("2026-03-29T19:00:00Z"));
    }
}
