package bagclock.people;

import bagclock.platform.Messages;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The accounts' pages, for administrators. */
public final class PeopleRoutes {
    private static final Set<String> ACTS = Set.of("added", "changed", "password", "badge", "retired", "back");

    private final Accounts accounts;
    private final Pages pages;
    private final Messages messages;
    private final Clock clock;
    private final PersonPages personPages;

    /** Routes over the given accounts. */
    public PeopleRoutes(Accounts accounts, Pages pages, Messages messages, Texts texts, Clock clock) {
        this.accounts = accounts;
        this.pages = pages;
        this.messages = messages;
        this.clock = clock;
        this.personPages = new PersonPages(messages, texts);
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        routes.get("/people", this::list, Role.ADMINISTRATOR);
        routes.get("/people/new", this::showNew, Role.ADMINISTRATOR);
        routes.post("/people", this::add, Role.ADMINISTRATOR);
        routes.get("/people/{id}", this::show, Role.ADMINISTRATOR);
        routes.post("/people/{id}", this::change, Role.ADMINISTRATOR);
        routes.post("/people/{id}/password", this::setPassword, Role.ADMINISTRATOR);
        routes.post("/people/{id}/badge", this::setBadge, Role.ADMINISTRATOR);
        routes.post("/people/{id}/retire", this::retire, Role.ADMINISTRATOR);
        routes.post("/people/{id}/return", this::takeBack, Role.ADMINISTRATOR);
    }

    private void list(Context ctx) {
        pages.show(ctx, personPages.list(accounts.all()));
    }

    private void showNew(Context ctx) {
        pages.show(ctx, personPages.empty(ProfileForm.empty(Set.of())));
    }

    private void add(Context ctx) {
        ProfileForm form = ProfileForm.ofNewPerson(ctx, messages);
        if (form.isRefused()) {
            pages.refuse(ctx, personPages.empty(form));
            return;
        }
        Optional<String> added = accounts.add(form.profile(), form.password(), clock.instant());
        if (added.isPresent()) {
            done(ctx, added.get(), "added");
        } else {
            String taken = messages.text("people.sign-in-name.taken");
            pages.refuse(ctx, personPages.empty(form.refused("signInName", taken)));
        }
    }

    private void show(Context ctx) {
        String act = ctx.queryParam("done");
        String done = act != null && ACTS.contains(act) ? messages.text("people.done." + act) : "";
        pages.show(ctx, personPages.of(account(ctx), new PersonPages.Said(done, "", Map.of())));
    }

    private void change(Context ctx) {
        Account account = account(ctx);
        ProfileForm form = ProfileForm.ofChange(ctx, messages);
        if (!form.isRefused() && accounts.change(account.id(), form.display(), form.roles())) {
            done(ctx, account.id(), "changed");
            return;
        }
        ProfileForm refused =
                form.isRefused() ? form : form.refused("roles", messages.text("people.last-administrator"));
        pages.refuse(
                ctx,
                personPages.of(
                        account.entered(form.display(), form.roles()), new PersonPages.Said("", "", refused.errors())));
    }

    private void setPassword(Context ctx) {
        Account account = account(ctx);
        String password = Optional.ofNullable(ctx.formParam("password")).orElse("");
        String fault = PasswordRule.fault(password, account.signInName(), messages);
        if (fault.isEmpty()) {
            accounts.setPassword(account.id(), password);
            done(ctx, account.id(), "password");
        } else {
            pages.refuse(ctx, personPages.of(account, new PersonPages.Said("", "", Map.of("password", fault))));
        }
    }

    private void setBadge(Context ctx) {
        Account account = account(ctx);
        BadgeForm form = BadgeForm.read(ctx, messages);
        if (!form.isRefused() && accounts.setBadge(account.id(), form.code(), form.pin())) {
            done(ctx, account.id(), "badge");
            return;
        }
        BadgeForm refused = form.isRefused() ? form : form.taken(messages.text("people.badge.taken"));
        pages.refuse(
                ctx,
                personPages.of(
                        account.withBadge(form.code()),
                        new PersonPages.Said("", "", Map.of("badge", refused.codeError(), "pin", refused.pinError()))));
    }

    private void retire(Context ctx) {
        Account account = account(ctx);
        if (accounts.retire(account.id(), clock.instant())) {
            done(ctx, account.id(), "retired");
        } else {
            String refusal = messages.text("people.last-administrator");
            pages.refuse(ctx, personPages.of(account, new PersonPages.Said("", refusal, Map.of())));
        }
    }

    private void takeBack(Context ctx) {
        Account account = account(ctx);
        accounts.takeBack(account.id());
        done(ctx, account.id(), "back");
    }

    private Account account(Context ctx) {
        return accounts.byId(ctx.pathParam("id"));
    }

    private static void done(Context ctx, String id, String act) {
        ctx.redirect("/people/" + id + "?done=" + act, HttpStatus.SEE_OTHER);
    }
}
