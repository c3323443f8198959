package bagclock.climate;

import bagclock.desk.Desk;
import bagclock.platform.Choice;
import bagclock.platform.Database;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.readings.AnswersForm;
import bagclock.readings.FileEvent;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerFiles;
import bagclock.readings.LoggerProfile;
import bagclock.readings.Source;
import bagclock.register.KnownPlace;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Files of loggers: upload, what must be said, preview, import, taking back. */
final class FileRoutes {
    private static final int LISTED = 30;
    private static final int LONGEST_NAME = 80;

    private final LogStore store;
    private final ClimateStore climate;
    private final Imports imports;
    private final Pages pages;
    private final Messages messages;
    private final Texts texts;
    private final Clock clock;
    private final FilePages words;

    FileRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.store = new LogStore(database);
        this.climate = new ClimateStore(database);
        this.imports = new Imports(store, desk, texts, clock);
        this.pages = pages;
        this.messages = texts.messages();
        this.texts = texts;
        this.clock = clock;
        this.words = new FilePages(messages, texts, new Names(database));
    }

    void register(RoutesConfig routes) {
        routes.get("/climate/files", ctx -> pages.show(ctx, list(Entered.of(Map.of(), texts))), Role.signedIn());
        routes.post("/climate/files", this::upload, Role.signedIn());
        routes.get("/climate/files/{id}", this::show, Role.signedIn());
        routes.post("/climate/files/{id}/look", this::look, Role.signedIn());
        routes.post("/climate/files/{id}/import", this::begin, Role.signedIn());
        routes.post("/climate/files/{id}/take-back", this::takeBack, Role.signedIn());
    }

    private FilesPage list(Entered entered) {
        List<Choice> places = climate.places(clock.instant()).stream()
                .filter(KnownPlace::logged)
                .map(place -> new Choice(place.code(), place.name(), place.code()))
                .toList();
        return words.list(
                entered,
                places,
                store.loggers().stream().map(LoggerProfile::name).toList(),
                store.newest(LISTED).stream().map(this::kept).toList());
    }

    private FilePages.Kept kept(LoggerFile file) {
        String place = climate.place(file.placeCode(), clock.instant()).fact().name();
        return new FilePages.Kept(file, place, store.events(file.id()), store.progress(file.id()));
    }

    private void upload(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        String logger = entered.required("logger");
        String place = entered.required("place");
        UploadedFile file = ctx.uploadedFile("file");
        if (logger.length() > LONGEST_NAME) {
            entered.refuse("logger", messages.text("entered.long", LONGEST_NAME));
        }
        if (file == null || file.size() == 0) {
            entered.refuse("file", messages.text("climate.file.choose"));
        }
        Optional<KnownPlace> known = climate.places(clock.instant()).stream()
                .filter(one -> one.logged() && one.code().equals(place))
                .findFirst();
        if (!place.isEmpty() && known.isEmpty()) {
            entered.refuse("place", messages.text("entered.choose"));
        }
        if (entered.isRefused() || file == null) {
            pages.refuse(ctx, list(entered));
            return;
        }
        String name = file.filename().isBlank() ? logger : file.filename();
        Source source = new Source(who(ctx), clock.instant());
        LoggerFile kept = store.add(
                new LoggerFiles.Upload(logger, place, name.substring(0, Math.min(name.length(), 200)), file.content()),
                source);
        ctx.redirect("/climate/files/" + kept.id(), HttpStatus.SEE_OTHER);
    }

    private static String who(Context ctx) {
        return Visit.of(ctx).signedIn().id();
    }

    private LoggerFile file(Context ctx) {
        return store.file(ctx.pathParam("id"));
    }

    private LoggerProfile profile(LoggerFile file) {
        return store.logger(file.logger()).orElseGet(() -> LoggerProfile.fresh(file.logger(), file.placeCode()));
    }

    private void show(Context ctx) {
        FilePages.Kept kept = kept(file(ctx));
        boolean isNew = kept.events().isEmpty() || kept.is(FileEvent.What.TAKEN_BACK);
        if (isNew) {
            Map<String, String> values = new HashMap<>(AnswersForm.values(profile(kept.file())));
            values.putIfAbsent(AnswersForm.ZONE, "");
            pages.show(ctx, page(kept, Entered.of(values, texts)));
        } else {
            pages.show(ctx, words.imported(kept));
        }
    }

    private FilePage page(FilePages.Kept kept, Entered entered) {
        return preview(kept.file(), entered)
                .map(preview -> words.preview(kept, preview, entered))
                .orElseGet(() -> words.unreadable(kept));
    }

    private Optional<Preview> preview(LoggerFile file, Entered entered) {
        return Preview.of(
                store.source(file.id()), AnswersForm.answers(entered, messages), AnswersForm.belowZero(entered));
    }

    /** With what was said so far. */
    private void look(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        FilePage page = page(kept(file(ctx)), entered);
        if (entered.isRefused()) {
            pages.refuse(ctx, page);
        } else {
            pages.show(ctx, page);
        }
    }

    private void begin(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        FilePages.Kept kept = kept(file(ctx));
        Optional<Preview> preview = preview(kept.file(), entered);
        boolean ready =
                preview.filter(Preview::isReady).isPresent() && !entered.isRefused() && !kept.is(FileEvent.What.BEGUN);
        if (!ready) {
            pages.refuse(ctx, page(kept, entered));
            return;
        }
        Preview file = preview.orElseThrow();
        Instant now = clock.instant();
        LoggerProfile before =
                LoggerProfile.fresh(kept.file().logger(), kept.file().placeCode());
        store.keep(
                AnswersForm.profile(before, file.file().answers(), AnswersForm.belowZero(entered)),
                new Source(who(ctx), now));
        Imports.Job job = new Imports.Job(
                kept.file(), file.file(), file.channels().orElseThrow(), AnswersForm.belowZero(entered));
        imports.begin(job, file.report().orElseThrow(), who(ctx));
        ctx.redirect("/climate/files/" + kept.file().id(), HttpStatus.SEE_OTHER);
    }

    private void takeBack(Context ctx) {
        LoggerFile file = file(ctx);
        imports.takeBack(file, who(ctx));
        ctx.redirect("/climate/files/" + file.id(), HttpStatus.SEE_OTHER);
    }
}
