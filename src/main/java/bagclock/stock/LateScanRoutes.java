package bagclock.stock;

import bagclock.platform.Entered;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;

/** Scans that arrive late. */
final class LateScanRoutes {
    private static final String PASS = "pass";
    private static final double LONGEST_AGE_MS = 1e12;

    private final LateScans late;
    private final Words words;
    private final Clock clock;

    LateScanRoutes(LateScans late, Words words, Clock clock) {
        this.late = late;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.post("/stock/late", this::take, ActRoutes.WORKERS);
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
}
