package bagclock.core.heat;

import bagclock.Counts;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.LongStream;

/** Draws parts, lawful histories and climates; the same seed draws the same case. */
final class Draws {
    private static final int QUICK = 250;
    private static final int FULL = 5_000;
    private static final List<Zone> ZONES = List.of(new Zone("bench"), new Zone("store"));
    private static final Zone CABINET = new Zone("cabinet");
    private static final List<Double> HUMIDITIES = List.of(3.0, 5.0, 8.0, 10.0, 20.0);

    private final SplittableRandom random;
    private long clockMs;

    Draws(long seed) {
        random = new SplittableRandom(seed);
    }

    /** The cases that a law is tried on. */
    static LongStream seeds() {
        return Counts.seeds(QUICK, FULL);
    }

    /** Draws until a case meets a condition. */
    RandomCase drawWhere(Predicate<RandomCase> condition) {
        for (int i = 0; i < 10_000; i++) {
            RandomCase drawn = draw();
            if (condition.test(drawn)) {
                return drawn;
            }
        }
        throw new AssertionError("no such case");
    }

    /** In open air at the moment. */
    RandomCase drawOnFloor() {
        return drawWhere(drawn -> drawn.whereabouts().place() instanceof Place.Floor);
    }

    /** Levels 4 to 5a after a short exposure, in a cabinet without a logger, the life out and the reset to come. */
    RandomCase drawInANeededRest() {
        Part part = new Part(
                List.of(Rating.of(pick(Level.L4, Level.L5, Level.L5A), new Celsius(260))),
                Body.of(BodyKind.LEADLESS, "1.2"),
                new MakerRules(
                        Optional.of(Duration.ofHours(8 + below(20))),
                        Optional.empty(),
                        OptionalInt.empty(),
                        List.of(),
                        false,
                        Optional.empty(),
                        OptionalInt.empty(),
                        MakerRules.USUAL_REFLOW_PASSES),
                Optional.empty(),
                carrier(),
                Part.Prior.NONE);
        long exposureMs = 6 * 3_600_000L + below(2 * 3_600_000);
        clockMs = 0;
        List<Event> events = new ArrayList<>(List.of(opened(true)));
        clockMs = exposureMs;
        events.add(new Event.ToDryStorage(now(), Optional.of(new RelativeHumidity(pick(1.0, 5.0))), Optional.empty()));
        Instant moment = now().plusMillis(exposureMs * 5 + below((int) (exposureMs * 5)));
        return new RandomCase(part, events, Map.of(), Optional.of(Air.of(25, 50)), SiteRules.USUAL, moment);
    }

    RandomCase draw() {
        clockMs = 0;
        Part part = part();
        List<Event> events = events();
        Instant moment = Story.START.plusMillis(clockMs).plus(gap());
        SiteRules rules = new SiteRules(
                random.nextInt(4) == 0, Duration.ofMinutes(pick(30, 120, 240)), Duration.ofMinutes(pick(0, 0, 15, 60)));
        return new RandomCase(part, events, readings(moment), worstCase(), rules, moment);
    }

    boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    @SafeVarargs
    final <T> T pick(T... of) {
        return of[random.nextInt(of.length)];
    }

    <T> T pick(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private <T> Optional<T> maybe(T value) {
        return chance(4) ? Optional.empty() : Optional.of(value);
    }

    /** From minutes to weeks, seldom whole. */
    Duration gap() {
        long hour = 3_600_000;
        return Duration.ofMillis(
                switch (random.nextInt(5)) {
                    case 0 -> random.nextLong(hour);
                    case 1 -> hour * (1 + random.nextInt(8));
                    case 2 -> random.nextLong(24 * hour);
                    case 3 -> random.nextLong(96 * hour);
                    default -> random.nextLong(400 * hour);
                });
    }

    /** With one rating, or with a second one that is as strict or stricter at a higher peak. */
    Part part() {
        Level mild = level();
        List<Rating> ratings = new ArrayList<>(List.of(Rating.of(mild, new Celsius(pick(230.0, 240.0)))));
        if (chance(3)) {
            Level strict = pick(Arrays.stream(Level.values())
                    .filter(level -> level.compareTo(mild) >= 0)
                    .toList());
            ratings.add(Rating.of(strict, new Celsius(pick(245.0, 260.0))));
        }
        return new Part(
                ratings,
                body(),
                maker(),
                chance(3) ? Optional.of(new Celsius(pick(60.0, 100.0, 125.0, 150.0))) : Optional.empty(),
                carrier(),
                new Part.Prior(Duration.ofHours(pick(0, 0, 40, 90)), below(2), below(3)));
    }

    private Level level() {
        return pick(Level.L1, Level.L2, Level.L2A, Level.L3, Level.L3, Level.L4, Level.L5, Level.L5A, Level.L6);
    }

    Millimetres thickness() {
        return Millimetres.of(pick("0.8", "1.0", "1.2", "1.4", "1.8", "2.1", "2.6", "3.1", "4.6"));
    }

    Millimetres edge() {
        return Millimetres.of(pick("3", "10", "17", "18", "30"));
    }

    private Body body() {
        return new Body(
                pick(BodyKind.values()),
                maybe(thickness()),
                maybe(edge()),
                maybe(edge()),
                maybe(chance(5)),
                maybe(chance(2)),
                maybe(chance(2)));
    }

    CarrierLimit carrier() {
        return pick(
                new CarrierLimit.None(),
                new CarrierLimit.Unknown(),
                new CarrierLimit.Of(new Celsius(pick(35.0, 40.0, 90.0, 125.0))));
    }

    private MakerRules maker() {
        List<MakerBake> bakes = new ArrayList<>();
        for (int i = below(6) - 3; i > 0; i--) {
            bakes.add(new MakerBake(
                    new Celsius(pick(60.0, 90.0, 110.0, 125.0, 130.0)),
                    Duration.ofHours(pick(4, 12, 24)),
                    chance(3) ? Optional.of(new RelativeHumidity(5)) : Optional.empty(),
                    chance(4) ? Optional.of(new Celsius(100)) : Optional.empty()));
        }
        return new MakerRules(
                chance(5) ? Optional.of(Duration.ofHours(pick(10, 100, 300))) : Optional.empty(),
                chance(8) ? Optional.of(derating()) : Optional.empty(),
                OptionalInt.empty(),
                bakes,
                chance(2),
                chance(4) ? Optional.of(Duration.ofHours(pick(4, 12, 24))) : Optional.empty(),
                chance(6) ? OptionalInt.of(1 + below(3)) : OptionalInt.empty(),
                pick(3, 3, 5));
    }

    /** Wetter and warmer never longer; the cell at 30/60 is always there. */
    private MakerDerating derating() {
        int hours = pick(2, 10, 30);
        List<MakerDerating.Cell> cells = new ArrayList<>(List.of(cell(hours, 30, 60)));
        for (int i = below(4); i > 0; i--) {
            cells.add(cell(hours, pick(25, 30, 35), pick(10, 40, 60, 70)));
        }
        return new MakerDerating(cells);
    }

    private static MakerDerating.Cell cell(int hours, int celsius, int percent) {
        int factor = (8 - percent / 10) * (8 - celsius / 5);
        return new MakerDerating.Cell(
                new Celsius(celsius), new RelativeHumidity(percent), Duration.ofHours((long) hours * factor));
    }

    private enum State {
        FLOOR,
        BAG,
        CABINET
    }

    /** A history that may lawfully be; it may end in an oven. */
    List<Event> events() {
        List<Event> events = new ArrayList<>();
        State state = first(events);
        for (int i = below(9); i > 0; i--) {
            clockMs += gap().toMillis();
            state = state == State.BAG ? open(events) : next(events, state);
        }
        if (state != State.BAG && chance(8)) {
            clockMs += gap().toMillis();
            events.add(started());
        }
        return events;
    }

    private Instant now() {
        return Story.START.plusMillis(clockMs);
    }

    private State first(List<Event> events) {
        switch (below(6)) {
            case 0 -> {
                events.add(new Event.Sealed(now(), OptionalInt.empty()));
                return State.BAG;
            }
            case 1 -> events.add(new Event.ToFloor(now(), zone()));
            case 2 -> events.add(new Event.UnknownExposure(now()));
            default -> events.add(opened(true));
        }
        return State.FLOOR;
    }

    private State open(List<Event> events) {
        if (chance(20)) {
            events.add(new Event.Wetted(now()));
            return State.BAG;
        }
        events.add(opened(!chance(6)));
        return State.FLOOR;
    }

    private Event.Opened opened(boolean good) {
        HumidityCard card =
                new HumidityCard(Map.of(5.0, good || chance(2), 10.0, good || chance(3), 60.0, good || !chance(3)));
        return new Event.Opened(
                now(),
                good ? Optional.of(card) : maybe(card),
                maybe(now().plusSeconds(below(good ? 1800 : 2400))),
                good ? Optional.of(true) : maybe(chance(2)),
                zone());
    }

    private Optional<Zone> zone() {
        return maybe(pick(ZONES));
    }

    private State next(List<Event> events, State state) {
        switch (below(12)) {
            case 0, 1, 2 -> {
                return stored(events);
            }
            case 3, 4 -> {
                boolean fresh = !chance(4);
                events.add(new Event.Resealed(now(), fresh, fresh || chance(2)));
                return State.BAG;
            }
            case 5, 6 -> baked(events);
            case 7 -> events.add(new Event.Heated(now(), maybe(new Celsius(pick(150.0, 200.0, 245.0)))));
            case 8 -> events.add(mountedOrRemoved());
            case 9 -> {
                events.add(new Event.CarrierChanged(now(), carrier()));
                return state;
            }
            case 10 -> {
                events.add(chance(4) ? new Event.Wetted(now()) : new Event.CarrierChanged(now(), carrier()));
                return state;
            }
            default -> events.add(new Event.ToFloor(now(), zone()));
        }
        return State.FLOOR;
    }

    private Event mountedOrRemoved() {
        return chance(2) ? new Event.Mounted(now(), zone()) : new Event.Removed(now(), zone());
    }

    private State stored(List<Event> events) {
        Optional<RelativeHumidity> humidity = maybe(new RelativeHumidity(pick(HUMIDITIES)));
        Optional<Zone> logged = chance(3) ? Optional.of(CABINET) : Optional.empty();
        events.add(new Event.ToDryStorage(now(), humidity, logged));
        return State.CABINET;
    }

    private Event.BakeStarted started() {
        return new Event.BakeStarted(
                now(),
                new Celsius(pick(40.0, 60.0, 90.0, 110.0, 125.0, 125.0, 130.0)),
                chance(2) ? Optional.of(new RelativeHumidity(pick(2.0, 5.0, 8.0))) : Optional.empty());
    }

    private void baked(List<Event> events) {
        events.add(started());
        Duration stay = Duration.ofHours(pick(3, 8, 10, 24, 49)).plusMillis(below(1000));
        clockMs += stay.toMillis();
        events.add(new Event.BakeEnded(now(), maybe(chance(4) ? stay.dividedBy(2) : stay)));
    }

    private Map<Zone, List<ZoneLog.Reading>> readings(Instant moment) {
        Map<Zone, List<ZoneLog.Reading>> readings = new HashMap<>();
        for (Zone zone : ZONES) {
            if (chance(2)) {
                readings.put(zone, log(moment, 22, 50));
            }
        }
        readings.put(CABINET, log(moment, 23, pick(4.0, 7.0)));
        return readings;
    }

    private Optional<Air> worstCase() {
        return chance(6) ? Optional.empty() : Optional.of(Air.of(pick(22.0, 25.0, 30.0, 32.0), pick(40.0, 60.0, 70.0)));
    }

    /** From before the start to past the moment, every 5 to 90 minutes, now and then a gap. */
    private List<ZoneLog.Reading> log(Instant moment, double celsius, double percent) {
        List<ZoneLog.Reading> readings = new ArrayList<>();
        Instant at = Story.START.minus(Duration.ofHours(below(6)));
        int stepMinutes = pick(20, 45, 90);
        double damp = 0;
        while (at.isBefore(moment.plus(Duration.ofHours(3)))) {
            damp = chance(30) ? between(0, 30) : chance(4) ? 0 : damp;
            double humidity = Math.min(95, percent + damp + between(-1, 3));
            readings.add(new ZoneLog.Reading(at, Air.of(celsius + between(-2, 4) + damp / 5, humidity)));
            at = at.plus(Duration.ofMinutes(chance(60) ? 300 : stepMinutes));
        }
        return readings;
    }
}
