package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Rating;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that every answer keeps, tried on drawn histories (the project's own; the safer answer is never lost). */
class LawsTest {
    static LongStream seeds() {
        return Draws.seeds();
    }

    private static void assertNoMilder(Answer stricter, Answer milder, Object about) {
        assertThat(stricter.verdict()).as("%s", about).isGreaterThanOrEqualTo(milder.verdict());
    }

    private static BigDecimal left(Answer answer) {
        return answer.floorLife().remainingHours().orElse(BigDecimal.ZERO);
    }

    /** Staying longer in open air. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreTimeInOpenAirIsNeverMilder(long seed) {
        Draws draws = new Draws(seed);
        RandomCase now = draws.drawOnFloor();

        RandomCase later = now.at(now.moment().plus(draws.gap().dividedBy(8)));
        assertNoMilder(later.answer(), now.answer(), now);
        assertThat(left(later.answer())).isLessThanOrEqualTo(left(now.answer()));
    }

    /** The same history begun earlier. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anEarlierOpeningIsNeverMilder(long seed) {
        Draws draws = new Draws(seed);
        RandomCase late = draws.drawWhere(drawn ->
                drawn.events().get(0) instanceof Event.Opened || drawn.events().get(0) instanceof Event.ToFloor);
        Event first = late.events().get(0);
        Duration earlier = draws.gap().dividedBy(10);

        List<Event> events = new ArrayList<>(late.events());
        Instant at = first.at().minus(earlier);
        events.set(
                0,
                first instanceof Event.Opened opened
                        ? new Event.Opened(
                                at,
                                opened.card(),
                                opened.cardReadAt().map(read -> read.minus(earlier)),
                                opened.sound(),
                                opened.zone())
                        : new Event.ToFloor(at, ((Event.ToFloor) first).zone()));
        assertNoMilder(late.with(events).answer(), late.answer(), late);
    }

    /** But for a maker's own table, whose shortest cell that covers the air counts however the cells lie. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void warmerOrWetterNeverLengthensALife(long seed) {
        Draws draws = new Draws(seed);
        RandomCase mild =
                draws.drawWhere(drawn -> drawn.part().maker().derating().isEmpty());
        double warmer = draws.chance(2) ? draws.between(0, 6) : 0;
        double wetter = draws.between(0, 15);
        RandomCase harsh = mild.withAir(air -> Air.of(
                air.temperature().degrees() + warmer,
                Math.min(100, air.humidity().percent() + wetter)));

        Answer before = mild.answer();
        Answer after = harsh.answer();
        assertNoMilder(after, before, mild);
        if (after.floorLife().totalHours().equals(before.floorLife().totalHours())) {
            assertThat(left(after)).isLessThanOrEqualTo(left(before));
        }
        boolean bothEnd = before.floorLife().endsAt().isPresent()
                && after.floorLife().endsAt().isPresent();
        if (bothEnd) {
            assertThat(after.floorLife().endsAt().get())
                    .isBeforeOrEqualTo(before.floorLife().endsAt().get());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theTrailSumsToTheAnswer(long seed) {
        Answer answer = new Draws(seed).draw().answer();

        answer.floorLife().total().ifPresent(total -> {
            double sum = answer.trail().stream()
                    .mapToDouble(entry -> entry.used().hoursOf(total.value()).doubleValue())
                    .sum();
            double used = answer.floorLife().usedHours().doubleValue();
            assertThat(sum).isCloseTo(used, within(1e-9 * Math.max(1, used)));
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverClearWithAnUnknownLevelOrPastTheRatedPeak(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draws.draw();
        RandomCase unknown = any.withRatings(List.of(new Rating(Optional.empty(), Optional.of(new Celsius(260)))));
        Optional<HeatPlan.Purpose> purpose = Optional.of(
                draws.pick(HeatPlan.Purpose.PLACEMENT, HeatPlan.Purpose.REMOVAL_REUSE, HeatPlan.Purpose.WHOLE_BOARD));
        Duration length = Duration.ofMinutes(draws.below(20));
        Optional<Boolean> local = Optional.of(draws.chance(2));

        assertThat(unknown.answer().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(unknown.answer(any.plan(length, Optional.of(190.0), purpose, local))
                        .verdict())
                .isEqualTo(Verdict.HOLD);
        assertThat(any.answer(any.plan(length, Optional.of(260.1), purpose, local))
                        .verdict())
                .isEqualTo(Verdict.HOLD);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void addingTimeToAHeatIsNeverMilder(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draws.draw();
        Duration length = draws.gap().dividedBy(20);

        Answer brief = any.answer(any.placement(length));
        Answer longer = any.answer(any.placement(length.plus(draws.gap().dividedBy(20))));
        assertNoMilder(longer, brief, any);
        assertThat(longer.floorLife()).isEqualTo(brief.floorLife());
        assertThat(longer.trail()).isEqualTo(brief.trail());
    }

    /** A heat that ends exactly then is clear, one that ends a second later is not. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void untilIsSharp(long seed) {
        RandomCase any = new Draws(seed)
                .drawWhere(drawn -> drawn.whereabouts().place() instanceof Place.Floor
                        && drawn.answer(drawn.placement(Duration.ZERO)).verdict() == Verdict.CLEAR
                        && drawn.answer(drawn.placement(Duration.ZERO)).until().isPresent());
        Answer now = any.answer(any.placement(Duration.ZERO));
        Instant until = now.until().orElseThrow();

        if (!until.isBefore(any.moment())) {
            Duration length = Duration.between(any.moment(), until);
            assertThat(any.answer(any.placement(length)).verdict())
                    .as("%s", any)
                    .isEqualTo(Verdict.CLEAR);
        }
        Duration tooLong = Duration.between(any.moment(), until.plusSeconds(1));
        assertThat(any.answer(any.placement(tooLong)).verdict()).as("%s", any).isNotEqualTo(Verdict.CLEAR);
    }

    /** Where a rest mends the part, it is mended at that moment and not a millisecond before. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aRestMendsWhenItSays(long seed) {
        RandomCase any = new Draws(seed).drawInANeededRest();
        Answer now = any.answer();
        Instant until = now.until().orElseThrow();

        assertThat(any.at(until).answer().verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(any.at(until.minusMillis(1)).answer().verdict()).isNotEqualTo(Verdict.CLEAR);
    }

    /** On the floor: one more reading between two, equal to the harsher of both ends, within the gap. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void splittingAReadingIntervalByAnEqualReadingChangesNothing(long seed) {
        Draws draws = new Draws(seed);
        RandomCase whole = draws.draw();
        Zone bench = new Zone("bench");
        List<ZoneLog.Reading> readings = whole.readings().getOrDefault(bench, List.of());
        List<ZoneLog.Reading> more = new ArrayList<>(readings);
        for (int i = readings.size() - 1; i > 0; i--) {
            ZoneLog.Reading before = readings.get(i - 1);
            ZoneLog.Reading after = readings.get(i);
            Duration apart = Duration.between(before.at(), after.at());
            boolean holds = apart.compareTo(whole.rules().maxReadingGap()) <= 0;
            boolean past = !after.at().isAfter(whole.moment());
            if (holds && past && draws.chance(3)) {
                more.add(
                        i,
                        new ZoneLog.Reading(
                                before.at().plus(apart.dividedBy(2)),
                                before.air().harsherOf(after.air())));
            }
        }
        RandomCase split = whole.withReadings(bench, more);
        assertSame(split.answer(), whole.answer());
    }

    /** Once more into the zone where the part is already. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anEventThatChangesNothingChangesNothing(long seed) {
        RandomCase any = new Draws(seed).drawOnFloor();
        List<Event> events = new ArrayList<>(any.events());
        Duration half = Duration.between(any.lastEventAt(), any.moment()).dividedBy(2);
        events.add(new Event.ToFloor(any.lastEventAt().plus(half), Optional.empty()));

        assertSame(any.with(events).answer(), any.answer());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twoRatingsAnswerAsTheOneThatCounts(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draws.drawWhere(drawn -> drawn.part().ratings().size() == 2);
        HeatPlan plan = any.plan(
                Duration.ofMinutes(5),
                Optional.of(draws.pick(220.0, 240.0, 255.0)),
                Optional.of(HeatPlan.Purpose.PLACEMENT),
                Optional.empty());
        Answer both = any.answer(plan);
        List<Rating> reaching = any.part().ratings().stream()
                .filter(rating ->
                        !plan.peakBody().orElseThrow().isAbove(rating.peak().orElseThrow()))
                .toList();

        if (reaching.isEmpty()) {
            assertThat(both.verdict()).isEqualTo(Verdict.HOLD);
        } else {
            List<Answer> alone = reaching.stream()
                    .map(rating -> any.withRatings(List.of(rating)).answer(plan))
                    .toList();
            assertThat(alone).anySatisfy(alike -> assertSame(alike, both));
        }
    }

    private static void assertSame(Answer one, Answer other) {
        assertThat(one.verdict()).isEqualTo(other.verdict());
        assertThat(one.until()).isEqualTo(other.until());
        assertThat(one.floorLife()).isEqualTo(other.floorLife());
        assertThat(one.bakes()).isEqualTo(other.bakes());
        assertThat(one.bakeColumn()).isEqualTo(other.bakeColumn());
    }
}
