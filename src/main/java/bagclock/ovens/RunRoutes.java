package bagclock.ovens;

import bagclock.core.Refusal;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.platform.Entered;
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
import java.util.stream.Collectors;

/** One load: when it came to temperature, and taking it out. */
final class RunRoutes {
    private static final String KEY = "key";
    private static final String HOT_AT = "hotAt";
    private static final String TO = "to";

    private final Desk desk;
    private final OvenStore store;
    private final Ovens ovens;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;
    private final OvenWords words;
    private final OvenPages ovenPages;

    RunRoutes(Desk desk, OvenStore store, Pages pages, Texts texts, Clock clock) {
        this.desk = desk;
        this.store = store;
        this.ovens = new Ovens(desk, store);
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
        this.words = new OvenWords(texts);
        this.ovenPages = new OvenPages(words, texts);
    }

    void register(RoutesConfig routes) {
        routes.get("/ovens/{code}/loads/{at}", this::show, Role.signedIn());
        routes.post("/ovens/{code}/loads/{at}/hot", this::noteHot, Role.signedIn());
        routes.post("/ovens/{code}/loads/{at}/out", this::unload, Role.signedIn());
    }

    private Load load(Context ctx, Instant now) {
        String at = ctx.pathParam("at");
        return ovens.load(ctx.pathParam("code"), at.matches("\\d{1,15}") ? Long.parseLong(at) : -1, now);
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, now);
        pages.show(ctx, ovenPages.run(load, Entered.of(usual(load, now), texts), told("", List.of(), now), now));
    }

    private OvenPages.Told told(String key, List<String> missing, Instant now) {
        return new OvenPages.Told(key.isEmpty() ? Secret.token() : key, missing, store.otherPlaces(now));
    }

    private Map<String, String> usual(Load load, Instant now) {
        Map<String, String> values = new HashMap<>();
        values.put(HOT_AT, texts.field(load.cameToTemperatureAt().orElse(now)));
        values.put("outAt", texts.field(now));
        values.put("hours", words.hoursField(load.atTemperatureBy(now.truncatedTo(ChronoUnit.MINUTES))));
        values.put("tag", load.items().stream().map(Load.Loaded::tag).collect(Collectors.joining(",")));
        return values;
    }

    private void noteHot(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, now);
        Entered sent = Entered.of(ctx, texts);
        Optional<Instant> at = sent.pastTime(HOT_AT, now);
        if (at.filter(moment -> moment.isBefore(minute(load.loadedAt()))).isPresent()) {
            sent.refuse(HOT_AT, words.text("ovens.hot-before", texts.at(load.loadedAt(), now)));
        }
        if (sent.isRefused()) {
            Map<String, String> values = usual(load, now);
            values.put(HOT_AT, sent.text(HOT_AT));
            Entered shown = Entered.of(values, texts);
            shown.refuse(HOT_AT, sent.error(HOT_AT));
            pages.refuse(ctx, ovenPages.run(load, shown, told("", List.of(), now), now));
            return;
        }
        Instant hot = at.orElseThrow().isBefore(load.loadedAt()) ? load.loadedAt() : at.orElseThrow();
        store.noteAtTemperature(load, hot, Visit.of(ctx).signedIn().id(), now);
        ctx.redirect("/ovens?done=hot", HttpStatus.SEE_OTHER);
    }

    /** A field tells minutes only. */
    private static Instant minute(Instant moment) {
        return moment.truncatedTo(ChronoUnit.MINUTES);
    }

    private void unload(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, now);
        Entered entered = Entered.of(ctx, texts);
        String key = entered.text(KEY).isEmpty() ? Secret.token() : entered.text(KEY);
        Optional<Instant> out = entered.pastTime("outAt", now);
        Optional<Duration> hours = entered.number("hours", 0, 10_000).map(RunRoutes::duration);
        List<Load.Loaded> taken = load.items().stream()
                .filter(item -> entered.all("tag").contains(item.tag()))
                .toList();
        if (taken.isEmpty()) {
            entered.refuse("tag", words.text("ovens.items.none"));
        }
        List<String> missing = hours.map(time -> missing(taken, time)).orElse(List.of());
        boolean asked = !missing.isEmpty() && !entered.isChecked("early");
        if (entered.isRefused() || asked) {
            pages.refuse(ctx, ovenPages.run(load, entered, told(key, asked ? missing : List.of(), now), now));
            return;
        }
        List<String> refused =
                end(ctx, taken, new Out(out.orElseThrow(), hours.orElseThrow(), entered.text(TO), key), now);
        if (refused.isEmpty()) {
            ctx.redirect("/ovens?done=unloaded", HttpStatus.SEE_OTHER);
        } else {
            entered.refuse("hours", String.join(" ", refused));
            pages.refuse(ctx, ovenPages.run(load, entered, told(key, List.of(), now), now));
        }
    }

    private static Duration duration(double hours) {
        return Duration.ofSeconds(Math.round(hours * 3600));
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

    /**
     * How it comes out.
     *
     * @param to code of the place it goes to; empty: where it was before
     */
    private record Out(Instant at, Duration hours, String to, String key) {}

    private List<String> end(Context ctx, List<Load.Loaded> taken, Out out, Instant now) {
        String who = Visit.of(ctx).signedIn().id();
        List<String> refused = new ArrayList<>();
        for (Load.Loaded item : taken) {
            String tag = item.tag();
            Command.Header header = new Command.Header(who, out.at(), out.key() + "/" + tag);
            List<Refusal> refusals = tell(new Command.EndBake(header, tag, Optional.of(out.hours())), now);
            if (refusals.isEmpty() && !out.to().isEmpty()) {
                Command.Header after = new Command.Header(who, out.at(), out.key() + "/" + tag + "/to");
                refusals = tell(new Command.Move(after, tag, out.to()), now);
            }
            if (!refusals.isEmpty()) {
                refused.add(words.text("ovens.fit", tag, words.refusals(refusals)));
            }
        }
        return refused;
    }

    private List<Refusal> tell(Command command, Instant now) {
        return desk.handle(command, now).fold(receipt -> List.of(), refusals -> refusals);
    }
}
