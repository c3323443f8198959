package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sealed, opened, shelf life: J-STD-033D, humidity indicator card and dry pack clauses (S16, S23, S25). */
class BagsAndCardsTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static Optional<HumidityCard> card(String five, String ten, String sixty) {
        return Optional.of(
                new HumidityCard(Map.of(5.0, five.equals("dry"), 10.0, ten.equals("dry"), 60.0, sixty.equals("dry"))));
    }

    /** S16, S23: the 10 % spot decides for 2a to 5a whatever the 5 % spot shows, the 60 % spot for level 2. */
    @ParameterizedTest
    @CsvSource({
        "3, dry, dry, dry, CLEAR",
        "3, wet, dry, dry, CLEAR",
        "3, wet, wet, dry, BAKE",
        "3, dry, wet, dry, BAKE",
        "3, dry, dry, wet, BAKE",
        "2a, wet, wet, dry, BAKE",
        "5a, dry, wet, dry, BAKE",
        "2, wet, wet, dry, CLEAR",
        "2, wet, wet, wet, BAKE",
        "2, dry, dry, wet, BAKE",
        "1, wet, wet, wet, CLEAR"
    })
    void theCardDecidesAtTheOpening(String level, String five, String ten, String sixty, Verdict expected) {
        Answer answer = Story.of(PartUnderTest.level(level))
                .sealed(-100)
                .opened(0, card(five, ten, sixty), true)
                .answer(1);

        assertThat(answer.verdict()).isEqualTo(expected);
        if (expected == Verdict.BAKE) {
            assertThat(Told.because(answer)).isEqualTo(FindingCode.CARD_WET);
            assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
        }
    }

    /** Level 6 is baked anyway; its card is not judged. */
    @Test
    void theCardOfLevel6IsNotJudged() {
        Answer answer = Story.of(PartUnderTest.level("6").makersBake(70, 48).useWithin(6))
                .opened(0, card("wet", "wet", "wet"), true)
                .answer(1);

        assertThat(answer.reasons()).extracting(Finding::code).doesNotContain(FindingCode.CARD_WET);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.LEVEL_6_BAKE_FIRST);
    }

    /** J-STD-033D: 5 % wet alone is usable; fresh desiccant and a new card when resealed. */
    @Test
    void a5PercentSpotAloneAsksForFreshDesiccant() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0, card("wet", "dry", "dry"), true)
                .answer(1);

        assertThat(answer.has(FindingCode.RENEW_DESICCANT)).isTrue();
        assertThat(Told.left(answer)).contains(167.0);
    }

    /** No card, a card that can prove nothing, a bag damaged or of unknown state: history unknown, long column. */
    @Test
    void withoutProofTheHistoryIsUnknown() {
        Optional<HumidityCard> only60 = Optional.of(new HumidityCard(Map.of(60.0, true)));
        Optional<HumidityCard> no60 = Optional.of(new HumidityCard(Map.of(10.0, true)));
        Optional<HumidityCard> thirty = Optional.of(new HumidityCard(Map.of(30.0, true, 40.0, true)));

        assertThat(opening("3", Optional.empty(), Optional.of(true))).isEqualTo(FindingCode.CARD_MISSING);
        assertThat(opening("3", only60, Optional.of(true))).isEqualTo(FindingCode.CARD_WITHOUT_PROOF);
        assertThat(opening("3", thirty, Optional.of(true))).isEqualTo(FindingCode.CARD_WITHOUT_PROOF);
        assertThat(opening("2", thirty, Optional.of(true))).isEqualTo(FindingCode.INSIDE_FLOOR_LIFE);
        assertThat(opening("2", no60, Optional.of(true))).isEqualTo(FindingCode.INSIDE_FLOOR_LIFE);
        assertThat(opening("3", Optional.of(Story.DRY_CARD), Optional.of(false)))
                .isEqualTo(FindingCode.BAG_DAMAGED);
        assertThat(opening("3", Optional.of(Story.DRY_CARD), Optional.empty())).isEqualTo(FindingCode.BAG_DAMAGED);
    }

    private static FindingCode opening(String level, Optional<HumidityCard> card, Optional<Boolean> sound) {
        return Told.because(Story.of(PartUnderTest.level(level))
                .event(new Event.Opened(Story.at(0), card, Optional.empty(), sound, Story.BENCH))
                .answer(1));
    }

    /** A card turns with the room's air; 30 min is the project's own figure. */
    @ParameterizedTest
    @CsvSource({"1800, INSIDE_FLOOR_LIFE", "1801, CARD_READ_LATE"})
    void aCardReadLaterThan30MinutesProvesNothing(long seconds, FindingCode because) {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .event(new Event.Opened(
                        Story.at(0),
                        Optional.of(Story.DRY_CARD),
                        Optional.of(Story.at(0).plus(Duration.ofSeconds(seconds))),
                        Optional.of(true),
                        Story.BENCH))
                .answer(1);

        assertThat(Told.because(answer)).isEqualTo(because);
    }

    /** A sealed bag holds every level but 1, for every heat; what mends it is said. */
    @ParameterizedTest
    @ValueSource(strings = {"2", "2a", "3", "4", "5", "5a", "6"})
    void aSealedBagIsAHold(String level) {
        Story story = Story.of(PartUnderTest.level(level).makersBake(70, 48).useWithin(6))
                .sealed(0);

        assertThat(story.answer(10).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(story.answer(10).next()).contains(StepCode.OPEN_AND_READ_CARD);
        for (HeatPlan.Purpose purpose : HeatPlan.Purpose.values()) {
            assertThat(story.heat(10, purpose, 5, 190).verdict()).isEqualTo(Verdict.HOLD);
        }
    }

    @Test
    void aSealedBagDoesNotHoldLevel1() {
        assertThat(Story.of(PartUnderTest.level("1")).sealed(0).answer(10).verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    @Test
    void theClockOfASealedBagStandsAtSealed() {
        Answer answer = Story.of(PartUnderTest.level("5a")).sealed(0).answer(5000);

        assertThat(answer.clock()).isEqualTo(ClockState.SEALED);
        assertThat(Told.used(answer)).isZero();
        assertThat(answer.bakeColumn()).contains(Answer.Column.WITHIN_72H);
    }

    /** A good card at the opening of the maker's bag makes dry; at our own it changes nothing; a bad one hurts in both. */
    @Test
    void aGoodCardMakesDryOnlyAtTheOpeningOfTheMakersBag() {
        Story own = Story.of(PartUnderTest.level("3")).opened(0).resealed(20).opened(100);
        assertThat(Told.used(own.answer(110))).isCloseTo(30, EXACT);

        Story bad =
                Story.of(PartUnderTest.level("3")).opened(0).resealed(20).opened(100, card("wet", "wet", "dry"), true);
        assertThat(Told.because(bad.answer(101))).isEqualTo(FindingCode.CARD_WET);
        Story none = Story.of(PartUnderTest.level("3")).opened(0).resealed(20).opened(100, Optional.empty(), true);
        assertThat(Told.because(none.answer(101))).isEqualTo(FindingCode.CARD_MISSING);
    }

    /** S25: shelf date passed and card good: original level, full life; above 24 months a solderability notice. */
    @ParameterizedTest
    @CsvSource({"12, 11, false, false", "12, 13, true, false", "24, 20, false, false", "24, 26, true, true"})
    void aPassedShelfLifeIsNoticedAndTheCardDecides(int shelfMonths, int age, boolean shelf, boolean solderability) {
        Answer answer = Story.of(PartUnderTest.level("3").shelfMonths(shelfMonths))
                .sealed(0)
                .opened(age * 730.5)
                .answer(age * 730.5 + 1);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.left(answer)).contains(167.0);
        assertThat(answer.has(FindingCode.SHELF_LIFE_PASSED)).isEqualTo(shelf);
        assertThat(answer.has(FindingCode.CHECK_SOLDERABILITY)).isEqualTo(solderability);
    }

    /** The event's own figure goes before the part's, the part's before the usual 12. */
    @ParameterizedTest
    @CsvSource({"24, 6, true", "6, 24, false"})
    void theBagsOwnShelfLifeGoesBeforeTheParts(int partMonths, int bagMonths, boolean passed) {
        Answer answer = Story.of(PartUnderTest.level("3").shelfMonths(partMonths))
                .event(new Event.Sealed(Story.at(0), OptionalInt.of(bagMonths)))
                .answer(9 * 730.5);

        assertThat(answer.has(FindingCode.SHELF_LIFE_PASSED)).isEqualTo(passed);
    }

    /** S25: resealed fresh: new shelf life, the used floor life stays. */
    @Test
    void resealingFreshGivesANewShelfLife() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .sealed(0)
                .opened(13 * 730.5)
                .resealed(13 * 730.5 + 20)
                .answer(20 * 730.5);

        assertThat(answer.has(FindingCode.SHELF_LIFE_PASSED)).isFalse();
        assertThat(Told.used(answer)).isCloseTo(20, EXACT);
    }

    /** 'to-floor' first states dryness at that moment; sealed after a bake that counted is a maker's bag again. */
    @Test
    void sealedAfterABakeThatCountedIsDry() {
        Story story = Story.of(PartUnderTest.level("3"))
                .toFloor(0)
                .bake(200, 210, 125, 9)
                .sealed(210);

        assertThat(story.answer(300).clock()).isEqualTo(ClockState.SEALED);
        assertThat(Told.used(story.opened(400).answer(410))).isCloseTo(10, EXACT);
    }

    /** Sealed straight after a bake that did not count cannot make dry. */
    @Test
    void sealedAfterABakeThatDidNotCountIsNotDry() {
        Story story = Story.of(PartUnderTest.level("3"))
                .toFloor(0)
                .bake(200, 202, 125, 1)
                .sealed(202)
                .opened(300);

        assertThat(story.answer(301).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Such a sealing is no possible history where the bake counted for none of the ratings. */
    @Test
    void sealingAfterABakeThatCountedForNoRatingIsRefused() {
        PartUnderTest two = PartUnderTest.rated("3", 240).andRated("4", 260);
        Story counted = Story.of(two).unknown(0).bake(1, 11, 125, 9).sealed(11);
        Story failed = Story.of(two).unknown(0).bake(1, 11, 125, 8).sealed(11);

        assertThat(SealedProof.refusal(Story.STANDARD, counted.history(12))).isEmpty();
        assertThat(SealedProof.refusal(Story.STANDARD, failed.history(12))).isPresent();
        PartUnderTest six = PartUnderTest.level("6").makersBake(70, 48).useWithin(6);
        assertThat(SealedProof.refusal(
                        Story.STANDARD,
                        Story.of(six).unknown(0).bake(1, 50, 70, 48).sealed(50).history(51)))
                .isEmpty();
        assertThat(SealedProof.refusal(
                        Story.STANDARD,
                        Story.of(six).unknown(0).bake(1, 50, 70, 47).sealed(50).history(51)))
                .isPresent();
    }

    /** A history that begins with anything but sealed, opened or to-floor, or not at all, begins unknown. */
    @Test
    void anyOtherBeginningIsUnknownExposure() {
        PartUnderTest part = PartUnderTest.level("3");

        assertThat(Told.because(Story.of(part).answer(1))).isEqualTo(FindingCode.EXPOSURE_UNKNOWN);
        assertThat(Told.because(Story.of(part).stored(0, 5).answer(1))).isEqualTo(FindingCode.EXPOSURE_UNKNOWN);
        assertThat(Told.because(Story.of(part).mounted(0).into(0, 125).answer(1)))
                .isEqualTo(FindingCode.EXPOSURE_UNKNOWN);
        assertThat(Told.because(Story.of(part).heated(0, 245).answer(1))).isEqualTo(FindingCode.EXPOSURE_UNKNOWN);
        assertThat(Told.because(Story.of(part).bake(0, 2, 125, 1).answer(2))).isEqualTo(FindingCode.EXPOSURE_UNKNOWN);
        assertThat(Told.because(Story.of(part).resealed(0).opened(1).answer(2)))
                .isEqualTo(FindingCode.EXPOSURE_UNKNOWN);
    }

    /** Unknown exposure and wetting reach back; only a bake that counts ends them, a good card does not. */
    @Test
    void unknownExposureEndsWithABakeThatCountsOnly() {
        Story story = Story.of(PartUnderTest.level("3")).sealed(0).unknown(10).opened(20);
        Answer unknown = story.answer(21);
        assertThat(unknown.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.used(unknown)).isEqualTo(168.0);
        assertThat(Told.left(unknown)).contains(0.0);
        assertThat(Told.endsAt(unknown)).isEmpty();
        assertThat(unknown.clock()).isEqualTo(ClockState.RUNNING);
        assertThat(unknown.bakeColumn()).contains(Answer.Column.OVER_72H);

        assertThat(story.bake(22, 31, 125, 8.9).answer(31).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(story.bake(32, 41, 125, 9).answer(41).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.because(story.wetted(42).answer(43))).isEqualTo(FindingCode.PART_WETTED);
    }
}
