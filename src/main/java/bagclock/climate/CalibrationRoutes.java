package bagclock.climate;

import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.Calibration;
import bagclock.register.Change;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The days by which loggers and ovens must be calibrated again. */
final class CalibrationRoutes {
    private static final String DUE = "due";

    private final LogStore store;
    private final Desk desk;
    private final Pages pages;
    private final Messages messages;
    private final Clock clock;

    CalibrationRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.store = new LogStore(database);
        this.desk = desk;
        this.pages = pages;
        this.messages = texts.messages();
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/climate/calibrations", ctx -> pages.show(ctx, page("", "")), Role.signedIn());
        routes.post("/climate/calibrations", this::keep, Role.ENGINEER);
    }

    private CalibrationsPage page(String refused, String entered) {
        Instant now = clock.instant();
        List<CalibrationsPage.Line> lines = store.calibrated(now).stream()
                .map(known -> line(known, refused, entered, now))
                .toList();
        return new CalibrationsPage(messages.text("climate.calibration"), lines);
    }

    private CalibrationsPage.Line line(LogStore.Calibrated known, String refused, String entered, Instant now) {
        Calibration calibration = known.calibration();
        boolean isRefused = refused.equals(calibration.kind() + calibration.name());
        String day = isRefused
                ? entered
                : calibration.dueOn().map(LocalDate::toString).orElse("");
        Field due = new Field(
                DUE,
                messages.text("climate.calibration.of", known.words()),
                "",
                day,
                isRefused ? messages.text("entered.day") : "");
        String past = calibration.isPastDueAt(now) ? messages.text("climate.calibration.past") : "";
        return new CalibrationsPage.Line(calibration.kind().name(), calibration.name(), known.words(), due, past);
    }

    private void keep(Context ctx) {
        String kind = Optional.ofNullable(ctx.formParam("kind")).orElse("");
        String name = Optional.ofNullable(ctx.formParam("name")).orElse("");
        String text = Optional.ofNullable(ctx.formParam(DUE)).orElse("").strip();
        Instant now = clock.instant();
        Optional<Calibration> before = store.calibrated(now).stream()
                .map(LogStore.Calibrated::calibration)
                .filter(one -> one.kind().name().equals(kind) && one.name().equals(name))
                .findFirst();
        try {
            Optional<LocalDate> due = text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
            before.ifPresent(one -> desk.keep(
                    new Calibration(one.kind(), one.name(), due),
                    new Change(now, now, Visit.of(ctx).signedIn().id(), 0)));
            ctx.redirect("/climate/calibrations", HttpStatus.SEE_OTHER);
        } catch (DateTimeException notADay) {
            pages.refuse(ctx, page(kind + name, text));
        }
    }
}
