package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.Event;
import bagclock.core.heat.BakeOffer.Bar;
import bagclock.core.heat.BakeOffer.BarCode;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a bake may not pass: carrier, part, 96 h above 90 C, number of bakes (J-STD-033D, 4.2; S7, S33, S34). */
class BakeLimitsTest {
    private static Answer unknown(PartUnderTest part) {
        return Story.of(part).unknown(0).answer(1);
    }

    private static BarCode bar(Answer answer, double celsius) {
        return Told.offer(answer, celsius).orElseThrow().bars().get(0).code();
    }

    /** Common practice: what a carrier bears; exactly its limit is borne; unknown is 40 C. */
    @ParameterizedTest
    @CsvSource({
        "125, true, true, true",
        "124, false, true, true",
        "90, false, true, true",
        "40, false, false, true",
        "39, false, false, false"
    })
    void aBakeIsNoHotterThanTheCarrierBears(double limit, boolean at125, boolean at90, boolean at40) {
        Answer answer = unknown(PartUnderTest.level("3").inCarrierOf(limit));

        assertThat(Told.allows(answer, 125)).isEqualTo(at125);
        assertThat(Told.allows(answer, 90)).isEqualTo(at90);
        assertThat(Told.allows(answer, 40)).isEqualTo(at40);
    }

    @Test
    void anUnknownCarrierBears40C() {
        Answer answer = unknown(PartUnderTest.level("3").in(new CarrierLimit.Unknown()));

        assertThat(Told.allows(answer, 40)).isTrue();
        assertThat(Told.allows(answer, 90)).isFalse();
        assertThat(bar(answer, 125)).isEqualTo(BarCode.CARRIER);
        assertThat(answer.assumed()).extracting(Assumption::fact).contains(Assumption.Fact.CARRIER);
    }

    /** None allowed: hold, with the way out. */
    @Test
    void whereNoBakeIsAllowedThePartIsHeldWithTheWayOut() {
        Answer answer = unknown(PartUnderTest.level("3").inCarrierOf(39));

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.NO_BAKE_ALLOWED);
        assertThat(answer.next()).contains(StepCode.CHANGE_CARRIER);
        assertThat(answer.next()).doesNotContain(StepCode.BAKE);
        assertThat(Story.of(PartUnderTest.level("3").inCarrierOf(39))
                        .unknown(0)
                        .into(1, 125)
                        .answer(2)
                        .verdict())
                .isEqualTo(Verdict.BAKE);
    }

    /** The part's own limit; unknown is 125 C for integrated circuits, and only the maker's bake for the others. */
    @ParameterizedTest
    @EnumSource
    void aKindThatIsNoIntegratedCircuitHasOnlyItsMakersBake(BodyKind kind) {
        boolean circuit = kind == BodyKind.ARRAY
                || kind == BodyKind.LAND_ARRAY
                || kind == BodyKind.LEADLESS
                || kind == BodyKind.LEADED;
        Answer answer = unknown(PartUnderTest.level("3").kind(kind));

        assertThat(Told.allows(answer, 125)).isEqualTo(circuit);
        assertThat(Told.allows(answer, 40)).isEqualTo(circuit);
        assertThat(answer.verdict()).isEqualTo(circuit ? Verdict.BAKE : Verdict.HOLD);
        Answer ruled = unknown(PartUnderTest.level("3").kind(kind).makersBake(130, 10));
        assertThat(Told.allows(ruled, 130)).isTrue();
        Answer stated = unknown(PartUnderTest.level("3").kind(kind).maxBakeC(90));
        assertThat(Told.allows(stated, 90)).isTrue();
        assertThat(Told.allows(stated, 125)).isFalse();
        assertThat(bar(stated, 125)).isEqualTo(BarCode.PART_LIMIT);
    }

    /** S7: at most 96 h above 90 C and up to 125 C in all; prior + needed = 96 is allowed; 90 C itself is free. */
    @ParameterizedTest
    @CsvSource({"87, true", "87.001, false", "96, false", "0, true"})
    void hoursAbove90StayWithin96InAll(double before, boolean allowed) {
        Answer answer = unknown(PartUnderTest.level("3").before(before, 0, 0));

        assertThat(Told.allows(answer, 125)).isEqualTo(allowed);
        assertThat(Told.allows(answer, 90)).isTrue();
        if (!allowed) {
            assertThat(bar(answer, 125)).isEqualTo(BarCode.HOURS_ABOVE_90);
        }
    }

    /** Failed bakes count; without hours at temperature the whole stay; above 125 C too; exactly 90 C not. */
    @ParameterizedTest
    @CsvSource({
        "125, 88, 80, 80, true",
        "125, 88, 88, 88, false",
        "125, 88, -1, 88, false",
        "130, 88, 88, 88, false",
        "91, 88, 88, 88, false",
        "90, 88, 88, 0, true"
    })
    void everyHourAbove90OfEveryBakeCounts(double celsius, double stay, double atTemperature, double hot, boolean ok) {
        Optional<Double> counted = atTemperature < 0 ? Optional.empty() : Optional.of(atTemperature);
        Answer answer = Story.of(PartUnderTest.level("3"))
                .toFloor(0)
                .bake(1, 1 + stay, celsius, Optional.empty(), counted)
                .unknown(200)
                .answer(201);

        assertThat(Told.allows(answer, 125)).isEqualTo(ok);
        assertThat(Told.offer(answer, 125).orElseThrow().bars())
                .allMatch(bar -> bar.equals(new Bar(BarCode.HOURS_ABOVE_90, Story.hours(hot))));
    }

    /** A bake under way counts as long as it has lasted. */
    @ParameterizedTest
    @CsvSource({"87, true", "87.1, false"})
    void aRunningBakeCountsAsLongAsItHasLasted(double hours, boolean allowed) {
        Answer answer =
                Story.of(PartUnderTest.level("3")).unknown(0).inOven(1, 125).answer(1 + hours);

        assertThat(Told.allows(answer, 125)).isEqualTo(allowed);
    }

    /** Each bake begun counts against the maker's number of bakes. */
    @ParameterizedTest
    @CsvSource({"0, true", "1, false"})
    void theMakersNumberOfBakesIsALimit(int before, boolean allowed) {
        PartUnderTest part = PartUnderTest.level("3").maxBakes(1).before(0, before, 0);
        assertThat(Told.allows(unknown(part), 125)).isEqualTo(allowed);

        Answer again = Story.of(part).toFloor(0).bake(1, 2, 40, 0).unknown(3).answer(4);
        assertThat(again.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(bar(again, 40)).isEqualTo(BarCode.NUMBER_OF_BAKES);
    }

    /** A maker's bake may ask for a stronger carrier than its set-point. */
    @ParameterizedTest
    @CsvSource({"130, true", "129, false", "120, false"})
    void aMakersBakeNeedsItsCarrierAndItsTemperature(double carrier, boolean allowed) {
        Answer answer = unknown(PartUnderTest.level("3")
                .makersBake(125, 24, Optional.empty(), Optional.of(130.0))
                .inCarrierOf(carrier));

        assertThat(Told.allows(answer, 125)).isEqualTo(allowed);
        assertThat(Told.allows(
                        unknown(PartUnderTest.level("3")
                                .makersBake(60, 72, Optional.empty(), Optional.of(40.0))
                                .inCarrierOf(50)),
                        60))
                .isFalse();
    }

    /** The way out is said where one thing alone speaks against a bake. */
    @Test
    void theWayOutNamesTheOneThingThatIsInTheWay() {
        PartUnderTest led = PartUnderTest.level("3").kind(BodyKind.LED);
        assertThat(unknown(led).next()).contains(StepCode.ENTER_BAKE_LIMIT);
        assertThat(unknown(PartUnderTest.level("3").kind(BodyKind.LED).inCarrierOf(30))
                        .next())
                .containsExactly(StepCode.ASK_ENGINEER);
        assertThat(unknown(PartUnderTest.level("3").maxBakes(1).before(0, 1, 0)).next())
                .containsExactly(StepCode.ASK_ENGINEER);
    }

    /** Mounting and removing make the limit unknown until it is told at the same time or later. */
    @Test
    void mountingMakesTheLimitUnknownUntilItIsTold() {
        PartUnderTest part = PartUnderTest.level("3").inCarrierOf(125);
        Story mounted = Story.of(part).toFloor(0).mounted(200);
        assertThat(Told.allows(mounted.answer(400), 125)).isFalse();
        assertThat(Told.allows(mounted.into(401, 125).answer(402), 125)).isTrue();
        assertThat(Told.allows(mounted.removed(403).answer(404), 125)).isFalse();

        Story same = Story.of(part).toFloor(0).into(200, 125).mounted(200);
        assertThat(Told.allows(same.answer(400), 125)).isTrue();
    }

    /** On a board 'in no carrier' cannot be said. */
    @Test
    void forAMountedPartNoCarrierCountsAsUnknown() {
        Story story = Story.of(PartUnderTest.level("3"))
                .toFloor(0)
                .mounted(1)
                .event(new Event.CarrierChanged(Story.at(2), new CarrierLimit.None()));
        assertThat(Told.allows(story.answer(400), 125)).isFalse();

        story.removed(401).event(new Event.CarrierChanged(Story.at(402), new CarrierLimit.None()));
        assertThat(Told.allows(story.answer(403), 125)).isTrue();
    }

    /** A mounted part of unknown history on a board of unknown limit: hold, enter the limit (S47; case of a returned board). */
    @Test
    void aMountedPartOfUnknownHistoryNeedsTheBoardsLimit() {
        Story story = Story.of(PartUnderTest.level("3")).unknown(0).mounted(1);

        assertThat(story.answer(2).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(story.answer(2))).isEqualTo(FindingCode.BOARD_LIMIT_UNKNOWN);
        assertThat(story.answer(2).next()).contains(StepCode.ENTER_BOARD_LIMIT);
        assertThat(story.into(3, 100).answer(4).verdict()).isEqualTo(Verdict.BAKE);
    }
}
