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
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The engineer's list of labels whose level or peak differs from the part type's. */
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
        List<String> label = new ArrayList<>();
        List<String> known = new ArrayList<>();
        List<String> outcome = new ArrayList<>();
        if (!one.labelLevel().isEmpty()) {
            label.add(level(one.labelLevel()));
            known.add(level(one.knownLevel()));
            outcome.add(outcomeOfLevel(one));
        }
        if (!one.labelPeak().isEmpty()) {
            label.add(peak(one.labelPeak()));
            known.add(peak(one.knownPeak()));
            outcome.add(outcomeOfPeak(one));
        }
        return new LevelPage.Line(
                one.tag(),
                one.labelNumber(),
                one.partNumber(),
                String.join("; ", label),
                String.join("; ", known),
                String.join(" ", outcome),
                words.texts().machine(one.recordedAt()),
                words.texts().at(one.recordedAt(), now),
                one.settledAt() == null);
    }

    private String outcomeOfLevel(ScanStore.Difference one) {
        if (one.raised()) {
            return words.text("stock.levels.raised", one.labelLevel());
        }
        return one.knownLevel().isEmpty()
                ? words.text("stock.levels.none")
                : words.text("stock.levels.kept", one.knownLevel());
    }

    /** Of several peaks on a label the lowest, which stands first, counts. */
    private String outcomeOfPeak(ScanStore.Difference one) {
        if (one.lowered()) {
            return words.text("stock.levels.lowered", one.labelPeak().split(",")[0]);
        }
        return one.knownPeak().isEmpty()
                ? words.text("stock.levels.by-body")
                : words.text("stock.levels.peak-kept", one.knownPeak());
    }

    private String level(String code) {
        if (code.isEmpty()) {
            return words.text("stock.levels.level.unknown");
        }
        return code.equals(Reading.NOT_SENSITIVE)
                ? words.text("stock.level.none")
                : words.text("stock.levels.level", code);
    }

    private String peak(String degrees) {
        return degrees.isEmpty() ? words.text("stock.levels.peak.unknown") : words.text("stock.levels.peak", degrees);
    }

    private void settle(Context ctx) {
        String tag = Entered.of(ctx, words.texts()).text(FieldNames.TAG);
        store.settle(tag, Visit.of(ctx).signedIn().id(), clock.instant());
        ctx.redirect("/stock/levels", HttpStatus.SEE_OTHER);
    }
}
