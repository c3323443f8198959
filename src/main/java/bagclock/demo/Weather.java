package bagclock.demo;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.readings.ZoneReading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The air of the shop: a pure function of place and time, with one gap and one humid spell. */
final class Weather {
    private static final long STEP_MS = Duration.ofMinutes(15).toMillis();
    private static final double DAY_MS = Duration.ofDays(1).toMillis();
    private static final double WEEK_MS = 7 * DAY_MS;

    /** The ventilation of the sonar bench stood still: humid for ten hours. */
    private static final Spell HUMID = Spell.ago("P12DT4H", "P11DT18H");

    /** The logger in the stores had an empty battery. */
    private static final Spell GAP = Spell.ago("P4DT11H", "P4DT3H");

    /** Fog comes in at the open dock gate. */
    private static final Spell FOG = Spell.ago("PT3H", "PT0S");

    /** The cabinet's door stood open. */
    private static final Spell DOOR = Spell.ago("P16DT2H", "P16DT1H30M");

    /** Mean air and how far the day moves it. */
    private record Climate(double meanC, double swingC, double meanPercent, double swingPercent) {}

    /** A time before the end of the story, both ends included. */
    private record Spell(Duration startAgo, Duration endAgo) {
        static Spell ago(String start, String end) {
            return new Spell(Duration.parse(start), Duration.parse(end));
        }

        boolean holds(Instant now, Instant at) {
            return !at.isBefore(now.minus(startAgo)) && !at.isAfter(now.minus(endAgo));
        }
    }

    private static final Map<String, Climate> CLIMATES = Map.of(
            Places.DOCK, new Climate(20.5, 2.6, 48, 5),
            Places.STORES, new Climate(21.0, 0.8, 42, 4),
            Places.BENCH, new Climate(22.8, 1.4, 45, 6),
            Places.LINE, new Climate(23.4, 1.1, 43, 4),
            Places.DRY_5, new Climate(22.6, 0.7, 2.6, 0.7));

    private Weather() {}

    /** Every reading after one moment up to and including another, at quarters of an hour before the story's end. */
    static List<ZoneReading> readings(Instant now, Instant fromExclusive, Instant to) {
        List<ZoneReading> readings = new ArrayList<>();
        long steps = Duration.between(fromExclusive, now).toMillis() / STEP_MS;
        for (long step = steps; step >= 0; step--) {
            Instant at = now.minusMillis(step * STEP_MS);
            if (at.isAfter(fromExclusive) && !at.isAfter(to)) {
                CLIMATES.keySet().stream()
                        .sorted()
                        .filter(zone -> !(zone.equals(Places.STORES) && GAP.holds(now, at)))
                        .forEach(zone -> readings.add(new ZoneReading(
                                new Zone(zone), new Reading(at, air(zone, now, at)), readings.size() + 1L)));
            }
        }
        return readings;
    }

    private static Air air(String zone, Instant now, Instant at) {
        if (zone.equals(Places.BENCH) && HUMID.holds(now, at)) {
            return Air.of(29.4, 73.5);
        } else if (zone.equals(Places.DOCK) && FOG.holds(now, at)) {
            return Air.of(22.1, 58.5);
        } else if (zone.equals(Places.DRY_5) && DOOR.holds(now, at)) {
            return Air.of(22.9, 14);
        }
        return usual(zone, at);
    }

    /** Warmest in the afternoon, wettest in the early morning, with a slower wave over the week. */
    private static Air usual(String zone, Instant at) {
        Climate climate = CLIMATES.getOrDefault(zone, new Climate(22, 1, 45, 5));
        double day = 2 * Math.PI * (at.toEpochMilli() % DAY_MS) / DAY_MS;
        double week = 2 * Math.PI * (at.toEpochMilli() % WEEK_MS) / WEEK_MS;
        double warmth = -Math.cos(day - 0.5);
        double celsius = climate.meanC + climate.swingC * (0.8 * warmth + 0.2 * Math.sin(week));
        double percent = climate.meanPercent - climate.swingPercent * (0.7 * warmth + 0.3 * Math.cos(week));
        return Air.of(tenth(celsius), tenth(percent));
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
