package bagclock.readings;

import bagclock.platform.SortKey;
import bagclock.platform.Transaction;
import java.util.List;
import java.util.Optional;

/** What was said about loggers. */
final class LoggerStore {
    private static final String SELECT = "select l.name, l.version, l.place_code, l.time_zone, l.day_order, l.unit,"
            + " l.temperature_channel, l.humidity_channel, l.spreadsheet_days, l.below_zero from logger_fact l ";
    private static final String NEWEST =
            "l.version = (select max(n.version) from logger_fact n where n.name = l.name) ";

    Optional<LoggerRow> of(Transaction tx, String name) {
        return tx.handle()
                .createQuery(SELECT + "where l.name = :name and " + NEWEST)
                .bind("name", name)
                .mapTo(LoggerRow.class)
                .findFirst();
    }

    List<LoggerRow> all(Transaction tx) {
        return tx.handle()
                .createQuery(SELECT + "where " + NEWEST + "order by l.sort_key, l.name")
                .mapTo(LoggerRow.class)
                .list();
    }

    void add(Transaction tx, LoggerRow row, Source source) {
        tx.handle()
                .createUpdate("""
                        insert into logger_fact (name, version, recorded_at, who, sort_key, place_code, time_zone,
                            day_order, unit, temperature_channel, humidity_channel, spreadsheet_days, below_zero)
                        values (:name, :version, :recordedAt, :who, :sortKey, :placeCode, :timeZone, :dayOrder, :unit,
                            :temperature, :humidity, :days, :belowZero)
                        """)
                .bind("name", row.name())
                .bind("version", row.version())
                .bind("recordedAt", source.recordedAt())
                .bind("who", source.who())
                .bind("sortKey", SortKey.of(row.name()))
                .bind("placeCode", row.placeCode())
                .bind("timeZone", row.timeZone())
                .bind("dayOrder", row.dayOrder())
                .bind("unit", row.unit())
                .bind("temperature", row.temperatureChannel())
                .bind("humidity", row.humidityChannel())
                .bind("days", row.spreadsheetDays())
                .bind("belowZero", row.belowZero())
                .execute();
    }
}
