package bagclock.ovens;

import bagclock.core.oven.Run;
import bagclock.core.quantity.Celsius;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What calendars of other programs are told. */
final class CalendarStore {
    private static final String ENTRIES = """
            select c.uid, c.sequence, c.changed_at, c.cancelled, s.oven, s.temp_c, s.tag, s.in_at, s.out_at
            from oven_calendar c join oven_plan_stay s on s.plan = c.plan and s.run = c.run
            where c.ends_at > :since order by c.uid, s.tag
            """;

    private final Database database;

    CalendarStore(Database database) {
        this.database = database;
    }

    record Row(
            String uid,
            int sequence,
            Instant changedAt,
            boolean cancelled,
            String oven,
            double tempC,
            String tag,
            Instant inAt,
            Instant outAt) {
        Run.Stay stay() {
            return new Run.Stay(tag, inAt, outAt);
        }
    }

    /** What ends after a moment, the cancelled too. */
    List<CalendarEntry> entries(Instant since) {
        return database.read(tx -> entries(tx, since));
    }

    private static List<CalendarEntry> entries(Transaction tx, Instant since) {
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        tx.handle()
                .createQuery(ENTRIES)
                .bind("since", since)
                .mapTo(Row.class)
                .forEach(row -> rows.computeIfAbsent(row.uid(), uid -> new ArrayList<>())
                        .add(row));
        return rows.values().stream().map(CalendarStore::entry).toList();
    }

    private static CalendarEntry entry(List<Row> rows) {
        Row row = rows.get(0);
        Run run = new Run(
                row.oven(),
                new Celsius(row.tempC()),
                rows.stream().map(Row::stay).toList());
        return new CalendarEntry(row.uid(), row.sequence(), row.changedAt(), row.cancelled(), run);
    }

    /** Tells them of a plan, in the transaction that publishes it. */
    static void publish(Transaction tx, String plan, List<Run> runs, Instant now) {
        List<CalendarEntry> before =
                entries(tx, now).stream().filter(entry -> !entry.cancelled()).toList();
        for (CalendarEntry entry : CalendarEntry.follow(before, runs, plan, now)) {
            if (entry.cancelled()) {
                cancel(tx, entry);
            } else if (before.stream().anyMatch(one -> one.uid().equals(entry.uid()))) {
                write(tx, entry, plan, runs.indexOf(entry.run()), """
                        update oven_calendar set sequence = :sequence, changed_at = :changedAt, plan = :plan,
                            run = :place, ends_at = :endsAt
                        where uid = :uid
                        """);
            } else {
                write(tx, entry, plan, runs.indexOf(entry.run()), """
                        insert into oven_calendar (uid, sequence, changed_at, cancelled, plan, run, ends_at)
                        values (:uid, :sequence, :changedAt, false, :plan, :place, :endsAt)
                        """);
            }
        }
    }

    /** It stays where it stood last. */
    private static void cancel(Transaction tx, CalendarEntry entry) {
        tx.handle()
                .createUpdate("update oven_calendar set sequence = :sequence, changed_at = :changedAt, cancelled = true"
                        + " where uid = :uid")
                .bind("uid", entry.uid())
                .bind("sequence", entry.sequence())
                .bind("changedAt", entry.changedAt())
                .execute();
    }

    private static void write(Transaction tx, CalendarEntry entry, String plan, int place, String sql) {
        tx.handle()
                .createUpdate(sql)
                .bind("uid", entry.uid())
                .bind("sequence", entry.sequence())
                .bind("changedAt", entry.changedAt())
                .bind("plan", plan)
                .bind("place", place)
                .bind("endsAt", entry.run().endAt())
                .execute();
    }
}
