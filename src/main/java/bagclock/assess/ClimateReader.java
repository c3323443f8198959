package bagclock.assess;

import bagclock.assess.Fields.Range;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.DewPoint;
import bagclock.core.quantity.RelativeHumidity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the "climate" and the "rules" of a request. */
final class ClimateReader {
    private static final Range EXCURSION_MINUTES = new Range("0", "60", false);
    private static final BigDecimal MS_PER_MINUTE = BigDecimal.valueOf(60_000);

    private ClimateReader() {}

    static ClimateLog read(Optional<Fields> climate) {
        if (climate.isEmpty()) {
            return ClimateLog.NONE;
        }
        Fields fields = climate.get();
        Optional<Air> worst = fields.object("default").flatMap(air -> {
            Optional<Air> read = air(air);
            air.done();
            return read;
        });
        Map<Zone, ZoneLog> zones = zones(fields.list("readings"));
        fields.done();
        return new ClimateLog(zones, Map.of(), worst);
    }

    private static Map<Zone, ZoneLog> zones(List<Fields> readings) {
        Map<Zone, List<ZoneLog.Reading>> byZone = new LinkedHashMap<>();
        for (Fields reading : readings) {
            Instant at = reading.requiredInstant("at");
            Optional<Zone> zone = PartReader.required(reading, "zone", HistoryReader.zone(reading));
            PartReader.required(reading, "temperatureC", PartReader.celsius(reading, "temperatureC"));
            if (!reading.has("rhPercent") && !reading.has("dewPointC")) {
                reading.problem("rhPercent", "is required, or dewPointC in its place");
            }
            Optional<Air> air = air(reading);
            reading.done();
            if (zone.isPresent() && air.isPresent()) {
                add(byZone.computeIfAbsent(zone.get(), name -> new ArrayList<>()), at, air.get(), reading);
            }
        }
        Map<Zone, ZoneLog> logs = new LinkedHashMap<>();
        byZone.forEach((zone, list) -> logs.put(zone, ZoneLog.of(list)));
        return logs;
    }

    private static void add(List<ZoneLog.Reading> zone, Instant at, Air air, Fields reading) {
        boolean ascends = zone.isEmpty() || zone.get(zone.size() - 1).at().isBefore(at);
        if (ascends) {
            zone.add(new ZoneLog.Reading(at, air));
        } else {
            reading.problem("at", "must be later than the reading before it in the same zone");
        }
    }

    private static Optional<Air> air(Fields fields) {
        Optional<Celsius> temperature = PartReader.celsius(fields, "temperatureC");
        Optional<RelativeHumidity> humidity = PartReader.percent(fields, "rhPercent");
        Optional<Celsius> dew = PartReader.celsius(fields, "dewPointC");
        if (humidity.isPresent() && dew.isPresent()) {
            fields.problem("dewPointC", "cannot stand beside rhPercent");
        }
        boolean impossible = temperature.isPresent()
                && dew.filter(d -> d.isAbove(temperature.get())).isPresent();
        if (impossible) {
            fields.problem("dewPointC", "must not lie above the temperature");
            return Optional.empty();
        }
        return temperature.flatMap(t ->
                humidity.or(() -> dew.map(d -> DewPoint.humidity(t, d))).map(h -> new Air(t, h)));
    }

    static SiteRules rules(Optional<Fields> rules) {
        if (rules.isEmpty()) {
            return SiteRules.USUAL;
        }
        Fields fields = rules.get();
        SiteRules read = new SiteRules(
                fields.flag("useDrierThan60").orElse(false),
                fields.hours("maxReadingGapHours", Range.HOURS_OR_NONE, RoundingMode.FLOOR)
                        .orElse(SiteRules.USUAL.maxReadingGap()),
                fields.number("excursionMinutes", EXCURSION_MINUTES)
                        .map(minutes -> minutes(minutes, RoundingMode.FLOOR))
                        .orElse(SiteRules.USUAL.excursion()));
        fields.done();
        return read;
    }

    static Duration minutes(BigDecimal minutes, RoundingMode rounding) {
        return Duration.ofMillis(
                minutes.multiply(MS_PER_MINUTE).setScale(0, rounding).longValueExact());
    }
}
