package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Puts one place with its readings into words and curves. */
final class ZonePages {
    private static final int ROWS = 24;
    private static final List<Integer> DAYS = List.of(1, 3, 7);

    private final ClimateStore store;
    private final ClimatePages words;
    private final Messages messages;
    private final Texts texts;

    ZonePages(ClimateStore store, ClimatePages words, Messages messages, Texts texts) {
        this.store = store;
        this.words = words;
        this.messages = messages;
        this.texts = texts;
    }

    /** How far back is asked for: 1, 3 or 7 days; 3 for anything else. */
    static int days(String text) {
        return DAYS.stream()
                .filter(days -> days.toString().equals(text))
                .findFirst()
                .orElse(3);
    }

    ZonePage page(KnownPlace place, Entered entered, String done, View view) {
        Instant now = view.now();
        HouseRules rules = store.rules(now);
        ClimatePages.Now is = words.now(place, rules, now);
        Instant from = now.minus(Duration.ofDays(view.days()));
        List<Reading> drawn = place.logged() ? store.between(place.zone(), from, now) : List.of();
        List<Reading> listed = newest(place, view.before());
        return new ZonePage(
                place.name(),
                place.code(),
                place instanceof KnownPlace.DryCabinet ? PlaceForm.CABINET : PlaceForm.ZONE,
                done,
                words.lead(place, is, now),
                words.notice(place, is, now).orElse(""),
                place.logged(),
                words.facts(place, rules),
                drawn.isEmpty()
                        ? List.of()
                        : curves(place, drawn, new Plot(from, now, rules.rules().maxReadingGap(), texts.zone())),
                DAYS.stream().map(this::choice).toList(),
                Integer.toString(view.days()),
                listed.stream().limit(ROWS).map(this::row).toList(),
                listed.size() > ROWS ? older(place, view, listed.get(ROWS - 1)) : "",
                new ZonePage.ReadingFields(
                        entered.field("at", messages.text("climate.reading.at")),
                        entered.field("temperature", messages.text("climate.reading.temperature")),
                        entered.field("humidity", messages.text("climate.reading.humidity"))));
    }

    /**
     * What part of the readings is looked at.
     *
     * @param before only readings before this moment are listed
     */
    record View(int days, Instant before, Instant now) {}

    private Choice choice(int days) {
        return Choice.of(Integer.toString(days), texts.span(Duration.ofDays(days)));
    }

    private List<Reading> newest(KnownPlace place, Instant before) {
        Instant from = before.minus(Duration.ofDays(7));
        List<Reading> readings =
                new ArrayList<>(place.logged() ? store.between(place.zone(), from, before) : List.of());
        java.util.Collections.reverse(readings);
        return readings.stream().limit(ROWS + 1L).toList();
    }

    private static String older(KnownPlace place, View view, Reading last) {
        return "/climate/" + place.code() + "?days=" + view.days() + "&before="
                + last.at().minusMillis(1).toEpochMilli() + "#readings";
    }

    private ZonePage.Row row(Reading reading) {
        return new ZonePage.Row(
                texts.machine(reading.at()),
                texts.at(reading.at()),
                texts.temperature(reading.air().temperature()),
                texts.humidity(reading.air().humidity()));
    }

    private List<Curve> curves(KnownPlace place, List<Reading> readings, Plot plot) {
        ToDoubleFunction<Reading> temperature =
                reading -> reading.air().temperature().degrees();
        ToDoubleFunction<Reading> humidity = reading -> reading.air().humidity().percent();
        OptionalDouble warm = OptionalDouble.empty();
        OptionalDouble wet = OptionalDouble.empty();
        if (place instanceof KnownPlace.DryCabinet cabinet) {
            wet = OptionalDouble.of(cabinet.limit().limit().percent());
        } else if (place instanceof KnownPlace.FloorZone floor
                && floor.openBagsUpTo().isPresent()) {
            warm = OptionalDouble.of(floor.openBagsUpTo().get().temperature().degrees());
            wet = OptionalDouble.of(floor.openBagsUpTo().get().humidity().percent());
        }
        return List.of(
                plot.draw(readings, humidity, wet, words("humidity", " %", readings, humidity)),
                plot.draw(readings, temperature, warm, words("temperature", " °C", readings, temperature)));
    }

    private Plot.Words words(String what, String unit, List<Reading> readings, ToDoubleFunction<Reading> value) {
        double least = readings.stream().mapToDouble(value).min().orElse(0);
        double most = readings.stream().mapToDouble(value).max().orElse(0);
        return new Plot.Words(
                what,
                messages.text("climate.curve." + what),
                messages.text(
                        "climate.curve.summary",
                        texts.number(least) + unit,
                        texts.number(most) + unit,
                        texts.at(readings.get(0).at()),
                        texts.at(readings.get(readings.size() - 1).at())),
                unit,
                messages.text("climate.curve.limit"));
    }
}
