package bagclock.ovens;

import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.Optional;

/** The site's rules for plans and for charts, kept by planners and engineers. */
final class RulesRoutes {
    private static final Role[] KEEPERS = {Role.PLANNER, Role.ENGINEER};

    private final PlanStore plans;
    private final BandStore bands;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;

    RulesRoutes(PlanStore plans, BandStore bands, Pages pages, Texts texts, Clock clock) {
        this.plans = plans;
        this.bands = bands;
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/ovens/plan/rules", ctx -> pages.show(ctx, page(plans(), band())), KEEPERS);
        routes.post("/ovens/plan/rules", this::keepRules, KEEPERS);
        routes.post("/ovens/plan/band", this::keepBand, KEEPERS);
    }

    private Entered plans() {
        return Entered.of(PlanRulesForm.values(plans.rules()), texts);
    }

    private Entered band() {
        return Entered.of(BandForm.values(bands.at(clock.instant()), texts), texts);
    }

    private PlanRulesPage page(Entered rules, Entered band) {
        return new PlanRulesPage(
                texts.messages().text("plan.rules"),
                PlanRulesForm.hours(rules, texts.messages()),
                rules.isChecked("weekends"),
                PlanRulesForm.others(rules, texts.messages()),
                BandForm.fields(band, texts.messages()));
    }

    private void keepRules(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        Optional<PlanRules> rules = PlanRulesForm.read(entered, texts.messages());
        if (rules.isEmpty()) {
            pages.refuse(ctx, page(entered, band()));
            return;
        }
        plans.keep(rules.get(), Visit.of(ctx).signedIn().id(), clock.instant());
        ctx.redirect("/ovens/plan?done=rules", HttpStatus.SEE_OTHER);
    }

    private void keepBand(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        Optional<BandRule> rule = BandForm.read(entered, texts.messages());
        if (rule.isEmpty()) {
            pages.refuse(ctx, page(plans(), entered));
            return;
        }
        bands.keep(rule.get(), Visit.of(ctx).signedIn().id(), clock.instant());
        ctx.redirect("/ovens/plan?done=rules", HttpStatus.SEE_OTHER);
    }
}
