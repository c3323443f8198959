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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Files of loggers: upload, what must be said, preview, import, taking back. */
final class FileRoutes {
    private static final String PATH = "/climate/files";
    private static final int LISTED = 30;
    private static final int LONGEST_FILE_NAME = 200;
    private static final int LONGEST_NAME = 80;

    private final LogStore store;
    private final ClimateStore climate;
    private final Imports imports;
    private final Pages pages;
    private final Messages messages;
    private final Texts texts;
    private final Clock clock;
    private final Halves halves;
    private final FilePages words;
    private final FileLooks looks;

    FileRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.store = new LogStore(database);
        this.climate = new ClimateStore(database);
        this.imports = new Imports(store, desk, texts, clock);
        this.pages = pages;
        this.messages = texts.messages();
        this.texts = texts;
        this.clock = clock;
        this.halves = new Halves(store);
        HalfPages halfWords = new HalfPages(texts);
        this.words = new FilePages(texts, halfWords, new Names(database));
        this.looks = new FileLooks(store, climate, words, halfWords, clock);
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, ctx -> pages.show(ctx, list(Entered.of(Map.of(), texts))), Role.signedIn());
        routes.post(PATH, this::upload, Role.signedIn());
        routes.get(PATH + "/{id}", this::show, Role.signedIn());
        routes.post(PATH + "/{id}/look", this::look, Role.signedIn());
        routes.post(PATH + "/{id}/import", this::begin, Role.signedIn());
        routes.post(PATH + "/{id}/take-back", this::takeBack, Role.signedIn());
        routes.post(PATH + "/{id}/other-half", this::join, Role.signedIn());
        routes.post(PATH + "/{id}/part", this::part, Role.signedIn());
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
                store.newest(LISTED).stream().map(looks::kept).toList());
    }

    private void upload(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        String logger = entered.required("logger");
        String place = entered.required("place");
        List<UploadedFile> files = files(ctx);
        if (logger.length() > LONGEST_NAME) {
            entered.refuse("logger", messages.text("entered.long", LONGEST_NAME));
        }
        if (files.isEmpty()) {
            entered.refuse("file", messages.text("climate.file.choose"));
        }
        Optional<KnownPlace> known = climate.places(clock.instant()).stream()
                .filter(one -> one.logged() && one.code().equals(place))
                .findFirst();
        if (!place.isEmpty() && known.isEmpty()) {
            entered.refuse("place", messages.text("entered.choose"));
        }
        if (entered.isRefused()) {
            pages.refuse(ctx, list(entered));
            return;
        }
        Source source = new Source(who(ctx), clock.instant());
        List<LoggerFile> kept =
                files.stream().map(file -> add(logger, place, file, source)).toList();
        ctx.redirect(joined(kept, source), HttpStatus.SEE_OTHER);
    }

    /** Two files that are halves of one are looked at on one page; files that are not are listed. */
    private String joined(List<LoggerFile> kept, Source source) {
        boolean isPair = kept.size() == 2 && halves.joinBoth(kept.get(0), kept.get(1), source);
        if (kept.size() == 1) {
            halves.joinWithWaiting(kept.get(0), source);
        }
        boolean isOnePage = isPair || kept.size() == 1;
        return isOnePage ? PATH + "/" + kept.get(kept.size() - 1).id() : PATH;
    }

    private LoggerFile add(String logger, String place, UploadedFile file, Source source) {
        String name = file.filename().isBlank() ? logger : file.filename();
        return store.add(
                new LoggerFiles.Upload(
                        logger, place, name.substring(0, Math.min(name.length(), LONGEST_FILE_NAME)), file.content()),
                source);
    }

    private static List<UploadedFile> files(Context ctx) {
        return ctx.uploadedFiles("file").stream()
                .filter(file -> file.size() > 0)
                .toList();
    }

    private static String who(Context ctx) {
        return Visit.of(ctx).signedIn().id();
    }

    private LoggerFile file(Context ctx) {
        return store.file(ctx.pathParam("id"));
    }

    private void show(Context ctx) {
        FilePages.Kept kept = looks.kept(file(ctx));
        if (!kept.through().isEmpty()) {
            pages.show(ctx, words.through(kept));
        } else if (kept.isNew()) {
            Map<String, String> values = new HashMap<>(AnswersForm.values(looks.profile(kept.file())));
            values.putIfAbsent(AnswersForm.ZONE, "");
            pages.show(ctx, looks.of(kept, Entered.of(values, texts)).page());
        } else {
            pages.show(ctx, words.imported(kept));
        }
    }

    /** With what was said so far. */
    private void look(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        FilePage page = looks.of(looks.kept(file(ctx)), entered).page();
        if (entered.isRefused()) {
            pages.refuse(ctx, page);
        } else {
            pages.show(ctx, page);
        }
    }

    private void begin(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        FilePages.Kept kept = looks.kept(file(ctx));
        FileLooks.Look look = looks.of(kept, entered);
        if (look.log().isEmpty() || !kept.through().isEmpty() || kept.is(FileEvent.What.BEGUN)) {
            pages.refuse(ctx, look.page());
            return;
        }
        if (!look.isDecided()) {
            pages.refuse(ctx, look.page().refusing(Memory.FIELD, messages.text("entered.choose")));
            return;
        }
        store.keep(look.profile(), new Source(who(ctx), clock.instant()));
        imports.begin(new Imports.Job(kept.file(), look.log().orElseThrow()), who(ctx));
        ctx.redirect(PATH + "/" + kept.file().id(), HttpStatus.SEE_OTHER);
    }

    /** Of a half that counts through others, what they brought is taken back. */
    private void takeBack(Context ctx) {
        LoggerFile file = file(ctx);
        imports.takeBack(file, who(ctx));
        store.readWith(file.id()).forEach(other -> imports.takeBack(other, who(ctx)));
        ctx.redirect(PATH + "/" + file.id(), HttpStatus.SEE_OTHER);
    }

    /** The other half was chosen, or uploaded. */
    private void join(Context ctx) {
        Entered entered = Entered.of(ctx, texts);
        FilePages.Kept kept = looks.kept(file(ctx));
        LoggerFile file = kept.file();
        Source source = new Source(who(ctx), clock.instant());
        Optional<LoggerFile> chosen = halves.fitting(file).stream()
                .filter(one -> one.id().equals(entered.text(OtherHalf.OTHER)))
                .findFirst()
                .or(() -> files(ctx).stream()
                        .findFirst()
                        .map(uploaded -> add(file.logger(), file.placeCode(), uploaded, source)));
        if (kept.isNew() && kept.through().isEmpty()) {
            chosen.ifPresent(other -> store.join(file.id(), other.id(), source));
        }
        ctx.redirect(PATH + "/" + file.id(), HttpStatus.SEE_OTHER);
    }

    /** It was the wrong one; nothing of both counts. */
    private void part(Context ctx) {
        LoggerFile file = file(ctx);
        if (looks.kept(file).isNew()) {
            store.part(file.id(), new Source(who(ctx), clock.instant()));
        }
        ctx.redirect(PATH + "/" + file.id(), HttpStatus.SEE_OTHER);
    }
}
