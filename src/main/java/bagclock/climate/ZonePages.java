package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.readings.HourBand;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Puts one place with its readings into words and curves. */
final class ZonePages {
    private static final int ROWS = 24;
    private static final List<Integer> DAYS = List.of(1, 3, 7, 30, 90, 365);
    private static final int DAYS_OF_READINGS = 7;
    private static final int DAYS_BY_DAY = 31;

    private static final Plot.Range TEMPERATURE = new Plot.Range(HourBand::lowestC, HourBand::highestC);
    private static final Plot.Range HUMIDITY = new Plot.Range(HourBand::driestPercent, HourBand::wettestPercent);

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

    /** How far back is asked for: up to a year; 3 for anything else. */
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
        List<HourBand> drawn = place.logged() ? drawn(place, from, now, view.days()) : List.of();
        Duration holdsFor = rules.rules().maxReadingGap();
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
                drawn.isEmpty() ? List.of() : curves(place, drawn, new Plot(from, now, holdsFor, texts.zone())),
                periods(drawn, holdsFor, view.days()),
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

    /** Single readings of a few days, hours of more. */
    private List<HourBand> drawn(KnownPlace place, Instant from, Instant to, int days) {
        return days <= DAYS_OF_READINGS
                ? store.between(place.zone(), from, to).stream()
                        .map(HourBand::of)
                        .toList()
                : store.hours(place.zone(), from, to);
    }

    /** By the hour of a day, by the day of a month, else by the month; a gap begins another line. */
    private List<ZonePage.Period> periods(List<HourBand> drawn, Duration holdsFor, int days) {
        return Bands.merge(drawn, holdsFor, band -> {
                    ZonedDateTime at = band.firstAt().atZone(texts.zone());
                    return days == 1
                            ? at.truncatedTo(ChronoUnit.HOURS).toInstant().toString()
                            : days <= DAYS_BY_DAY
                                    ? at.toLocalDate().toString()
                                    : at.getYear() + "-" + at.getMonthValue();
                })
                .stream()
                .map(band -> new ZonePage.Period(
                        texts.at(band.firstAt()),
                        texts.at(band.lastAt()),
                        range(band.lowestC(), band.highestC(), "\u00a0°C"),
                        range(band.driestPercent(), band.wettestPercent(), "\u00a0%\u00a0RH")))
                .toList();
    }

    private String range(double least, double most, String unit) {
        String low = texts.number(tenth(least));
        return least == most ? low + unit : messages.text("climate.range", low, texts.number(tenth(most)) + unit);
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private List<Curve> curves(KnownPlace place, List<HourBand> drawn, Plot plot) {
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
                plot.draw(drawn, HUMIDITY, wet, words("humidity", " %", drawn, HUMIDITY)),
                plot.draw(drawn, TEMPERATURE, warm, words("temperature", " °C", drawn, TEMPERATURE)));
    }

    private Plot.Words words(String what, String unit, List<HourBand> drawn, Plot.Range range) {
        return new Plot.Words(
                what,
                messages.text("climate.curve." + what),
                messages.text(
                        "climate.curve.summary",
                        texts.number(tenth(range.least(drawn))) + unit,
                        texts.number(tenth(range.most(drawn))) + unit,
                        texts.at(drawn.get(0).firstAt()),
                        texts.at(drawn.get(drawn.size() - 1).lastAt())),
                unit,
                messages.text("climate.curve.limit"));
    }
}
