package bagclock.stock;

import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Texts;
import bagclock.scan.Decoder;
import bagclock.scan.Reading;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Scans that arrive late, and the page that shows what a scanner sends. */
final class LateScanRoutes {
    private static final String PASS = "pass";
    private static final double LONGEST_AGE_MS = 1e12;

    private final LateScans late;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    LateScanRoutes(LateScans late, Pages pages, Words words, Clock clock) {
        this.late = late;
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.post("/stock/late", this::take, ActRoutes.WORKERS);
        routes.get("/stock/scanner", this::check, ActRoutes.WORKERS);
    }

    private void take(Context ctx) {
        Texts texts = words.texts();
        Entered entered = Entered.of(ctx, texts);
        long age = entered.numberOrNone("age", 0, LONGEST_AGE_MS)
                .map(Double::longValue)
                .orElse(Long.MAX_VALUE);
        ctx.json(late.take(
                new LateScans.Late(
                        entered.text(FieldNames.KEY),
                        entered.text(PASS),
                        entered.text(FieldNames.CODE),
                        entered.text(FieldNames.HELD),
                        Duration.ofMillis(age)),
                clock.instant()));
    }

    private void check(Context ctx) {
        String code = Optional.ofNullable(ctx.queryParam(FieldNames.CODE)).orElse("");
        String keys = Optional.ofNullable(ctx.queryParam("keys")).orElse("");
        Reading reading = Decoder.read(code);
        List<String> flags = code.isEmpty()
                ? List.of()
                : reading.flags().stream()
                        .map(flag -> words.text("stock.flag." + flag.name()))
                        .toList();
        pages.show(ctx, new ScannerPage(words.text("stock.scanner"), Decoder.visible(code), keys.strip(), flags));
    }
}
