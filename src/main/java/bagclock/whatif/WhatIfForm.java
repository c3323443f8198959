package bagclock.whatif;

import bagclock.core.exposure.Air;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is supposed, as it is typed; the usual suppositions where nothing was.
 *
 * @param air empty if it was refused
 * @param cabinet empty if there is none, or it was refused
 * @param until when it comes out of the cabinet; empty if it was refused
 * @param bakeAt when the later bake begins; empty if it was refused
 */
record WhatIfForm(
        Entered entered,
        Optional<Air> air,
        Optional<KnownPlace.DryCabinet> cabinet,
        Optional<Instant> until,
        Optional<Instant> bakeAt) {
    static final String TEMPERATURE = "temperature";
    static final String HUMIDITY = "humidity";
    static final String CABINET = "cabinet";
    static final String UNTIL = "until";
    static final String BAKE_AT = "bakeAt";

    private static final LocalTime MORNING = LocalTime.of(8, 0);
    private static final LocalTime EVENING = LocalTime.of(18, 0);
    private static final Duration FURTHEST = Duration.ofDays(90);
    private static final double LEAST_C = -40;
    private static final double MOST_C = 60;

    static WhatIfForm of(Context ctx, Texts texts, List<KnownPlace.DryCabinet> cabinets, Instant now) {
        Map<String, String> values = new HashMap<>();
        ctx.queryParamMap().forEach((name, all) -> values.put(name, String.join(",", all)));
        values.putIfAbsent(TEMPERATURE, "22");
        values.putIfAbsent(HUMIDITY, "45");
        values.putIfAbsent(UNTIL, texts.field(next(MORNING, texts, now)));
        values.putIfAbsent(BAKE_AT, texts.field(next(EVENING, texts, now)));
        cabinets.stream().findFirst().ifPresent(first -> values.putIfAbsent(CABINET, first.code()));
        Entered entered = Entered.of(values, texts);
        Optional<Air> air = entered.number(TEMPERATURE, LEAST_C, MOST_C)
                .flatMap(celsius -> entered.number(HUMIDITY, 0, 100).map(percent -> Air.of(celsius, percent)));
        return new WhatIfForm(
                entered,
                air,
                cabinet(entered, texts, cabinets),
                future(entered, UNTIL, texts, now),
                future(entered, BAKE_AT, texts, now));
    }

    private static Optional<KnownPlace.DryCabinet> cabinet(
            Entered entered, Texts texts, List<KnownPlace.DryCabinet> cabinets) {
        String code = entered.text(CABINET);
        Optional<KnownPlace.DryCabinet> found =
                cabinets.stream().filter(one -> one.code().equals(code)).findFirst();
        if (found.isEmpty() && !cabinets.isEmpty()) {
            entered.refuse(CABINET, texts.messages().text("entered.choose"));
        }
        return found;
    }

    private static Optional<Instant> future(Entered entered, String name, Texts texts, Instant now) {
        Optional<Instant> at = entered.time(name);
        if (at.filter(moment -> moment.isBefore(now) || moment.isAfter(now.plus(FURTHEST)))
                .isPresent()) {
            entered.refuse(name, texts.messages().text("whatif.when", texts.at(now)));
            return Optional.empty();
        }
        return at;
    }

    /** The next time that clocks show this. */
    private static Instant next(LocalTime time, Texts texts, Instant now) {
        ZonedDateTime today = now.atZone(texts.zone());
        ZonedDateTime at = today.with(time);
        return (at.isAfter(today) ? at : at.plusDays(1)).toInstant();
    }
}
