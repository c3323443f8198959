package bagclock.desk;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.Place.CabinetClass;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import bagclock.platform.Database;
import bagclock.readings.Kept;
import bagclock.readings.ZoneReading;
import bagclock.register.BoardType;
import bagclock.register.CarrierKind;
import bagclock.register.Change;
import bagclock.register.HouseRules;
import bagclock.register.KnownBoard;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A small shop to test with: two logged benches, cabinets, an oven, parts of each kind of clock. */
final class TestShop {
    static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    static final String CLERK = "clerk-1";
    static final String BENCH = "Z-BENCH";
    static final String STORE = "Z-STORE";
    static final String DRY = "C-DRY";
    static final String LOGGED_DRY = "C-LOG";
    static final String OVEN = "O-1";
    static final HumidityCard GOOD_CARD = new HumidityCard(Map.of(5.0, true, 10.0, true, 60.0, true));

    final Desk desk;
    private int keys;

    TestShop(Database database) {
        desk = new Desk(database, STANDARD, (tx, topic) -> {});
        Change first = change(0);
        desk.keep(new HouseRules(SiteRules.USUAL, Optional.of(Air.of(25, 55))), first);
        desk.keep(zone(BENCH, "Bench", Optional.of(Air.of(25, 55))), first);
        desk.keep(zone(STORE, "Store", Optional.empty()), first);
        desk.keep(new KnownPlace.DryCabinet(DRY, "Cabinet", false, CabinetClass.UP_TO_5), first);
        desk.keep(new KnownPlace.DryCabinet(LOGGED_DRY, "Logged cabinet", true, CabinetClass.UP_TO_10), first);
        desk.keep(oven(), first);
        desk.keep(new CarrierKind("tray 125", new CarrierLimit.Of(new Celsius(125))), first);
        for (Level level : Level.values()) {
            desk.keep(type(level), first);
        }
    }

    static Change change(int basedOn) {
        return new Change(START.minus(Duration.ofDays(400)), START.minus(Duration.ofDays(400)), "engineer", basedOn);
    }

    static KnownPlace zone(String code, String name, Optional<Air> worstCase) {
        return new KnownPlace.FloorZone(code, name, true, worstCase, Optional.empty());
    }

    private static KnownPlace oven() {
        return new KnownPlace.BakeOven(
                OVEN,
                "Oven",
                8,
                new Celsius(40),
                new Celsius(130),
                Optional.of(new RelativeHumidity(5)),
                Duration.ofMinutes(30));
    }

    static PartType type(Level level) {
        Part part = Part.of(level, Body.of(BodyKind.LEADLESS, "1.2")).in(new CarrierLimit.Of(new Celsius(125)));
        return new PartType(number(level), "", "test part", new PartType.Source("", ""), part);
    }

    /** A board that bears 125 C, with the same part at two places. */
    void board(String serial, String partNumber) {
        BoardType type = new BoardType(
                "T-1",
                "test board",
                Optional.of(new Celsius(125)),
                Optional.empty(),
                Optional.of(false),
                List.of(),
                List.of(new BoardType.Spot("U1", partNumber), new BoardType.Spot("U2", partNumber)));
        desk.boards().keep(type, change(0));
        desk.boards().keep(new KnownBoard(serial, "T-1", false), change(0));
    }

    static String number(Level level) {
        return "PN-" + level.code();
    }

    static Instant at(double hours) {
        return START.plusMillis((long) (hours * 3_600_000));
    }

    Command.Header header(double hours) {
        keys++;
        return new Command.Header(CLERK, at(hours), "key-" + keys);
    }

    /** Taken as told at once. */
    Receipt tell(Command command) {
        return tell(command, command.header().happenedAt());
    }

    Receipt tell(Command command, Instant now) {
        return desk.handle(command, now).fold(receipt -> receipt, refusals -> {
            throw new AssertionError("refused: " + refusals);
        });
    }

    List<Reason> refused(Command command, Instant now) {
        Outcome<Receipt> outcome = desk.handle(command, now);
        return outcome.fold(
                receipt -> {
                    throw new AssertionError("accepted: " + receipt);
                },
                refusals -> refusals.stream().map(Refusal::reason).toList());
    }

    Command.Receive receive(double hours, String tag, Level level) {
        return new Command.Receive(
                header(hours),
                tag,
                number(level),
                1000,
                Optional.empty(),
                new Origin.DryPack(START.minus(Duration.ofDays(30)), OptionalInt.empty()));
    }

    Command.Open open(double hours, String tag) {
        return new Command.Open(
                header(hours),
                tag,
                Optional.of(GOOD_CARD),
                Optional.empty(),
                Optional.of(true),
                BENCH,
                Optional.empty());
    }

    Command.Move move(double hours, String tag, String place) {
        return new Command.Move(header(hours), tag, place);
    }

    /** Received and opened. */
    String opened(double hours, String tag, Level level) {
        tell(receive(hours, tag, level));
        tell(open(hours + 0.1, tag));
        return tag;
    }

    Kept read(String zone, double hours, double celsius, double percent, Instant now) {
        ZoneReading reading = new ZoneReading(new Zone(zone), new Reading(at(hours), Air.of(celsius, percent)), 1);
        return desk.add(List.of(reading), "logger", now);
    }
}
