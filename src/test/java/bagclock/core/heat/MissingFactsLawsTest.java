package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.SiteRules;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * With a fact unknown the answer is never milder than with any value of that fact (the project's own decision). Left
 * out are the facts for which a usual value is agreed: the part's own bake limit (125 C for circuits), a rated peak
 * (J-STD-020 classifies), counters and minutes (0). A use-within time begins only with a bake that is known to have
 * counted, so the parts of these laws have none; the air of a level 1 part is damp only where it is known to be.
 */
class MissingFactsLawsTest {
    static LongStream seeds() {
        return Draws.seeds();
    }

    private static void assertNoMilder(RandomCase unknown, RandomCase known) {
        HeatPlan plan = known.placement(Duration.ofMinutes(10));
        assertThat(unknown.answer().verdict())
                .as("%s%nagainst %s", unknown, known)
                .isGreaterThanOrEqualTo(known.answer().verdict());
        assertThat(unknown.answer(plan).verdict())
                .as("%s%nagainst %s", unknown, known)
                .isGreaterThanOrEqualTo(known.answer(plan).verdict());
    }

    private static RandomCase draw(Draws draws) {
        return untimed(draws.draw());
    }

    /** Without a use-within time, but for level 6, which is not answered without one. */
    private static RandomCase untimed(RandomCase any) {
        MakerRules maker = any.part().maker();
        boolean six = any.part().ratings().stream()
                .allMatch(rating -> rating.level().filter(Level.L6::equals).isPresent());
        MakerRules untimed = new MakerRules(
                maker.floorLife(),
                maker.derating(),
                maker.shelfMonths(),
                maker.bakes(),
                maker.tableToo(),
                six ? maker.useWithin() : Optional.empty(),
                maker.maxBakes(),
                maker.maxReflowPasses());
        Part part = any.part();
        return any.with(new Part(part.ratings(), part.body(), untimed, part.maxBake(), part.carrier(), part.prior()));
    }

    private static Body body(
            Body body,
            BodyKind kind,
            Optional<Millimetres> thickness,
            Optional<Boolean> stacked,
            Optional<Boolean> planes) {
        return new Body(kind, thickness, body.length(), body.width(), stacked, planes, body.leadFree());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void levelUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draw(draws);
        Optional<Celsius> peak = Optional.of(new Celsius(260));
        RandomCase known = any.withRatings(List.of(new Rating(Optional.of(draws.pick(Level.values())), peak)));

        assertNoMilder(any.withRatings(List.of(new Rating(Optional.empty(), peak))), known);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void thicknessUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draw(draws);
        Millimetres value = draws.thickness();

        assertNoMilder(
                any.withBody(b -> body(b, b.kind(), Optional.empty(), b.stackedDie(), b.blockingPlanes())),
                any.withBody(b -> body(b, b.kind(), Optional.of(value), b.stackedDie(), b.blockingPlanes())));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bodyUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draw(draws);
        BodyKind value = draws.pick(BodyKind.values());

        assertNoMilder(
                any.withBody(b -> body(b, BodyKind.UNKNOWN, b.thickness(), b.stackedDie(), b.blockingPlanes())),
                any.withBody(b -> body(b, value, b.thickness(), b.stackedDie(), b.blockingPlanes())));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void stackAndPlanesUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = untimed(draws.drawWhere(drawn -> drawn.part().body().mayBeArray()));
        boolean stacked = draws.chance(2);
        boolean planes = draws.chance(2);

        assertNoMilder(
                any.withBody(b -> body(b, b.kind(), b.thickness(), Optional.empty(), Optional.empty())),
                any.withBody(b -> body(b, b.kind(), b.thickness(), Optional.of(stacked), Optional.of(planes))));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void edgesAndSolderUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draw(draws);
        List<Rating> rating = List.of(new Rating(any.part().ratings().get(0).level(), Optional.empty()));
        Optional<Millimetres> length = Optional.of(draws.edge());
        Optional<Millimetres> width = Optional.of(draws.edge());
        Optional<Boolean> leadFree = Optional.of(draws.chance(2));
        RandomCase unknown = any.withRatings(rating)
                .withBody(b -> new Body(
                        b.kind(),
                        b.thickness(),
                        Optional.empty(),
                        Optional.empty(),
                        b.stackedDie(),
                        b.blockingPlanes(),
                        Optional.empty()));
        RandomCase known = unknown.withBody(
                b -> new Body(b.kind(), b.thickness(), length, width, b.stackedDie(), b.blockingPlanes(), leadFree));

        assertNoMilder(unknown, known);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void carrierUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draw(draws);
        double value = draws.pick(40.0, 60.0, 90.0, 125.0);

        assertNoMilder(
                any.with(any.part().in(new CarrierLimit.Unknown())),
                any.with(any.part().in(new CarrierLimit.Of(new Celsius(value)))));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void worstCaseUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draw(draws);
        Air value = Air.of(draws.between(10, 35), draws.between(0, 85));

        assertNoMilder(any.withWorstCase(Optional.empty()), any.withWorstCase(Optional.of(value)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void cardAndBagUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draws.drawWhere(drawn -> drawn.has(Event.Opened.class));
        boolean card = draws.chance(2);

        assertNoMilder(
                any.withEach(
                        Event.Opened.class,
                        o -> new Event.Opened(
                                o.at(),
                                card ? Optional.empty() : o.card(),
                                o.cardReadAt(),
                                card ? o.sound() : Optional.empty(),
                                o.zone())),
                any);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bakeFactsUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = untimed(draws.drawWhere(drawn -> drawn.has(Event.BakeEnded.class)));
        RandomCase hours = any.withEach(Event.BakeEnded.class, e -> new Event.BakeEnded(e.at(), Optional.empty()));
        RandomCase humidity = any.withEach(
                Event.BakeStarted.class, e -> new Event.BakeStarted(e.at(), e.temperature(), Optional.empty()));

        assertNoMilder(hours, any);
        assertNoMilder(humidity, any);
    }

    /** A cabinet without a logger in a site of one air, so that floor and room are alike. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void storageHumidityUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draws.drawWhere(drawn -> drawn.has(Event.ToDryStorage.class));
        Air air = Air.of(draws.between(18, 35), draws.between(20, 90));
        RandomCase plain = new RandomCase(
                any.part(), any.events(), java.util.Map.of(), Optional.of(air), SiteRules.USUAL, any.moment());
        RelativeHumidity value = new RelativeHumidity(draws.pick(3.0, 8.0, 30.0));

        assertNoMilder(stored(plain, Optional.empty()), stored(plain, Optional.of(value)));
    }

    private static RandomCase stored(RandomCase any, Optional<RelativeHumidity> humidity) {
        return any.withEach(Event.ToDryStorage.class, e -> new Event.ToDryStorage(e.at(), humidity, Optional.empty()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void pastPeakAndFreshnessUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase heated = draws.drawWhere(drawn -> drawn.has(Event.Heated.class));
        assertNoMilder(heated.withEach(Event.Heated.class, e -> new Event.Heated(e.at(), Optional.empty())), heated);

        RandomCase sealed = draws.drawWhere(drawn -> drawn.has(Event.Resealed.class));
        assertNoMilder(
                sealed.withEach(Event.Resealed.class, e -> new Event.Resealed(e.at(), false, e.freshCard())), sealed);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void planUnknown(long seed) {
        Draws draws = new Draws(seed);
        RandomCase any = draw(draws);
        Duration length = Duration.ofMinutes(draws.below(60));
        Optional<HeatPlan.Purpose> purpose = Optional.of(draws.pick(HeatPlan.Purpose.values()));
        Optional<Double> peak = Optional.of(draws.pick(150.0, 200.0, 220.0));
        Optional<Boolean> local = Optional.of(draws.chance(2));
        Verdict known = any.answer(any.plan(length, peak, purpose, local)).verdict();

        assertThat(any.answer(any.plan(length, peak, Optional.empty(), local)).verdict())
                .isGreaterThanOrEqualTo(known);
        assertThat(any.answer(any.plan(length, peak, purpose, Optional.empty())).verdict())
                .isGreaterThanOrEqualTo(known);
        RandomCase single = any.withRatings(any.part().ratings().subList(0, 1));
        assertThat(single.answer(single.plan(length, Optional.empty(), purpose, local))
                        .verdict())
                .isGreaterThanOrEqualTo(
                        single.answer(single.plan(length, peak, purpose, local)).verdict());
    }
}
