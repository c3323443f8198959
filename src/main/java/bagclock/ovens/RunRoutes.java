package bagclock.ovens;

import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.NotAllowed;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Secret;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One load: when it came to temperature, and taking it out. */
final class RunRoutes {
    private static final String KEY = "key";
    private static final String HOT_AT = "hotAt";
    private static final String TAG = "tag";
    private static final String TO = "to";
    static final Set<Role> DECIDES = Set.of(Role.ENGINEER);

    private final Ovens ovens;
    private final RunPages runPages;
    private final Unloading unloading;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;
    private final OvenWords words;

    RunRoutes(Ovens ovens, RunPages runPages, Pages pages, Texts texts, Clock clock) {
        this.ovens = ovens;
        this.runPages = runPages;
        this.unloading = new Unloading(ovens.desk(), runPages.charts(), runPages.words());
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
        this.words = runPages.words();
    }

    void register(RoutesConfig routes) {
        routes.get("/ovens/{code}/loads/{at}", this::show, Role.signedIn());
        routes.post("/ovens/{code}/loads/{at}/hot", this::noteHot, Role.signedIn());
        routes.post("/ovens/{code}/loads/{at}/out", this::unload, Role.signedIn());
    }

    /** The load of an address. */
    static Load load(Context ctx, Ovens ovens, Instant now) {
        return ovens.load(ctx.pathParam("code"), moment(ctx), now);
    }

    /** When it went in, of an address, in milliseconds; -1 for what is no time. */
    static long moment(Context ctx) {
        String at = ctx.pathParam("at");
        return at.matches("\\d{1,15}") ? Long.parseLong(at) : -1;
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, ovens, now);
        Entered usual = Entered.of(usual(load, now, words, texts), texts);
        pages.show(ctx, runPages.run(load, usual, RunPages.Told.fresh(places(now)), now));
    }

    private List<Choice> places(Instant now) {
        return places(ovens.store(), now);
    }

    /** Where parts may go from an oven. */
    static List<Choice> places(OvenStore store, Instant now) {
        return store.otherPlaces(now).stream()
                .map(place -> Choice.of(place.code(), place.name()))
                .toList();
    }

    /** The fields as they are before anything was sent. */
    static Map<String, String> usual(Load load, Instant now, OvenWords words, Texts texts) {
        Map<String, String> values = new HashMap<>();
        values.put(HOT_AT, texts.field(load.cameToTemperatureAt().orElse(now)));
        values.put("outAt", texts.field(now));
        values.put("hours", words.hoursField(load.atTemperatureBy(now.truncatedTo(ChronoUnit.MINUTES))));
        values.put(TAG, load.items().stream().map(Load.Loaded::tag).collect(Collectors.joining(",")));
        return values;
    }

    private void noteHot(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, ovens, now);
        Entered sent = Entered.of(ctx, texts);
        Optional<Instant> at = sent.pastTime(HOT_AT, now);
        if (at.filter(moment -> moment.isBefore(minute(load.loadedAt()))).isPresent()) {
            sent.refuse(HOT_AT, words.text("ovens.hot-before", texts.at(load.loadedAt(), now)));
        }
        if (sent.isRefused()) {
            Map<String, String> values = usual(load, now, words, texts);
            values.put(HOT_AT, sent.text(HOT_AT));
            Entered shown = Entered.of(values, texts);
            shown.refuse(HOT_AT, sent.error(HOT_AT));
            pages.refuse(ctx, runPages.run(load, shown, RunPages.Told.fresh(places(now)), now));
            return;
        }
        Instant hot = at.orElseThrow().isBefore(load.loadedAt()) ? load.loadedAt() : at.orElseThrow();
        ovens.store().noteAtTemperature(load, hot, Visit.of(ctx).signedIn().id(), now);
        ctx.redirect("/ovens?done=hot", HttpStatus.SEE_OTHER);
    }

    /** A field tells minutes only. */
    private static Instant minute(Instant moment) {
        return moment.truncatedTo(ChronoUnit.MINUTES);
    }

    private void unload(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, ovens, now);
        Entered entered = Entered.of(ctx, texts);
        String key = entered.text(KEY).isEmpty() ? Secret.token() : entered.text(KEY);
        Optional<Instant> out = entered.pastTime("outAt", now);
        List<Load.Loaded> taken = load.items().stream()
                .filter(item -> entered.all(TAG).contains(item.tag()))
                .toList();
        if (taken.isEmpty()) {
            entered.refuse(TAG, words.text("ovens.items.none"));
        }
        Optional<Charts.Weighed> chart = runPages.charts()
                .kept(load, out.map(at -> later(at, load.loadedAt())).orElse(now), now);
        Optional<Duration> hours =
                chart.map(weighed -> weighed.proof().time()).or(() -> entered.hours("hours", 0, 10_000, Math::floor));
        decide(ctx, entered, chart);
        List<String> missing = hours.map(time -> missing(taken, time)).orElse(List.of());
        boolean asked = !missing.isEmpty() && !entered.isChecked("early");
        if (entered.isRefused() || asked) {
            refuse(ctx, load, entered, new RunPages.Told(key, asked ? missing : List.of(), places(now)), now);
            return;
        }
        Unloading.Out done = new Unloading.Out(load, out.orElseThrow(), hours.orElseThrow(), entered.text(TO), chart);
        List<String> refused = unloading.end(
                taken, done, new Unloading.Sender(Visit.of(ctx).signedIn().id(), key), now);
        if (refused.isEmpty()) {
            ctx.redirect("/ovens?done=unloaded", HttpStatus.SEE_OTHER);
        } else {
            entered.refuse(chart.isEmpty() ? "hours" : "outAt", String.join(" ", refused));
            refuse(ctx, load, entered, new RunPages.Told(key, List.of(), places(now)), now);
        }
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private void refuse(Context ctx, Load load, Entered entered, RunPages.Told told, Instant now) {
        pages.refuse(ctx, runPages.run(load, entered, told, now));
    }

    /** A load that was too hot waits for an engineer's word. */
    private void decide(Context ctx, Entered entered, Optional<Charts.Weighed> chart) {
        if (chart.filter(weighed -> weighed.proof().isTooHot()).isEmpty()) {
            return;
        } else if (!Visit.of(ctx).signedIn().isOneOf(DECIDES)) {
            throw new NotAllowed("a load that was too hot waits for an engineer");
        } else if (!entered.isChecked("decided")) {
            entered.refuse("decided", words.text("ovens.chart.decide-first"));
        }
    }

    private List<String> missing(List<Load.Loaded> taken, Duration time) {
        List<String> missing = new ArrayList<>();
        for (Load.Loaded item : taken) {
            if (item.needed().isEmpty()) {
                missing.add(words.text("ovens.early.never", item.tag()));
            }
            item.missingAfter(time)
                    .ifPresent(rest -> missing.add(words.text(
                            "ovens.early",
                            item.tag(),
                            words.hours(rest),
                            words.hours(item.needed().orElseThrow()))));
        }
        return missing;
    }
}
