package bagclock.ovens;

import bagclock.logfile.LogSource;
import bagclock.platform.Database;
import bagclock.platform.NotThere;
import bagclock.platform.Transaction;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerFiles;
import bagclock.readings.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

/** Charts of loads, which of them proves one, and how runs ended. */
final class ChartStore {
    private static final int LONGEST_NAME = 200;
    private static final String PROOF = """
            select oven, loaded_at, recorded_at, who, file_id, taken_back, time_zone, day_order, unit,
                spreadsheet_days, second_of_both, probes, humidity_channel
            from oven_proof
            """;

    private static final String END = """
            select e.oven, e.loaded_at, e.tag, e.recorded_at, e.who, e.out_at, e.set_point_c, e.at_temperature_ms,
                e.needed_ms, e.file_id, e.verdict
            from oven_run_end e
            where not exists (select 1 from oven_run_end later where later.oven = e.oven
                and later.loaded_at = e.loaded_at and later.tag = e.tag and later.recorded_at > e.recorded_at)
            """;

    private final Database database;
    private final BiConsumer<Transaction, String> tell;
    private final LoggerFiles files = new LoggerFiles();

    ChartStore(Database database, BiConsumer<Transaction, String> tell) {
        this.database = database;
        this.tell = tell;
    }

    /** Keeps a file as it came. */
    LoggerFile add(Load load, String fileName, InputStream content, Source source) {
        String oven = load.oven().code();
        String name = fileName.substring(0, Math.min(fileName.length(), LONGEST_NAME));
        return database.inTransaction(tx -> {
            try {
                LoggerFile file = files.add(tx, new LoggerFiles.Upload(oven, oven, name, content), source);
                tx.handle()
                        .createUpdate("insert into oven_chart (file_id, oven, loaded_at) values (:file, :oven, :at)")
                        .bind("file", file.id())
                        .bind("oven", oven)
                        .bind("at", load.loadedAt())
                        .execute();
                return file;
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        });
    }

    /** A chart of a load. */
    LoggerFile file(Load load, String id) {
        return database.read(tx -> tx.handle()
                .createQuery("select file_id from oven_chart"
                        + " where file_id = :file and oven = :oven and loaded_at = :loadedAt")
                .bind("file", id)
                .bind("oven", load.oven().code())
                .bind("loadedAt", load.loadedAt())
                .mapTo(String.class)
                .findFirst()
                .map(file -> files.byId(tx, file))
                .orElseThrow(() -> new NotThere("no chart " + id)));
    }

    LogSource source(String id) {
        return files.source(database, id);
    }

    /** What proves a load; empty if nothing does any more. */
    Optional<ProofRow> proof(Load load) {
        return database.read(tx -> tx.handle()
                        .createQuery(PROOF + "where oven = :oven and loaded_at = :loadedAt"
                                + " order by number desc limit 1")
                        .bind("oven", load.oven().code())
                        .bind("loadedAt", load.loadedAt())
                        .mapTo(ProofRow.class)
                        .findFirst())
                .filter(row -> !row.takenBack());
    }

    /** What was said last about a chart of an oven. */
    Optional<ChartAnswers> saidLast(String oven) {
        return database.read(tx -> tx.handle()
                .createQuery(PROOF + "where oven = :oven order by recorded_at desc, number desc limit 1")
                .bind("oven", oven)
                .mapTo(ProofRow.class)
                .findFirst()
                .map(ProofRow::answers));
    }

    void add(ProofRow row) {
        database.withTransaction(tx -> {
            tx.handle()
                    .createUpdate("""
                            insert into oven_proof (oven, loaded_at, number, recorded_at, who, file_id, taken_back, time_zone,
                                day_order, unit, spreadsheet_days, second_of_both, probes, humidity_channel)
                            values (:oven, :loadedAt,
                                (select count(*) + 1 from oven_proof where oven = :oven and loaded_at = :loadedAt),
                                :recordedAt, :who, :fileId, :takenBack, :timeZone, :dayOrder,
                                :unit, :spreadsheetDays, :secondOfBoth, :probes, :humidityChannel)
                            """)
                    .bind("oven", row.oven())
                    .bind("loadedAt", row.loadedAt())
                    .bind("recordedAt", row.recordedAt())
                    .bind("who", row.who())
                    .bind("fileId", row.fileId())
                    .bind("takenBack", row.takenBack())
                    .bind("timeZone", row.timeZone())
                    .bind("dayOrder", row.dayOrder())
                    .bind("unit", row.unit())
                    .bind("spreadsheetDays", row.spreadsheetDays())
                    .bind("secondOfBoth", row.secondOfBoth())
                    .bind("probes", row.probes())
                    .bind("humidityChannel", row.humidityChannel())
                    .execute();
            tell.accept(tx, "ovens");
        });
    }

    /** How an item's run ended; {@code verdict} and {@code fileId} empty: its hours were told. */
    record End(
            String oven,
            Instant loadedAt,
            String tag,
            Instant recordedAt,
            String who,
            Instant outAt,
            double setPointC,
            long atTemperatureMs,
            Optional<Long> neededMs,
            Optional<String> fileId,
            String verdict) {}

    /** Adds how an item's run ended; what is said of it in the same moment counts after what was said before. */
    void add(End end) {
        database.withTransaction(tx -> tx.handle()
                .createUpdate("""
                        insert into oven_run_end (oven, loaded_at, tag, recorded_at, who, out_at, set_point_c,
                            at_temperature_ms, needed_ms, file_id, verdict)
                        values (:oven, :loadedAt, :tag, :recordedAt, :who, :outAt, :setPointC, :atTemperatureMs,
                            :neededMs, :fileId, :verdict)
                        """)
                .bind("oven", end.oven())
                .bind("loadedAt", end.loadedAt())
                .bind("tag", end.tag())
                .bind("recordedAt", after(tx, end))
                .bind("who", end.who())
                .bind("outAt", end.outAt())
                .bind("setPointC", end.setPointC())
                .bind("atTemperatureMs", end.atTemperatureMs())
                .bindByType("neededMs", end.neededMs().orElse(null), Long.class)
                .bindByType("fileId", end.fileId().orElse(null), String.class)
                .bind("verdict", end.verdict())
                .execute());
    }

    private static Instant after(Transaction tx, End end) {
        Optional<Instant> last = tx.handle()
                .createQuery("select recorded_at from oven_run_end"
                        + " where oven = :oven and loaded_at = :loadedAt and tag = :tag"
                        + " order by recorded_at desc limit 1")
                .bind("oven", end.oven())
                .bind("loadedAt", end.loadedAt())
                .bind("tag", end.tag())
                .mapTo(Instant.class)
                .findFirst();
        return OvenStore.later(last, end.recordedAt());
    }

    /** How runs ended, as said last of each item, the last first. */
    List<End> ends(int most) {
        return database.read(tx -> tx.handle()
                .createQuery(END + " order by e.out_at desc, e.recorded_at desc, e.tag limit :most")
                .bind("most", most)
                .mapTo(End.class)
                .list());
    }

    /** How one run ended, as said last of each item, by tag. */
    List<End> ends(String oven, Instant loadedAt) {
        return database.read(tx -> tx.handle()
                .createQuery(END + " and e.oven = :oven and e.loaded_at = :loadedAt order by e.tag")
                .bind("oven", oven)
                .bind("loadedAt", loadedAt)
                .mapTo(End.class)
                .list());
    }

    /** SHA-256 of files, by their ids. */
    Map<String, String> hashes(List<String> ids) {
        return database.read(tx -> ids.stream()
                .distinct()
                .collect(Collectors.toMap(id -> id, id -> files.byId(tx, id).sha256())));
    }
}
