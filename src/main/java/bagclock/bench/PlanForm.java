package bagclock.bench;

import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A heat as it is typed. What was not chosen stays unknown, so that the answer is the strict one.
 *
 * @param code a tag or a board's serial number, without outer blanks
 */
record PlanForm(Entered entered, String code, Optional<HeatPlan> plan) {
    static final String CODE = "code";
    static final String PURPOSE = "purpose";
    static final String PEAK = "peak";
    static final String MINUTES = "minutes";
    static final String LOCAL = "local";
    static final String START = "start";
    static final List<String> FIELDS = List.of(CODE, PURPOSE, PEAK, MINUTES, LOCAL, START);

    private static final String USUAL_MINUTES = "10";
    private static final double MOST_MINUTES = 1440;
    private static final double MOST_PEAK_C = 400;
    private static final Duration FURTHEST = Duration.ofDays(366);

    /** A field has no seconds: the minute that runs counts as now. */
    private static final Duration RUNNING_MINUTE = Duration.ofMinutes(1);

    /** Reads the question from the address. */
    static PlanForm asked(Context ctx, Texts texts, Instant now) {
        Map<String, String> values = new HashMap<>();
        ctx.queryParamMap().forEach((name, all) -> values.put(name, String.join(",", all)));
        values.putIfAbsent(MINUTES, USUAL_MINUTES);
        Entered entered = Entered.of(values, texts);
        return of(entered, texts, start(entered, texts, now));
    }

    /** Reads the plan that a heat was recorded for; when it began is told apart. */
    static PlanForm sent(Context ctx, Texts texts, Instant now) {
        return of(Entered.of(ctx, texts), texts, now);
    }

    /** Reads the plan that is released, with the start that was asked about. */
    static PlanForm released(Context ctx, Texts texts, Instant now) {
        Entered entered = Entered.of(ctx, texts);
        return of(entered, texts, start(entered, texts, now));
    }

    private static PlanForm of(Entered entered, Texts texts, Instant start) {
        Optional<Purpose> purpose = Purpose.parse(entered.text(PURPOSE));
        if (purpose.isEmpty() && !entered.text(PURPOSE).isEmpty()) {
            entered.refuse(PURPOSE, texts.messages().text("entered.choose"));
        }
        Optional<Celsius> peak = entered.numberOrNone(PEAK, 20, MOST_PEAK_C).map(Celsius::new);
        Optional<Duration> length = entered.number(MINUTES, 0, MOST_MINUTES).map(PlanForm::length);
        boolean local = entered.isChecked(LOCAL);
        Optional<HeatPlan> plan = entered.isRefused()
                ? Optional.empty()
                : length.map(time -> new HeatPlan(start, time, peak, purpose, Optional.of(local)));
        return new PlanForm(entered, entered.text(CODE), plan);
    }

    /** Rounded up, so that a heat is never taken for shorter than it is. */
    private static Duration length(double minutes) {
        return Duration.ofMillis((long) Math.ceil(minutes * 60_000));
    }

    private static Instant start(Entered entered, Texts texts, Instant now) {
        if (entered.text(START).isEmpty()) {
            return now;
        }
        Optional<Instant> told = entered.time(START);
        if (told.filter(at -> at.isBefore(now.minus(RUNNING_MINUTE))).isPresent()) {
            entered.refuse(START, texts.messages().text("bench.start.past", texts.at(now)));
        } else if (told.filter(at -> at.isAfter(now.plus(FURTHEST))).isPresent()) {
            entered.refuse(START, texts.messages().text("bench.start.far"));
        }
        return told.filter(at -> at.isAfter(now)).orElse(now);
    }

    /** The address of the same question. */
    String address() {
        return addressFor(code);
    }

    /** The address of the same question about something else. */
    String addressFor(String other) {
        Map<String, String> values = new LinkedHashMap<>();
        FIELDS.forEach(name -> values.put(name, entered.text(name)));
        values.put(CODE, other);
        StringBuilder address = new StringBuilder(BenchRoutes.PATH);
        values.forEach((name, value) -> {
            if (!value.isEmpty()) {
                address.append(address.indexOf("?") < 0 ? '?' : '&')
                        .append(name)
                        .append('=')
                        .append(URLEncoder.encode(value, StandardCharsets.UTF_8));
            }
        });
        return address.toString();
    }
}
