package bagclock.people;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Gate;
import bagclock.platform.Messages;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Person;
import bagclock.platform.Role;
import bagclock.platform.Settings;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Signing in and out, the first start, and the way from the bare address to the person's front door. */
public final class SignInRoutes {
    private final Accounts accounts;
    private final SignIns signIns;
    private final Pages pages;
    private final Messages messages;
    private final Site site;

    /**
     * What the pages need to know of the site.
     *
     * @param clock what the moment of a sign-in is read from
     */
    public record Site(Settings settings, Clock clock) {}

    /** Routes over the given accounts. */
    public SignInRoutes(Accounts accounts, SignIns signIns, Pages pages, Messages messages, Site site) {
        this.accounts = accounts;
        this.signIns = signIns;
        this.pages = pages;
        this.messages = messages;
        this.site = site;
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        routes.get("/", this::home, Role.signedIn());
        routes.get(Gate.SIGN_IN, this::show, Role.ANYONE);
        routes.post(Gate.SIGN_IN, this::withPassword, Role.ANYONE);
        routes.post("/sign-in/badge", this::withBadge, Role.ANYONE);
        routes.post("/sign-in/demo", this::asDemo, Role.ANYONE);
        routes.post("/sign-out", this::signOut, Role.ANYONE);
        routes.get("/first-start", this::showFirstStart, Role.ANYONE);
        routes.post("/first-start", this::firstStart, Role.ANYONE);
    }

    private void home(Context ctx) {
        ctx.redirect(frontDoorOf(Visit.of(ctx).signedIn()), HttpStatus.SEE_OTHER);
    }

    private static String frontDoorOf(Person person) {
        if (person.isOneOf(Set.of(Role.CLERK))) {
            return "/stock";
        } else if (person.isOneOf(Set.of(Role.TECHNICIAN, Role.ENGINEER))) {
            return "/bench";
        }
        return person.isOneOf(Set.of(Role.PLANNER)) ? "/ovens" : "/people";
    }

    private void show(Context ctx) {
        if (Visit.of(ctx).person().isPresent()) {
            ctx.redirect("/", HttpStatus.SEE_OTHER);
            return;
        }
        String next = ctx.queryParam("next");
        pages.show(ctx, page(next == null ? "" : next, "", "", ""));
    }

    private void withPassword(Context ctx) {
        String name = entered(ctx, "name");
        Admission admission = signIns.withPassword(
                name, entered(ctx, "password"), site.clock().instant());
        answer(ctx, admission, page(entered(ctx, "next"), name, "", refusal(admission, "sign-in.refused")));
    }

    private void withBadge(Context ctx) {
        String badge = entered(ctx, "badge");
        Admission admission =
                signIns.withBadge(badge, entered(ctx, "pin"), site.clock().instant());
        answer(ctx, admission, page(entered(ctx, "next"), "", badge, refusal(admission, "sign-in.refused-badge")));
    }

    private void answer(Context ctx, Admission admission, SignInPage refused) {
        if (admission.token().isPresent()) {
            enter(ctx, admission.token().get());
        } else {
            pages.refuse(ctx, refused);
        }
    }

    private void asDemo(Context ctx) {
        Role role = Arrays.stream(Role.signedIn())
                .filter(known -> known.name().equals(entered(ctx, "role")))
                .findFirst()
                .filter(known -> site.settings().demo())
                .orElseThrow(() -> new NotThere("no demonstration sign-in"));
        enter(ctx, signIns.asDemo(role, site.clock().instant()));
    }

    /** Another token than before: one that was planted in the browser gains nothing. */
    private void enter(Context ctx, String token) {
        Gate.token(ctx).ifPresent(signIns::end);
        Gate.giveToken(ctx, token);
        String next = entered(ctx, "next");
        boolean staysHere = next.matches("/[^/\\\\\\p{Cntrl}][^\\\\\\p{Cntrl}]*");
        ctx.redirect(staysHere ? next : "/", HttpStatus.SEE_OTHER);
    }

    private void signOut(Context ctx) {
        Gate.token(ctx).ifPresent(signIns::end);
        ctx.redirect(Gate.SIGN_IN, HttpStatus.SEE_OTHER);
    }

    private void showFirstStart(Context ctx) {
        refuseUnlessFirst();
        pages.show(ctx, page(ProfileForm.empty(Set.of())));
    }

    private void firstStart(Context ctx) {
        refuseUnlessFirst();
        ProfileForm form = ProfileForm.ofFirstPerson(ctx, messages);
        Optional<String> added = form.isRefused()
                ? Optional.empty()
                : accounts.addFirst(
                        form.code(),
                        form.profile(),
                        form.password(),
                        site.clock().instant());
        if (added.isPresent()) {
            enter(ctx, signIns.begin(added.get(), site.clock().instant()));
        } else {
            pages.refuse(ctx, page(form.isRefused() ? form : form.refused("code", messages.text("first-start.wrong"))));
        }
    }

    private void refuseUnlessFirst() {
        if (!accounts.hasNobody()) {
            throw new NotThere("somebody has an account already");
        }
    }

    private String refusal(Admission admission, String key) {
        Texts texts = new Texts(site.settings().siteZone(), messages);
        return admission
                .lockedUntil()
                .map(until -> messages.text(
                        "sign-in.locked", texts.at(until, site.clock().instant())))
                .orElseGet(() -> messages.text(key));
    }

    private SignInPage page(String next, String name, String badge, String refusal) {
        return new SignInPage(
                messages.text("sign-in.title"),
                site.settings().demo() ? demoRoles() : List.of(),
                accounts.hasNobody(),
                Field.of("name", messages.text("sign-in.name"), name),
                Field.of("password", messages.text("sign-in.password"), ""),
                Field.of("badge", messages.text("sign-in.badge"), badge),
                Field.of("pin", messages.text("sign-in.pin"), ""),
                refusal,
                next);
    }

    private List<Choice> demoRoles() {
        return Arrays.stream(Role.signedIn())
                .map(role -> new Choice(
                        role.name(),
                        messages.text("demo." + role.name()),
                        messages.text("demo." + role.name() + ".does")))
                .toList();
    }

    private FirstStartPage page(ProfileForm form) {
        return new FirstStartPage(
                messages.text("first-start.title"),
                Field.of("code", messages.text("first-start.code"), form.code())
                        .hinting(messages.text("first-start.code.hint"))
                        .refused(form.error("code")),
                Field.of("display", messages.text("people.display"), form.display())
                        .hinting(messages.text("people.display.hint"))
                        .refused(form.error("display")),
                Field.of("signInName", messages.text("people.sign-in-name"), form.signInName())
                        .refused(form.error("signInName")),
                Field.of("password", messages.text("people.password"), "")
                        .hinting(messages.text("people.password.hint", PasswordRule.LEAST_LENGTH))
                        .refused(form.error("password")));
    }

    private static String entered(Context ctx, String name) {
        String value = ctx.formParam(name);
        return value == null ? "" : value;
    }
}
