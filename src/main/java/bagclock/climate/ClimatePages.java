package bagclock.climate;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Place.CabinetClass;
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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Puts zones and cabinets into words. */
final class ClimatePages {
    /** How far back the start of a spell is looked for. */
    private static final Duration SPELL = Duration.ofDays(2);

    private final ClimateStore store;
    private final CabinetAlarms alarms;
    private final Messages messages;
    private final Texts texts;

    ClimatePages(ClimateStore store, CabinetAlarms alarms, Messages messages, Texts texts) {
        this.store = store;
        this.alarms = alarms;
        this.messages = messages;
        this.texts = texts;
    }

    ClimatePage overview(String done, Instant now) {
        HouseRules rules = store.rules(now);
        List<ClimatePage.Line> zones = new ArrayList<>();
        List<ClimatePage.Line> cabinets = new ArrayList<>();
        List<String> notices = new ArrayList<>();
        for (KnownPlace place : store.places(now)) {
            Now is = now(place, rules, now);
            ClimatePage.Line line = new ClimatePage.Line(
                    place.code(), place.name(), last(place, is, now), limit(place), state(place, is, now));
            (place instanceof KnownPlace.FloorZone ? zones : cabinets).add(line);
            notice(place, is, now).ifPresent(notices::add);
        }
        String worstCase = rules.worstCase()
                .map(air -> messages.text("climate.site-worst", air(air)))
                .orElseGet(() -> messages.text("climate.site-worst.none"));
        List<ClimatePage.Changed> changed = alarms.changed(store.places(now), now);
        return new ClimatePage(messages.text("climate.title"), done, notices, zones, cabinets, changed, worstCase);
    }

    /**
     * A place at this moment.
     *
     * @param last its newest reading
     * @param holds whether that reading still counts
     * @param outsideSince since when it is above its limit; empty if it is not, or nothing is known
     */
    record Now(Optional<Reading> last, boolean holds, Optional<Instant> outsideSince) {}

    Now now(KnownPlace place, HouseRules rules, Instant now) {
        if (!place.logged()) {
            return new Now(Optional.empty(), false, Optional.empty());
        }
        Duration holdsFor = rules.rules().maxReadingGap();
        Optional<Reading> last = store.latest(place.zone(), now);
        boolean holds = last.filter(reading -> !reading.at().plus(holdsFor).isBefore(now))
                .isPresent();
        boolean outside = holds && isOutside(place, last.orElseThrow());
        Optional<Instant> since = outside
                ? Spell.since(
                        store.between(place.zone(), now.minus(SPELL), now), r -> isOutside(place, r), holdsFor, now)
                : Optional.empty();
        return new Now(last, holds, since);
    }

    private static boolean isOutside(KnownPlace place, Reading reading) {
        if (place instanceof KnownPlace.DryCabinet cabinet) {
            return reading.air().humidity().isAbove(cabinet.limit().limit());
        }
        return place instanceof KnownPlace.FloorZone zone
                && zone.openBagsUpTo()
                        .filter(limit -> reading.air().isWarmerThan(limit)
                                || reading.air().isWetterThan(limit))
                        .isPresent();
    }

    /** Where no bag should be opened, and which cabinet is not dry; in a sentence. */
    Optional<String> notice(KnownPlace place, Now is, Instant now) {
        return is.outsideSince().map(since -> {
            String air = air(is.last().orElseThrow().air());
            String key = place instanceof KnownPlace.DryCabinet ? "climate.notice.cabinet" : "climate.notice.zone";
            return messages.text(key, place.name(), air, texts.at(since, now), limit(place, false));
        });
    }

    private String last(KnownPlace place, Now is, Instant now) {
        if (!place.logged()) {
            return messages.text("climate.not-logged");
        } else if (is.last().isEmpty()) {
            return messages.text("climate.never-read");
        }
        Reading reading = is.last().get();
        return messages.text(
                is.holds() ? "climate.last" : "climate.last.old", air(reading.air()), texts.at(reading.at(), now));
    }

    /** The last reading as the lead of the place's own page. */
    String lead(KnownPlace place, Now is, Instant now) {
        return last(place, is, now);
    }

    private String limit(KnownPlace place) {
        if (place instanceof KnownPlace.DryCabinet cabinet) {
            return className(cabinet.limit());
        }
        return ((KnownPlace.FloorZone) place)
                .worstCase()
                .map(this::air)
                .orElseGet(() -> messages.text("climate.as-site"));
    }

    private String limit(KnownPlace place, boolean declared) {
        if (place instanceof KnownPlace.FloorZone zone && !declared) {
            return zone.openBagsUpTo().map(this::air).orElse("");
        }
        return limit(place);
    }

    private String state(KnownPlace place, Now is, Instant now) {
        boolean cabinet = place instanceof KnownPlace.DryCabinet;
        if (is.outsideSince().isPresent()) {
            return messages.text(
                    cabinet ? "climate.cabinet.outside" : "climate.bags.not",
                    texts.at(is.outsideSince().get(), now));
        } else if (cabinet) {
            return messages.text(is.holds() ? "climate.cabinet.inside" : "climate.cabinet.by-class");
        }
        String limit = limit(place, false);
        return limit.isEmpty() ? messages.text("climate.bags.no-limit") : messages.text("climate.bags.up-to", limit);
    }

    /** What was declared of a place. */
    List<ZonePage.Fact> facts(KnownPlace place, HouseRules rules) {
        List<ZonePage.Fact> facts = new ArrayList<>();
        facts.add(fact("climate.code", place.code()));
        if (place instanceof KnownPlace.DryCabinet cabinet) {
            facts.add(fact("climate.class", className(cabinet.limit())));
        } else {
            facts.add(fact("climate.worst", limit(place)));
            String open = limit(place, false);
            facts.add(fact("climate.open-limit", open.isEmpty() ? messages.text("climate.bags.no-limit") : open));
        }
        facts.add(fact("climate.holds", texts.span(rules.rules().maxReadingGap())));
        return facts;
    }

    private ZonePage.Fact fact(String key, String value) {
        return new ZonePage.Fact(messages.text(key), value);
    }

    private String className(CabinetClass one) {
        return messages.text("climate.class.words", texts.humidity(one.limit()));
    }

    String air(Air air) {
        return messages.text("climate.air", texts.temperature(air.temperature()), texts.humidity(air.humidity()));
    }

    /** The form of a zone or cabinet. */
    PlacePage form(Entered entered, String kind, String action, int basedOn, String title) {
        boolean fresh = basedOn == 0;
        List<bagclock.platform.Field> fields = new ArrayList<>();
        if (fresh) {
            fields.add(entered.field("code", messages.text("climate.code"), messages.text("climate.code.hint")));
        }
        fields.add(entered.field("name", messages.text("climate.name")));
        List<bagclock.platform.Field> limits = kind.equals(PlaceForm.ZONE)
                ? List.of(
                        entered.field("worstC", messages.text("climate.worst.c"), messages.text("climate.worst.hint")),
                        entered.field("worstPercent", messages.text("climate.worst.percent")),
                        entered.field("openC", messages.text("climate.open.c"), messages.text("climate.open.hint")),
                        entered.field("openPercent", messages.text("climate.open.percent")))
                : List.of();
        return new PlacePage(
                title,
                messages.text("climate." + kind + ".lead"),
                action,
                kind,
                basedOn,
                fields,
                entered.field("logged", messages.text("climate.logged")),
                List.of(
                        new Choice(
                                PlaceForm.YES,
                                messages.text("climate.logged.yes"),
                                messages.text("climate.logged.yes.note")),
                        new Choice(
                                PlaceForm.NO,
                                messages.text("climate.logged.no"),
                                messages.text("climate.logged.no.note"))),
                limits,
                entered.field("class", messages.text("climate.class"), messages.text("climate.class.hint")),
                Arrays.stream(CabinetClass.values())
                        .map(one -> Choice.of(one.name(), className(one)))
                        .toList());
    }
}
