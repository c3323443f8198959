package bagclock.climate;

import bagclock.desk.Desk;
import bagclock.platform.Choice;
import bagclock.platform.Database;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Problem;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.readings.Kept;
import bagclock.readings.SensorToken;
import bagclock.readings.Source;
import bagclock.readings.ZoneReading;
import bagclock.register.KnownPlace;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Sensors: the page on which an administrator lets them in, and the call by which they send readings. */
public final class SensorRoutes {
    private static final String BEARER = "Bearer ";

    private final SensorTokenStore store;
    private final ClimateStore climate;
    private final Desk desk;
    private final Pages pages;
    private final Messages messages;
    private final Texts texts;
    private final Clock clock;
    private final Names names;

    /** Routes of one site. */
    public SensorRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.store = new SensorTokenStore(database);
        this.climate = new ClimateStore(database);
        this.desk = desk;
        this.pages = pages;
        this.messages = texts.messages();
        this.texts = texts;
        this.clock = clock;
        this.names = new Names(database);
    }

    /** Declares the routes; before those of single persons, whose addresses these would be. */
    public void register(RoutesConfig routes) {
        routes.get(
                "/people/sensors", ctx -> pages.show(ctx, page(Entered.of(Map.of(), texts), "")), Role.ADMINISTRATOR);
        routes.post("/people/sensors", this::add, Role.ADMINISTRATOR);
        routes.post("/people/sensors/{id}/revoke", this::revoke, Role.ADMINISTRATOR);
        // The token says who sends; no session and no form stand behind it.
        routes.post("/api/v1/readings", this::take, Role.ANYONE);
    }

    private SensorsPage page(Entered entered, String token) {
        List<SensorsPage.Line> lines = store.all().stream()
                .map(sensor -> new SensorsPage.Line(
                        sensor.id(),
                        sensor.name(),
                        String.join(", ", sensor.places()),
                        messages.text("sensors.made", texts.at(sensor.madeAt()), names.of(sensor.madeBy())),
                        sensor.revoked()
                                .map(at -> messages.text("sensors.revoked", texts.at(at)))
                                .orElse("")))
                .toList();
        return new SensorsPage(
                messages.text("sensors.title"),
                token,
                entered.field("name", messages.text("sensors.name"), messages.text("sensors.name.hint")),
                entered.field("places", messages.text("sensors.places")),
                places(),
                lines);
    }

    private List<Choice> places() {
        return climate.places(clock.instant()).stream()
                .filter(KnownPlace::logged)
                .map(place -> new Choice(place.code(), place.name(), place.code()))
                .toList();
    }

    private void add(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        String name = entered.required("name");
        List<String> chosen = entered.all("places");
        Set<String> known = places().stream().map(Choice::value).collect(Collectors.toSet());
        if (chosen.isEmpty() || !known.containsAll(chosen)) {
            entered.refuse("places", messages.text("entered.choose"));
        }
        if (name.length() > 80) {
            entered.refuse("name", messages.text("entered.long", 80));
        }
        if (entered.isRefused()) {
            pages.refuse(ctx, page(entered, ""));
            return;
        }
        String token =
                store.add(name, chosen, new Source(Visit.of(ctx).signedIn().id(), clock.instant()));
        pages.show(ctx, page(Entered.of(Map.of(), texts), token));
    }

    private void revoke(Context ctx) {
        store.revoke(ctx.pathParam("id"), clock.instant());
        ctx.redirect("/people/sensors", HttpStatus.SEE_OTHER);
    }

    private void take(Context ctx) {
        String header = Optional.ofNullable(ctx.header("Authorization")).orElse("");
        Optional<SensorToken> sensor = header.startsWith(BEARER)
                ? store.byToken(header.substring(BEARER.length()).strip())
                : Optional.empty();
        if (sensor.isEmpty()) {
            ctx.header("WWW-Authenticate", "Bearer");
            Problem.of(401, messages.text("error.401.title"), messages.text("sensors.no-token"))
                    .answer(ctx);
            return;
        }
        SensorBatch batch = SensorBatch.read(new String(ctx.bodyAsBytes(), StandardCharsets.UTF_8));
        Set<String> foreign = foreign(batch.readings(), sensor.get());
        if (!batch.problems().isEmpty()) {
            refuse(ctx, HttpStatus.BAD_REQUEST, "error.400.title", batch.problems());
        } else if (!foreign.isEmpty()) {
            refuse(
                    ctx,
                    HttpStatus.FORBIDDEN,
                    "error.403.title",
                    List.of(messages.text("sensors.foreign", String.join(", ", foreign))));
        } else {
            keep(ctx, batch.readings(), sensor.get());
        }
    }

    private void refuse(Context ctx, HttpStatus status, String title, List<String> problems) {
        List<Problem.Line> lines = problems.stream()
                .map(problem -> new Problem.Line(status.name(), problem))
                .toList();
        new Problem("about:blank", messages.text(title), status.getCode(), messages.text("sensors.nothing-kept"), lines)
                .answer(ctx);
    }

    /** Zones that the sensor may not speak for, or that take no readings. */
    private Set<String> foreign(List<ZoneReading> readings, SensorToken sensor) {
        Set<String> allowed = places().stream()
                .map(Choice::value)
                .filter(sensor.places()::contains)
                .collect(Collectors.toSet());
        return readings.stream()
                .map(reading -> reading.zone().name())
                .filter(zone -> !allowed.contains(zone))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void keep(Context ctx, List<ZoneReading> readings, SensorToken sensor) {
        Kept kept = desk.add(readings, sensor.id(), clock.instant());
        List<Map<String, Object>> refused = kept.refused().stream()
                .map(bad -> Map.<String, Object>of(
                        "index",
                        bad.line(),
                        "reason",
                        bad.refusal().reason().name(),
                        "text",
                        texts.refusal(bad.refusal())))
                .toList();
        ctx.json(Map.of("added", kept.added(), "known", kept.known(), "refused", refused));
    }
}
