package bagclock.core.estimate;

import static bagclock.core.estimate.Followable.STANDARD;
import static bagclock.core.estimate.Followable.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Timeline;
import bagclock.core.heat.Answer;
import bagclock.core.heat.Assess;
import bagclock.core.heat.Question;
import bagclock.core.heat.Verdict;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Where the model speaks, what it says, and where it stays silent. Expected figures were computed apart from this code
 * from the constants' own equations; the short exposure rule is table 4-3 of J-STD-033D.
 */
class EstimatesTest {
    private static Answer answer(PartHistory history) {
        return Assess.of(STANDARD, new Question(history, Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource({"L2A, 672", "L3, 168"})
    void atTheEndOfTheFloorLifeAt3060TheLimitIsReachedByBothDiffusivities(Level level, long life) {
        Estimate.Point end = Followable.of(level)
                .toRoom(0)
                .beside(life)
                .estimate()
                .orElseThrow()
                .last();
        assertThat(end.sealedFace().low()).isCloseTo(1, within(1e-3));
        assertThat(end.sealedFace().high()).isCloseTo(1, within(1e-3));
        assertThat(end.mean().low()).isCloseTo(1, within(1e-3));
        assertThat(end.mean().high()).isCloseTo(1, within(1e-3));
    }

    /** A week at 22 C / 40 %RH. */
    @Test
    void drierAirThanTheLimitLeavesLess() {
        Followable story = Followable.of(Level.L3).toRoom(0).read(0, 168, 22, 40);
        Estimate.Point end = story.beside(167).estimate().orElseThrow().last();
        assertThat(end.sealedFace().worse()).isBetween(0.2, 0.8);
        assertThat(end.mean().worse()).isBetween(0.2, 0.8);
    }

    @Test
    void theCurveBeginsWithTheFirstAirAndEndsAtTheMoment() {
        Followable story = Followable.of(Level.L3).sealed(0).opened(500);
        Estimate estimate = story.beside(520).estimate().orElseThrow();
        assertThat(estimate.dryAt()).isEqualTo(at(0));
        assertThat(estimate.curve().get(0).at()).isEqualTo(at(500));
        assertThat(estimate.last().at()).isEqualTo(at(520));
        assertThat(estimate.curve())
                .isSortedAccordingTo((one, other) -> one.at().compareTo(other.at()));
    }

    @Test
    void aBakeThatCountedBeginsAnew() {
        Followable story = Followable.of(Level.L3).toRoom(0).baked(400, 125, 48).toRoom(448);
        Estimate estimate = story.beside(460).estimate().orElseThrow();
        assertThat(estimate.dryAt()).isEqualTo(at(448));
        assertThat(estimate.last().sealedFace().worse()).isLessThan(0.1);
    }

    @Test
    void aBakeTooShortIsFollowedLikeAnyOtherAir() {
        Followable story = Followable.of(Level.L3).toRoom(0).baked(400, 125, 2).toRoom(402);
        assertThat(story.beside(410).estimate().orElseThrow().dryAt()).isEqualTo(at(0));
    }

    /**
     * Eight hours open and the tenfold rest: by the rules a new floor life; the low diffusivity leaves level 4 some 20
     * to 30 of 72 h and levels 5 and 5a nothing.
     */
    @ParameterizedTest
    @CsvSource({"L4, 72, 30", "L5, 48, 0", "L5A, 24, 0"})
    void afterAShortDryRestOfLevels4To5aItWarns(Level level, long life, long most) {
        Followable story = Followable.of(level).toRoom(0).toCabinet(8, 5).toRoom(88);
        Beside beside = story.beside(88);
        Warning warning = beside.warning().orElseThrow();
        assertThat(warning.cause()).isEqualTo(Warning.Cause.DRY_REST);
        assertThat(warning.rulesLeave()).isEqualTo(Duration.ofHours(life));
        assertThat(warning.modelLeaves()).isLessThanOrEqualTo(Duration.ofHours(most));
        assertThat(beside.estimate()).isEmpty();
        assertThat(beside.silence()).contains(Silence.LEVEL_NOT_SOUND);
        assertThat(answer(story.history(88)).verdict()).isEqualTo(Verdict.CLEAR);
    }

    @Test
    void afterAShortDryRestOfLevel3ItDoesNot() {
        Followable story = Followable.of(Level.L3).toRoom(0).toCabinet(12, 5).toRoom(72);
        assertThat(story.beside(72).warning()).isEmpty();
        assertThat(story.beside(72).estimate().orElseThrow().last().sealedFace().worse())
                .isPositive();
    }

    /** At 10 %RH table 7-1 never ends level 3; the model gives 10 to 22 days. */
    @Test
    void drierAirThatUsedNothingAndThenWetterAirWarns() {
        Followable story = Followable.of(Level.L3)
                .usingDrierAir()
                .toRoom(0)
                .read(0, 40 * 24, 25, 10)
                .read(40 * 24, 41 * 24, 25, 55);
        Warning warning = story.beside(41 * 24 - 1).warning().orElseThrow();
        assertThat(warning.cause()).isEqualTo(Warning.Cause.DRIER_AIR);
        assertThat(warning.modelLeaves()).isZero();
        assertThat(answer(story.history(41 * 24 - 1)).verdict()).isEqualTo(Verdict.CLEAR);
    }

    @Test
    void whereTheRulesBakeAlreadyThereIsNothingToWarnOf() {
        Followable story = Followable.of(Level.L3).toRoom(0);
        assertThat(story.beside(400).warning()).isEmpty();
    }

    /** Ten days at 20 C / 30 %RH: the model leaves much, the rules nothing; that stays a bake. */
    @Test
    void aMildEstimateMakesNothingMilder() {
        Followable story = Followable.of(Level.L3).toRoom(0).read(0, 240, 20, 30);
        assertThat(story.beside(239)
                        .estimate()
                        .orElseThrow()
                        .last()
                        .sealedFace()
                        .worse())
                .isLessThan(0.5);
        assertThat(answer(story.history(239)).verdict()).isEqualTo(Verdict.BAKE);
    }

    @ParameterizedTest
    @EnumSource(
            value = Level.class,
            names = {"L1", "L2", "L6"})
    void otherLevelsWereNotTried(Level level) {
        assertThat(Followable.of(level).toRoom(0).beside(5).silence()).contains(Silence.LEVEL_NOT_TRIED);
    }

    @ParameterizedTest
    @CsvSource({
        "LEADLESS, 2.4, BODY_NOT_TRIED",
        "LEADED, 1.4, BODY_NOT_TRIED",
        "ARRAY, 0.8, BODY_NOT_TRIED",
        "LEADLESS, 5.0, BODY_TOO_THICK"
    })
    void otherBodiesWereNotTried(BodyKind kind, String thickness, Silence silence) {
        Followable story =
                Followable.of(Part.of(Level.L3, Body.of(kind, thickness))).toRoom(0);
        assertThat(story.beside(5)).isEqualTo(Beside.silent(silence));
    }

    @Test
    void aBallArrayOfOneMillimetreBelongsToTheClassThatWasTried() {
        Followable story =
                Followable.of(Part.of(Level.L3, Body.of(BodyKind.ARRAY, "1.2"))).toRoom(0);
        assertThat(story.beside(5).estimate()).isPresent();
    }

    @Test
    void aMakersOwnLifeIsNotTheTables() {
        Part part = Part.of(Level.L3, Body.of(BodyKind.LEADLESS, "3.4"));
        MakerRules none = MakerRules.NONE;
        MakerRules maker = new MakerRules(
                Optional.of(Duration.ofHours(96)),
                none.derating(),
                none.shelfMonths(),
                none.bakes(),
                none.tableToo(),
                none.useWithin(),
                none.maxBakes(),
                none.maxReflowPasses());
        Part own = new Part(part.ratings(), part.body(), maker, part.maxBake(), part.carrier(), part.prior());
        assertThat(Followable.of(own).toRoom(0).beside(5)).isEqualTo(Beside.silent(Silence.MAKERS_RULE));
    }

    @Test
    void neverOnABoardNorAfterOne() {
        Followable story = Followable.of(Level.L3)
                .toRoom(0)
                .event(new Event.Mounted(at(5), Followable.ROOM))
                .event(new Event.Removed(at(20), Followable.ROOM));
        assertThat(story.beside(4).estimate()).isPresent();
        assertThat(story.beside(10)).isEqualTo(Beside.silent(Silence.ON_BOARD));
        assertThat(story.beside(30)).isEqualTo(Beside.silent(Silence.ON_BOARD));
    }

    @Test
    void silentWhereHistoryOrAirIsNotKnownOrOutsideTheTable() {
        assertThat(Followable.of(Level.L3).beside(5)).isEqualTo(Beside.silent(Silence.HISTORY_UNKNOWN));
        Followable unknown = Followable.of(Level.L3).toRoom(0).event(new Event.UnknownExposure(at(3)));
        assertThat(unknown.beside(5)).isEqualTo(Beside.silent(Silence.HISTORY_UNKNOWN));
        Followable noAir = Followable.of(Level.L3).worstCase(Optional.empty()).toRoom(0);
        assertThat(noAir.beside(5)).isEqualTo(Beside.silent(Silence.AIR_UNKNOWN));
        Followable hot =
                Followable.of(Level.L3).worstCase(Optional.of(Air.of(38, 50))).toRoom(0);
        assertThat(hot.beside(5)).isEqualTo(Beside.silent(Silence.AIR_OUTSIDE));
        Followable dry = Followable.of(Level.L3).sealed(0);
        assertThat(dry.beside(5)).isEqualTo(Beside.silent(Silence.STILL_DRY));
        Followable joined = Followable.of(Level.L3).toRoom(0).event(new Event.Joined(at(2), List.of(Timeline.EMPTY)));
        assertThat(joined.beside(5).estimate()).isEmpty();
        Followable baking = Followable.of(Level.L3).toRoom(0).baked(10, 125, 48);
        assertThat(baking.beside(20)).isEqualTo(Beside.silent(Silence.IN_OVEN));
    }
}
