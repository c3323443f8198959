package bagclock.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.CarrierLimit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Which events may follow which (the project's own decision: what contradicts a record is refused and named). */
class TimelineTest {
    private static final Instant START = Instant.parse("2026-03-02T00:00:00Z");

    private static Instant at(long hour) {
        return START.plus(Duration.ofHours(hour));
    }

    private static Event sealed(long hour) {
        return new Event.Sealed(at(hour), OptionalInt.empty());
    }

    private static Event opened(long hour) {
        return new Event.Opened(at(hour), Optional.empty(), Optional.empty(), Optional.of(true), Optional.empty());
    }

    private static Event toFloor(long hour) {
        return new Event.ToFloor(at(hour), Optional.empty());
    }

    private static Event resealed(long hour) {
        return new Event.Resealed(at(hour), true, true);
    }

    private static Event started(long hour) {
        return new Event.BakeStarted(at(hour), new Celsius(125), Optional.empty());
    }

    private static Event ended(long hour, long hours) {
        return new Event.BakeEnded(at(hour), Optional.of(Duration.ofHours(hours)));
    }

    private static Event stored(long hour) {
        return new Event.ToDryStorage(at(hour), Optional.of(new RelativeHumidity(5)), Optional.empty());
    }

    private static List<Refusal> refusals(Event... events) {
        return Timeline.of(List.of(events)).fold(timeline -> List.of(), refused -> refused);
    }

    private static Reason reason(Event... events) {
        return refusals(events).get(0).reason();
    }

    static Stream<Event> movesAtHour2() {
        return Stream.of(
                toFloor(2),
                resealed(2),
                started(2),
                stored(2),
                new Event.Heated(at(2), Optional.empty()),
                new Event.Mounted(at(2), Optional.empty()),
                new Event.Removed(at(2), Optional.empty()),
                new Event.CarrierChanged(at(2), new CarrierLimit.None()),
                new Event.Joined(at(2), List.of()));
    }

    /** On a closed bag only an opening, unknown exposure and a wetting are accepted. */
    @ParameterizedTest
    @MethodSource("movesAtHour2")
    void nothingIsTakenOutOfAClosedBagWithoutAnOpening(Event move) {
        assertThat(reason(sealed(1), move)).isEqualTo(Reason.BAG_IS_CLOSED);
        assertThat(reason(toFloor(0), resealed(1), move)).isEqualTo(Reason.BAG_IS_CLOSED);
    }

    @Test
    void aClosedBagIsOpenedWettedOrUnknown() {
        assertThat(refusals(sealed(1), opened(2))).isEmpty();
        assertThat(refusals(sealed(1), new Event.Wetted(at(2)), opened(3))).isEmpty();
        assertThat(refusals(sealed(1), new Event.UnknownExposure(at(2)), opened(3)))
                .isEmpty();
    }

    /** In an oven only the end of the bake is accepted. */
    @ParameterizedTest
    @MethodSource("movesAtHour2")
    void nothingHappensToAPartInAnOvenButItsEnd(Event move) {
        assertThat(reason(toFloor(0), started(1), move)).isEqualTo(Reason.PART_IS_IN_OVEN);
    }

    @Test
    void evenAWettingInAnOvenComesAfterItsEnd() {
        assertThat(reason(toFloor(0), started(1), new Event.Wetted(at(2)))).isEqualTo(Reason.PART_IS_IN_OVEN);
        assertThat(refusals(toFloor(0), started(1), ended(2, 1))).isEmpty();
    }

    /** More hours at temperature than the stay lasted are refused; as many are accepted. */
    @Test
    void hoursAtTemperatureAreNoMoreThanTheStay() {
        assertThat(refusals(toFloor(0), started(1), ended(10, 9))).isEmpty();
        Refusal refusal = refusals(toFloor(0), started(1), ended(10, 10)).get(0);
        assertThat(refusal.reason()).isEqualTo(Reason.MORE_HOURS_THAN_STAY);
        assertThat(refusal.parts()).containsExactly(Duration.ofHours(10), Duration.ofHours(9));
    }

    @Test
    void anEndNeedsABeginning() {
        assertThat(reason(toFloor(0), ended(1, 0))).isEqualTo(Reason.NO_BAKE_RUNNING);
    }

    /** An opening where no bag is closed is accepted as the first event only. */
    @Test
    void anOpeningNeedsAClosedBag() {
        assertThat(refusals(opened(0))).isEmpty();
        assertThat(reason(toFloor(0), opened(1))).isEqualTo(Reason.NO_CLOSED_BAG);
        assertThat(refusals(toFloor(0), resealed(1), opened(2))).isEmpty();
    }

    /** Sealed stands first or straight after a bake; later it is a resealing. */
    @Test
    void sealedStandsFirstOrStraightAfterABake() {
        assertThat(refusals(toFloor(0), started(1), ended(10, 9), sealed(11))).isEmpty();
        assertThat(reason(toFloor(0), sealed(1))).isEqualTo(Reason.SEALED_ONLY_WHEN_DRY);
        assertThat(reason(toFloor(0), started(1), ended(10, 9), toFloor(10), sealed(11)))
                .isEqualTo(Reason.SEALED_ONLY_WHEN_DRY);
    }

    /** Times may be equal and never go back. */
    @Test
    void timeNeverGoesBack() {
        assertThat(refusals(toFloor(1), stored(1))).isEmpty();
        Refusal refusal = refusals(toFloor(1), stored(0)).get(0);
        assertThat(refusal.reason()).isEqualTo(Reason.TIME_GOES_BACK);
        assertThat(refusal.parts()).containsExactly("ToDryStorage", at(0), at(1));
    }

    @Test
    void aCardIsNotReadBeforeItsOpening() {
        Event early =
                new Event.Opened(at(1), Optional.empty(), Optional.of(at(0)), Optional.of(true), Optional.empty());
        Event same = new Event.Opened(at(1), Optional.empty(), Optional.of(at(1)), Optional.of(true), Optional.empty());

        assertThat(reason(early)).isEqualTo(Reason.CARD_READ_BEFORE_OPENING);
        assertThat(refusals(same)).isEmpty();
    }

    @Test
    void everyReasonIsSaidAtOnce() {
        assertThat(refusals(toFloor(5), opened(4), ended(6, 1)))
                .extracting(Refusal::reason)
                .containsExactly(Reason.TIME_GOES_BACK, Reason.NO_BAKE_RUNNING);
    }

    @Test
    void aTimelineUpToAMomentKeepsWhatWasKnownThen() {
        Timeline timeline = accepted(toFloor(1), stored(2), toFloor(3));

        assertThat(timeline.upTo(at(2))).isEqualTo(accepted(toFloor(1), stored(2)));
        assertThat(timeline.upTo(at(2))).hasSameHashCodeAs(accepted(toFloor(1), stored(2)));
        assertThat(timeline).isNotEqualTo(accepted(toFloor(1))).isNotEqualTo("timeline");
    }

    /** Where the part is follows from its events; zones stay where none is named. */
    @Test
    void whereThePartIsFollowsFromItsEvents() {
        Zone bench = new Zone("bench");
        Event onBench = new Event.ToFloor(at(0), Optional.of(bench));

        assertThat(accepted(onBench, stored(1)).whereabouts().place())
                .isEqualTo(new Place.Cabinet(Place.CabinetClass.UP_TO_5, Optional.empty()));
        assertThat(accepted(onBench, stored(1), toFloor(2)).whereabouts().place())
                .isEqualTo(new Place.Floor(Optional.of(bench)));
        Event mounted = new Event.Mounted(at(3), Optional.empty());
        Event removed = new Event.Removed(at(4), Optional.of(new Zone("store")));
        assertThat(accepted(onBench, mounted).whereabouts().mounted()).isTrue();
        assertThat(accepted(onBench, mounted, started(4), ended(5, 1))
                        .whereabouts()
                        .mounted())
                .isTrue();
        assertThat(accepted(onBench, mounted, removed).whereabouts().mounted()).isFalse();
        assertThat(accepted(onBench, mounted, removed).whereabouts().lastFloor())
                .contains(new Zone("store"));
    }

    private static Timeline accepted(Event... events) {
        return ((Outcome.Accepted<Timeline>) Timeline.of(List.of(events))).result();
    }
}
