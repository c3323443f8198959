package bagclock.readings;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The lowest and highest values read in one hour (UTC). */
public record HourBand(
        Instant firstAt, Instant lastAt, double lowestC, double highestC, double driestPercent, double wettestPercent) {
    private static final long HOUR_MS = Duration.ofHours(1).toMillis();

    /** The hour since 1970. */
    long hour() {
        return Math.floorDiv(firstAt.toEpochMilli(), HOUR_MS);
    }

    /** A band of one reading. */
    public static HourBand of(Reading reading) {
        Air air = reading.air();
        double celsius = air.temperature().degrees();
        double percent = air.humidity().percent();
        return new HourBand(reading.at(), reading.at(), celsius, celsius, percent, percent);
    }

    /** Both together. */
    public HourBand and(HourBand other) {
        return new HourBand(
                firstAt.isBefore(other.firstAt) ? firstAt : other.firstAt,
                lastAt.isAfter(other.lastAt) ? lastAt : other.lastAt,
                Math.min(lowestC, other.lowestC),
                Math.max(highestC, other.highestC),
                Math.min(driestPercent, other.driestPercent),
                Math.max(wettestPercent, other.wettestPercent));
    }

    /** One band for each hour with readings in a span. */
    static Collection<HourBand> of(List<Reading> readings, Instant from, Instant to) {
        SortedMap<Long, HourBand> bands = new TreeMap<>();
        for (Reading reading : readings) {
            if (!reading.at().isBefore(from) && reading.at().isBefore(to)) {
                HourBand band = of(reading);
                bands.merge(band.hour(), band, HourBand::and);
            }
        }
        return bands.values();
    }
}
