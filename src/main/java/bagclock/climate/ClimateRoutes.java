package bagclock.climate;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.SentText;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.readings.Kept;
import bagclock.readings.ReadingsFile;
import bagclock.readings.ZoneReading;
import bagclock.register.Change;
import bagclock.register.KnownPlace;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Zones, cabinets and their readings. */
public final class ClimateRoutes {
    private static final Set<String> DONE = Set.of("added", "changed", "read", "imported");

    private final Desk desk;
    private final Pages pages;
    private final Messages messages;
    private final Texts texts;
    private final Clock clock;
    private final ClimateStore store;
    private final ClimatePages words;
    private final ZonePages zonePages;
    private final ReadingImport imports;
    private final FileRoutes files;
    private final CalibrationRoutes calibrations;
    private final SiteRulesRoutes rules;

    /** Routes of one site. */
    public ClimateRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.desk = desk;
        this.pages = pages;
        this.clock = clock;
        this.texts = texts;
        this.messages = texts.messages();
        this.store = new ClimateStore(database);
        this.words = new ClimatePages(store, new CabinetAlarms(store, desk, texts), messages, texts);
        this.zonePages = new ZonePages(store, words, messages, texts);
        this.imports = new ReadingImport(messages, texts);
        this.files = new FileRoutes(database, desk, pages, texts, clock);
        this.calibrations = new CalibrationRoutes(database, desk, pages, texts, clock);
        this.rules = new SiteRulesRoutes(
                store, new Names(database), desk, pages, new SiteRulesRoutes.TextsAndClock(texts, clock));
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        routes.get("/climate", this::overview, Role.signedIn());
        routes.get("/climate/new", this::showNew, Role.ENGINEER);
        routes.post("/climate/new", this::add, Role.ENGINEER);
        routes.get("/climate/import", ctx -> pages.show(ctx, imports.empty(codes())), Role.signedIn());
        routes.post("/climate/import", this::read, Role.signedIn());
        files.register(routes);
        calibrations.register(routes);
        rules.register(routes);
        routes.get("/climate/{code}", this::show, Role.signedIn());
        routes.post("/climate/{code}/readings", this::addReading, Role.signedIn());
        routes.get("/climate/{code}/change", this::showChange, Role.ENGINEER);
        routes.post("/climate/{code}/change", this::change, Role.ENGINEER);
    }

    private void overview(Context ctx) {
        pages.show(ctx, words.overview(done(ctx), clock.instant()));
    }

    private String done(Context ctx) {
        String act = ctx.queryParam("done");
        return act != null && DONE.contains(act) ? messages.text("climate.done." + act) : "";
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        Entered empty = Entered.of(Map.of("at", texts.field(now)), texts);
        pages.show(ctx, zonePages.page(place(ctx, now).fact(), empty, done(ctx), view(ctx, now)));
    }

    private static ZonePages.View view(Context ctx, Instant now) {
        String before = Optional.ofNullable(ctx.queryParam("before")).orElse("");
        Instant until = before.matches("\\d{1,15}") ? Instant.ofEpochMilli(Long.parseLong(before)) : now;
        String days = Optional.ofNullable(ctx.queryParam("days")).orElse("");
        return new ZonePages.View(ZonePages.days(days), until, now);
    }

    private void addReading(Context ctx) {
        Instant now = clock.instant();
        KnownPlace place = place(ctx, now).fact();
        Entered entered = Entered.of(ctx, texts);
        Optional<Instant> at = entered.pastTime("at", now);
        Optional<Double> celsius = entered.number("temperature", -60, 100);
        Optional<Double> percent = entered.number("humidity", 0, 100);
        if (!place.logged()) {
            entered.refuse("at", messages.text("climate.reading.not-logged"));
        }
        if (!entered.isRefused()) {
            Reading reading = new Reading(at.orElseThrow(), Air.of(celsius.orElseThrow(), percent.orElseThrow()));
            keep(List.of(new ZoneReading(place.zone(), reading, 1)), ctx, now)
                    .refused()
                    .forEach(bad -> entered.refuse("at", texts.refusal(bad.refusal())));
        }
        if (entered.isRefused()) {
            pages.refuse(ctx, zonePages.page(place, entered, "", view(ctx, now)));
        } else {
            ctx.redirect("/climate/" + place.code() + "?done=read", HttpStatus.SEE_OTHER);
        }
    }

    private Kept keep(List<ZoneReading> readings, Context ctx, Instant now) {
        return desk.add(readings, Visit.of(ctx).signedIn().id(), now);
    }

    private void read(Context ctx) {
        Instant now = clock.instant();
        String text = SentText.withReplacements(ctx);
        if (text.isBlank()) {
            pages.refuse(ctx, imports.missing(codes()));
            return;
        }
        Set<Zone> zones = codes().stream().map(Zone::new).collect(Collectors.toSet());
        ReadingsFile file = ReadingsFile.read(text, zones, texts.zone());
        boolean goodOnly = "only".equals(ctx.formParam("good"));
        if (file.good().isEmpty() || (!file.bad().isEmpty() && !goodOnly)) {
            pages.refuse(ctx, imports.unread(text, file, codes()));
            return;
        }
        Kept kept = keep(file.good(), ctx, now);
        if (kept.refused().isEmpty()) {
            ctx.redirect("/climate?done=imported", HttpStatus.SEE_OTHER);
        } else {
            pages.refuse(ctx, imports.refused(kept, codes()));
        }
    }

    private Set<String> codes() {
        return store.places(clock.instant()).stream()
                .filter(KnownPlace::logged)
                .map(KnownPlace::code)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String kind(Context ctx) {
        boolean cabinet =
                PlaceForm.CABINET.equals(ctx.queryParam("kind")) || PlaceForm.CABINET.equals(ctx.formParam("kind"));
        return cabinet ? PlaceForm.CABINET : PlaceForm.ZONE;
    }

    private void showNew(Context ctx) {
        Entered empty = Entered.of(Map.of("logged", PlaceForm.YES), texts);
        pages.show(ctx, fresh(empty, kind(ctx)));
    }

    private PlacePage fresh(Entered entered, String kind) {
        return words.form(entered, kind, "/climate/new", 0, messages.text("climate." + kind + ".new"));
    }

    private void add(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        String code = PlaceForm.code(entered, messages);
        Optional<KnownPlace> place = PlaceForm.place(entered, kind(ctx), code, messages);
        if (!code.isEmpty() && store.isTaken(code, now)) {
            entered.refuse("code", messages.text("climate.code.taken"));
        }
        if (place.isEmpty() || entered.isRefused()) {
            pages.refuse(ctx, fresh(entered, kind(ctx)));
            return;
        }
        desk.keep(place.get(), changeBy(ctx, now, 0));
        ctx.redirect("/climate?done=added", HttpStatus.SEE_OTHER);
    }

    private void showChange(Context ctx) {
        Versioned<KnownPlace> place = place(ctx, clock.instant());
        Map<String, String> values = new HashMap<>(PlaceForm.values(place.fact(), texts::number));
        pages.show(
                ctx, changed(Entered.of(values, texts), place, place.version().number()));
    }

    private PlacePage changed(Entered entered, Versioned<KnownPlace> place, int basedOn) {
        String code = place.fact().code();
        return words.form(
                entered,
                kind(place.fact()),
                "/climate/" + code + "/change",
                basedOn,
                place.fact().name());
    }

    private static String kind(KnownPlace place) {
        return place instanceof KnownPlace.DryCabinet ? PlaceForm.CABINET : PlaceForm.ZONE;
    }

    private void change(Context ctx) {
        Instant now = clock.instant();
        Versioned<KnownPlace> before = place(ctx, now);
        Entered entered = Entered.of(ctx, texts);
        int basedOn = entered.count("basedOn", 1, Integer.MAX_VALUE)
                .orElse(before.version().number());
        Optional<KnownPlace> place =
                PlaceForm.place(entered, kind(before.fact()), before.fact().code(), messages);
        if (place.isEmpty()) {
            pages.refuse(ctx, changed(entered, before, basedOn));
            return;
        }
        desk.keep(place.get(), changeBy(ctx, now, basedOn));
        ctx.redirect("/climate/" + before.fact().code() + "?done=changed", HttpStatus.SEE_OTHER);
    }

    private static Change changeBy(Context ctx, Instant now, int basedOn) {
        return new Change(now, now, Visit.of(ctx).signedIn().id(), basedOn);
    }

    private Versioned<KnownPlace> place(Context ctx, Instant now) {
        return store.place(ctx.pathParam("code"), now);
    }
}
