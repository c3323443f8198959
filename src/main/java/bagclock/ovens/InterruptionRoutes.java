package bagclock.ovens;

import bagclock.core.proof.Spell;
import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Doors opened, power cut: what interrupts a load adds to its time. */
final class InterruptionRoutes {
    private static final String RUN = "/ovens/{code}/loads/{at}";
    private static final String KIND = "breakKind";
    private static final String BROKE_AT = "brokeAt";
    private static final String BACK_AT = "backAt";
    private static final List<String> FIELDS = List.of(KIND, BROKE_AT, BACK_AT, "cold");

    private final Ovens ovens;
    private final RunPages runPages;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;

    InterruptionRoutes(Ovens ovens, RunPages runPages, Pages pages, Texts texts, Clock clock) {
        this.ovens = ovens;
        this.runPages = runPages;
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.post(RUN + "/interruptions", this::note, Role.signedIn());
        routes.post(RUN + "/interruptions/{number}/take-back", this::takeBack, Role.signedIn());
    }

    private void note(Context ctx) {
        Instant now = clock.instant();
        Load load = RunRoutes.load(ctx, ovens, now);
        Entered sent = Entered.of(ctx, texts);
        Optional<Spell> spell = spell(sent, load, now);
        if (spell.isEmpty()) {
            Map<String, String> values = RunRoutes.usual(load, now, runPages.words(), texts);
            FIELDS.forEach(name -> values.put(name, sent.text(name)));
            Entered shown = Entered.of(values, texts);
            FIELDS.stream()
                    .filter(name -> !sent.error(name).isEmpty())
                    .forEach(name -> shown.refuse(name, sent.error(name)));
            RunPages.Told told = RunPages.Told.fresh(RunRoutes.places(ovens.store(), now));
            pages.refuse(ctx, runPages.run(load, shown, told, now));
            return;
        }
        Interruption.Kind kind = Arrays.stream(Interruption.Kind.values())
                .filter(one -> one.name().equals(sent.text(KIND)))
                .findFirst()
                .orElse(Interruption.Kind.OTHER);
        Interruption fresh = new Interruption(0, kind, spell.get(), sent.isChecked("cold"));
        ovens.store().note(load, fresh, 0, Visit.of(ctx).signedIn().id(), now);
        ctx.redirect(OvenPages.href(load), HttpStatus.SEE_OTHER);
    }

    private Optional<Spell> spell(Entered sent, Load load, Instant now) {
        Optional<Instant> from = sent.pastTime(BROKE_AT, now);
        Optional<Instant> to = sent.pastTime(BACK_AT, now);
        Instant in = load.loadedAt().truncatedTo(ChronoUnit.MINUTES);
        if (from.filter(in::isAfter).isPresent()) {
            sent.refuse(BROKE_AT, runPages.words().text("ovens.hot-before", texts.at(load.loadedAt(), now)));
        }
        if (from.isPresent() && to.isPresent() && !from.get().isBefore(to.get())) {
            sent.refuse(BACK_AT, runPages.words().text("ovens.break.order"));
        }
        return sent.isRefused() ? Optional.empty() : Optional.of(new Spell(from.orElseThrow(), to.orElseThrow()));
    }

    private void takeBack(Context ctx) {
        Instant now = clock.instant();
        Load load = RunRoutes.load(ctx, ovens, now);
        load.interruptions().stream()
                .filter(one -> Integer.toString(one.number()).equals(ctx.pathParam("number")))
                .forEach(one -> ovens.store()
                        .note(load, one, one.number(), Visit.of(ctx).signedIn().id(), now));
        ctx.redirect(OvenPages.href(load), HttpStatus.SEE_OTHER);
    }
}
