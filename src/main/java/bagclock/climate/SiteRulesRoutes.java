package bagclock.climate;

import bagclock.desk.Desk;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.Change;
import bagclock.register.HouseRules;
import bagclock.register.Version;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;

/** What the site chooses about how readings count. */
final class SiteRulesRoutes {
    private static final String PATH = "/climate/rules";
    private static final int LAST_VERSION = 1_000_000;

    private final ClimateStore store;
    private final Desk desk;
    private final Pages pages;
    private final Texts texts;
    private final Messages messages;
    private final Clock clock;
    private final Names names;

    SiteRulesRoutes(ClimateStore store, Names names, Desk desk, Pages pages, TextsAndClock words) {
        this.store = store;
        this.names = names;
        this.desk = desk;
        this.pages = pages;
        this.texts = words.texts();
        this.messages = texts.messages();
        this.clock = words.clock();
    }

    /** What puts moments into words, and what tells them. */
    record TextsAndClock(Texts texts, Clock clock) {}

    void register(RoutesConfig routes) {
        routes.get(PATH, this::show, Role.ENGINEER);
        routes.post(PATH, this::keep, Role.ENGINEER);
    }

    private void show(Context ctx) {
        Versioned<HouseRules> rules = store.siteRules(clock.instant());
        Entered entered =
                Entered.of(SiteRulesForm.values(rules.fact(), rules.version().number(), texts), texts);
        pages.show(ctx, page(entered, rules.version(), ""));
    }

    private SiteRulesPage page(Entered entered, Version version, String refusal) {
        String state = version.number() == 0
                ? messages.text("climate.rules.usual")
                : messages.text(
                        "boards.rules.version",
                        version.number(),
                        texts.at(version.validFrom()),
                        names.of(version.who()));
        return SiteRulesForm.page(entered, messages.text("climate.rules.lead") + " " + state, refusal, messages);
    }

    private void keep(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        int basedOn = entered.count(SiteRulesForm.BASED_ON, 0, LAST_VERSION).orElse(0);
        Optional<HouseRules> told = SiteRulesForm.read(entered, messages);
        Version version = store.siteRules(now).version();
        if (told.isEmpty()) {
            pages.refuse(ctx, page(entered, version, ""));
            return;
        }
        try {
            desk.keep(told.get(), new Change(now, now, Visit.of(ctx).signedIn().id(), basedOn));
            ctx.redirect(PATH, HttpStatus.SEE_OTHER);
        } catch (ChangedMeanwhile lost) {
            pages.refuse(ctx, page(entered, version, messages.text("boards.rules.meanwhile")));
        }
    }
}
