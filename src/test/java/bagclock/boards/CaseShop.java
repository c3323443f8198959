package bagclock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.core.exposure.Air;
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
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.Origin;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.register.BoardType;
import bagclock.register.BoardType.Spot;
import bagclock.register.CarrierKind;
import bagclock.register.Change;
import bagclock.register.KnownBoard;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** A shop to tell cases in: a bench at 25 C, 55 %RH, an oven, and boards of one part each. */
final class CaseShop implements AutoCloseable {
    static final String OVEN = "CASE-OVEN";
    static final String TRAY = "tray of a case";

    private static final String BENCH = "CASE-BENCH";

    final HandClock clock = new HandClock(Instant.parse("2026-03-12T13:00:00Z"));
    final Desk desk;
    final BoardWords words;
    private final Site site;
    private final Database database;
    private int keys;

    CaseShop() {
        String url = Engine.H2.freshUrl();
        site = DemoShop.withoutStory(url, clock);
        database = Database.open(url);
        desk = DemoShop.desk(database);
        words = new BoardWords(new Texts(ZoneId.of("UTC"), Messages.load()), new Names(database));
        desk.keep(
                new KnownPlace.FloorZone(BENCH, "Bench", false, Optional.of(Air.of(25, 55)), Optional.empty()),
                first());
        desk.keep(
                new KnownPlace.BakeOven(
                        OVEN,
                        "Oven",
                        8,
                        new Celsius(40),
                        new Celsius(130),
                        Optional.of(new RelativeHumidity(5)),
                        Duration.ZERO),
                first());
        desk.keep(new CarrierKind(TRAY, new CarrierLimit.Of(new Celsius(150))), first());
    }

    @Override
    public void close() {
        database.close();
        site.close();
    }

    private Change first() {
        Instant longAgo = clock.instant().minus(Duration.ofDays(400));
        return new Change(longAgo, longAgo, "engineer", 0);
    }

    /** A part type: a ball array of this level, thickness and rated peak. */
    String part(String number, String level, String thicknessMm, double peakC) {
        Body body = new Body(
                BodyKind.ARRAY,
                Optional.of(Millimetres.of(thicknessMm)),
                Optional.of(Millimetres.of("15")),
                Optional.of(Millimetres.of("15")),
                Optional.of(false),
                Optional.of(false),
                Optional.of(true));
        Part part = new Part(
                List.of(new Rating(Level.parse(level), Optional.of(new Celsius(peakC)))),
                body,
                MakerRules.NONE,
                Optional.empty(),
                new CarrierLimit.Of(new Celsius(125)),
                Part.Prior.NONE);
        desk.keep(new PartType(number, "", "a case's part", new PartType.Source("label", "1"), part), first());
        return number;
    }

    /** A board whose type bears this, with one location for each part: U1, U2 and so on. */
    String board(String serial, double bearsC, String... parts) {
        List<Spot> spots = new ArrayList<>();
        for (String part : parts) {
            spots.add(new Spot("U" + (spots.size() + 1), part));
        }
        BoardType type = new BoardType(
                "T-" + serial,
                "a case's board",
                Optional.of(new Celsius(bearsC)),
                Optional.empty(),
                Optional.of(false),
                List.of(),
                spots);
        desk.boards().keep(type, first());
        desk.boards().keep(new KnownBoard(serial, type.number(), false), first());
        return serial;
    }

    /** An item of one part that left its dry pack hours ago. */
    String item(String tag, String part, double hoursAgo) {
        Instant at = clock.instant().minus(Duration.ofMinutes((long) (hoursAgo * 60)));
        Origin origin = new Origin.LeftDryPack(at, BENCH, "stamped on the bag");
        tell(new Command.Receive(header(at), tag, part, 1, Optional.empty(), origin));
        return tag;
    }

    /** The same, soldered on at once. */
    String mounted(String tag, String part, double hoursAgo, String serial, String location) {
        item(tag, part, hoursAgo);
        Instant at = clock.instant().minus(Duration.ofMinutes((long) (hoursAgo * 60)));
        tell(new Command.Mount(header(at), tag, serial, location, Optional.of(BENCH)));
        return tag;
    }

    Command.Header header(Instant at) {
        keys++;
        return new Command.Header("clerk", at, "case-" + keys);
    }

    void tell(Command command) {
        desk.handle(command, clock.instant()).fold(receipt -> receipt, refusals -> {
            throw new AssertionError("refused: " + refusals);
        });
    }

    Visitor technician() {
        return Visitor.ofDemo(site.port(), Role.TECHNICIAN);
    }

    Visitor engineer() {
        return Visitor.ofDemo(site.port(), Role.ENGINEER);
    }

    /** The minute that runs, as a field has it. */
    String now() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC)
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }

    static String sent(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(Jsoup.parse(answer.body()).text()).isEqualTo(303);
        return Visitor.target(answer);
    }

    /** A job at a location, opened, and checked. */
    String job(Visitor visitor, String serial, String location, OldPart fate) {
        String path = "/boards/" + serial;
        String job =
                sent(visitor.submit(path, path + "/jobs", "location", location, "why", "A case.", "fate", fate.code()));
        step(visitor, job);
        return job;
    }

    void step(Visitor visitor, String job) {
        sent(visitor.submit(job, job + "/step", "why", ""));
    }

    /** The board is baked in the job for so many hours; whoever signed in before has to sign in again. */
    void bake(Visitor visitor, String job, double celsius, int hours) {
        sent(visitor.submit(job, job + "/bake", "oven", OVEN, "setPoint", Double.toString(celsius), "bakeAt", now()));
        clock.passes(Duration.ofHours(hours));
        sent(technician().submit(job, job + "/bake-end", "hours", Integer.toString(hours), "at", now()));
    }

    /** The heat that comes next is done. */
    String heat(Visitor visitor, String job, String query) {
        return sent(visitor.submit(job + query, job + "/heat", "at", now(), "measured", "235"));
    }

    static String verdict(Document page) {
        return page.select(".answer .call").text();
    }

    /** What is said of the bake at a temperature. */
    static String bakeAt(Document page, int celsius) {
        return page.select(".reasons li").stream()
                .map(line -> line.text())
                .filter(text -> text.contains(" h at " + celsius + " ") || text.contains("at " + celsius + "\u00a0"))
                .findFirst()
                .orElse("");
    }
}
