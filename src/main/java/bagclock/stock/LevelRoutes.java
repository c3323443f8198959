package bagclock.stock;

import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Person;
import bagclock.platform.Role;
import bagclock.platform.Visit;
import bagclock.scan.Reading;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.Set;

/** The engineer's list of labels whose level differs from the part type's. */
final class LevelRoutes {
    private final ScanStore store;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    LevelRoutes(ScanStore store, Pages pages, Words words, Clock clock) {
        this.store = store;
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/stock/levels", this::show, ActRoutes.WORKERS);
        routes.post("/stock/levels", this::settle, Role.ENGINEER);
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        Person visitor = Visit.of(ctx).signedIn();
        pages.show(
                ctx,
                new LevelPage(
                        words.text("stock.levels"),
                        store.differences().stream().map(one -> line(one, now)).toList(),
                        visitor.isOneOf(Set.of(Role.ENGINEER))));
    }

    private LevelPage.Line line(ScanStore.Difference one, Instant now) {
        String outcome = one.raised()
                ? words.text("stock.levels.raised", one.labelLevel())
                : one.knownLevel().isEmpty()
                        ? words.text("stock.levels.none")
                        : words.text("stock.levels.kept", one.knownLevel());
        return new LevelPage.Line(
                one.tag(),
                one.labelNumber(),
                one.partNumber(),
                level(one.labelLevel()),
                level(one.knownLevel()),
                outcome,
                words.texts().machine(one.recordedAt()),
                words.texts().at(one.recordedAt(), now),
                one.settledAt() == null);
    }

    private String level(String code) {
        if (code.isEmpty()) {
            return words.text("stock.levels.unknown");
        }
        return code.equals(Reading.NOT_SENSITIVE) ? words.text("stock.level.none") : code;
    }

    private void settle(Context ctx) {
        String tag = Entered.of(ctx, words.texts()).text(FieldNames.TAG);
        store.settle(tag, Visit.of(ctx).signedIn().id(), clock.instant());
        ctx.redirect("/stock/levels", HttpStatus.SEE_OTHER);
    }
}
