package bagclock.parts;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.desk.Desk;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.SentText;
import bagclock.platform.Visit;
import bagclock.register.Change;
import bagclock.register.PartType;
import bagclock.register.Version;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Part types from a file: a preview, then all good lines in one go or nothing. */
final class PartsImportRoutes {
    private static final String PATH = "/parts/import";

    private final Desk desk;
    private final PartsStore store;
    private final Pages pages;
    private final PartWords words;
    private final Clock clock;
    private final ImportPreview previews;

    PartsImportRoutes(Desk desk, PartsStore store, Pages pages, PartWords words, Clock clock) {
        this.desk = desk;
        this.store = store;
        this.pages = pages;
        this.words = words;
        this.clock = clock;
        this.previews = new ImportPreview(words);
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, ctx -> pages.show(ctx, previews.empty("", "")), Role.ENGINEER, Role.ADMINISTRATOR);
        routes.post(PATH, this::read, Role.ENGINEER, Role.ADMINISTRATOR);
    }

    private void read(Context ctx) {
        Instant now = clock.instant();
        Optional<String> text = SentText.of(ctx);
        if (text.isEmpty()) {
            pages.refuse(ctx, previews.empty("", words.texts().refusal(Refusal.of(Reason.FILE_UNREADABLE))));
            return;
        } else if (text.get().isBlank()) {
            pages.refuse(ctx, previews.empty("", words.text("parts.import.nothing")));
            return;
        }
        Map<String, Versioned<PartType>> known = store.known(now);
        PartsFile file = PartsFile.read(
                text.get(), number -> Optional.ofNullable(known.get(number)).map(Versioned::fact));
        String plan = ImportPreview.plan(file, known);
        boolean sure = "only".equals(ctx.formParam("good"));
        if (sure && plan.equals(ctx.formParam("plan")) && keep(ctx, file, known, now)) {
            ctx.redirect("/parts?done=imported", HttpStatus.SEE_OTHER);
            return;
        }
        String refusal = sure ? words.text("parts.import.changed-meanwhile") : "";
        PartsImportPage page = previews.page(text.get(), file, plan, refusal, desk.standard(now));
        if (sure || !file.bad().isEmpty()) {
            pages.refuse(ctx, page);
        } else {
            pages.show(ctx, page);
        }
    }

    /** Whether all good lines were kept; if not, none was. */
    private boolean keep(Context ctx, PartsFile file, Map<String, Versioned<PartType>> known, Instant now) {
        String who = Visit.of(ctx).signedIn().id();
        Map<PartType, Change> changes = new LinkedHashMap<>();
        file.good().stream()
                .filter(line -> line.effect() != PartsFile.Effect.SAME)
                .map(PartsFile.Line::type)
                .forEach(type -> changes.put(
                        type,
                        new Change(
                                now,
                                now,
                                who,
                                Optional.ofNullable(known.get(type.number()))
                                        .map(Versioned::version)
                                        .map(Version::number)
                                        .orElse(0))));
        try {
            desk.keepAll(changes, now);
            return true;
        } catch (ChangedMeanwhile lost) {
            return false;
        }
    }
}
