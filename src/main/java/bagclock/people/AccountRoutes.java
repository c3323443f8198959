package bagclock.people;

import bagclock.platform.Field;
import bagclock.platform.Gate;
import bagclock.platform.Messages;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.Optional;

/** The own account, for whoever is signed in. */
public final class AccountRoutes {
    private final Accounts accounts;
    private final SignIns signIns;
    private final Pages pages;
    private final Messages messages;
    private final Clock clock;

    /** Routes over the given accounts. */
    public AccountRoutes(Accounts accounts, SignIns signIns, Pages pages, Messages messages, Clock clock) {
        this.accounts = accounts;
        this.signIns = signIns;
        this.pages = pages;
        this.messages = messages;
        this.clock = clock;
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        routes.get("/account", ctx -> pages.show(ctx, page("", "")), Role.signedIn());
        routes.post("/account", this::setPassword, Role.signedIn());
    }

    /** Every open session of the person ends but this one, which gets a new token. */
    private void setPassword(Context ctx) {
        Account account = accounts.byId(Visit.of(ctx).signedIn().id());
        String password = entered(ctx, "password");
        String fault = PasswordRule.fault(password, account.signInName(), messages);
        Optional<Admission> wrong = fault.isEmpty()
                ? signIns.faultOfPassword(account.id(), entered(ctx, "current"), clock.instant())
                : Optional.empty();
        if (!fault.isEmpty() || wrong.isPresent()) {
            pages.refuse(ctx, page(wrong.isPresent() ? messages.text("account.wrong") : "", fault));
            return;
        }
        accounts.setPassword(account.id(), password);
        Gate.giveToken(ctx, signIns.begin(account.id(), clock.instant()));
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    private AccountPage page(String currentError, String passwordError) {
        return new AccountPage(
                messages.text("account.title"),
                Field.of("current", messages.text("account.current"), "").refused(currentError),
                Field.of("password", messages.text("people.new-password"), "")
                        .hinting(messages.text("people.password.hint", PasswordRule.LEAST_LENGTH))
                        .refused(passwordError));
    }

    private static String entered(Context ctx, String name) {
        String value = ctx.formParam(name);
        return value == null ? "" : value;
    }
}
