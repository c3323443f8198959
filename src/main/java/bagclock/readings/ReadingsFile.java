package bagclock.readings;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.CsvText;
import bagclock.readings.Kept.BadLine;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A file with the columns zone, time, temperature (C) and humidity (%RH), in any order, named in its first line.
 * Separated by comma or semicolon; a decimal comma counts as a point in a file with semicolons. Times are ISO 8601;
 * without an offset they are the site's.
 *
 * @param good readings that can be kept
 * @param bad lines that can't be read
 */
public record ReadingsFile(List<ZoneReading> good, List<BadLine> bad) {
    private static final List<String> COLUMNS = List.of("zone", "time", "temperature", "humidity");

    /** Keeps its own copies. */
    public ReadingsFile {
        good = List.copyOf(good);
        bad = List.copyOf(bad);
    }

    /**
     * Reads a file; never fails, what can't be read is named.
     *
     * @param zones the zones that readings may be for
     * @param siteZone where times without an offset are at home
     */
    public static ReadingsFile read(String text, Set<Zone> zones, ZoneId siteZone) {
        CsvText csv = CsvText.of(text, ";");
        Lines lines = new Lines(zones, siteZone, csv.separator() == ';');
        if (!csv.read(lines::take)) {
            lines.bad.add(new BadLine(lines.last + 1, "", Refusal.of(Reason.FILE_UNREADABLE)));
        }
        return new ReadingsFile(lines.good, lines.bad);
    }

    private static final class Lines {
        private final Set<Zone> zones;
        private final ZoneId siteZone;
        private final boolean semicolons;
        private final List<ZoneReading> good = new ArrayList<>();
        private final List<BadLine> bad = new ArrayList<>();
        private List<String> head = List.of();
        private boolean readable = true;
        private long last;

        Lines(Set<Zone> zones, ZoneId siteZone, boolean semicolons) {
            this.zones = zones;
            this.siteZone = siteZone;
            this.semicolons = semicolons;
        }

        void take(CsvRecord csv) {
            last = csv.getStartingLineNumber();
            if (head.isEmpty()) {
                head = csv.getFields().stream()
                        .map(name -> name.strip().toLowerCase(Locale.ROOT))
                        .toList();
                COLUMNS.stream().filter(column -> !head.contains(column)).forEach(this::missing);
            } else if (readable && csv.getFieldCount() != head.size()) {
                refuse("", Reason.LINE_OF_OTHER_LENGTH, csv.getFieldCount(), head.size());
            } else if (readable) {
                read(csv);
            }
        }

        private void missing(String column) {
            readable = false;
            bad.add(new BadLine(last, column, Refusal.of(Reason.COLUMN_MISSING, column)));
        }

        private void read(CsvRecord csv) {
            Optional<Zone> zone = zone(field(csv, "zone"));
            Optional<Instant> at = time(field(csv, "time"));
            Optional<Double> temperature = number("temperature", field(csv, "temperature"), -60, 500);
            Optional<Double> humidity = number("humidity", field(csv, "humidity"), 0, 100);
            if (zone.isPresent() && at.isPresent() && temperature.isPresent() && humidity.isPresent()) {
                Reading reading = new Reading(at.get(), Air.of(temperature.get(), humidity.get()));
                good.add(new ZoneReading(zone.get(), reading, last));
            }
        }

        private String field(CsvRecord csv, String column) {
            return csv.getField(head.indexOf(column)).strip();
        }

        private Optional<Zone> zone(String text) {
            Zone zone = new Zone(text);
            return zones.contains(zone) ? Optional.of(zone) : refuse("zone", Reason.ZONE_UNKNOWN, text);
        }

        private Optional<Instant> time(String text) {
            try {
                String iso = text.replace(' ', 'T');
                boolean offset = iso.matches(".*(Z|[+-]\\d\\d(:?\\d\\d)?)$") && iso.indexOf('T') > 0;
                Instant at = offset
                        ? OffsetDateTime.parse(iso).toInstant()
                        : LocalDateTime.parse(iso).atZone(siteZone).toInstant();
                return Optional.of(at.truncatedTo(ChronoUnit.MILLIS));
            } catch (DateTimeException notATime) {
                return refuse("time", Reason.TIME_UNREADABLE, text);
            }
        }

        private Optional<Double> number(String column, String text, double least, double most) {
            try {
                double value = Double.parseDouble(semicolons ? text.replace(',', '.') : text);
                return value >= least && value <= most
                        ? Optional.of(value)
                        : refuse(column, Reason.NUMBER_OUT_OF_RANGE, text, least, most);
            } catch (NumberFormatException notANumber) {
                return refuse(column, Reason.NUMBER_UNREADABLE, text);
            }
        }

        private <T> Optional<T> refuse(String column, Reason reason, Object... parts) {
            bad.add(new BadLine(last, column, Refusal.of(reason, parts)));
            return Optional.empty();
        }
    }
}
