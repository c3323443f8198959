package bagclock.readings;

import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Files of loggers, their bytes, and what happened to them. */
final class FileStore {
    private static final String FILE =
            "select id, logger, place_code, file_name, sha256, size_bytes, uploaded_at, who from logger_file ";

    void add(Transaction tx, LoggerFile file) {
        tx.handle()
                .createUpdate("""
                        insert into logger_file (id, logger, place_code, file_name, sha256, size_bytes, uploaded_at, who)
                        values (:id, :logger, :placeCode, :fileName, :sha256, :sizeBytes, :uploadedAt, :who)
                        """)
                .bind("id", file.id())
                .bind("logger", file.logger())
                .bind("placeCode", file.placeCode())
                .bind("fileName", file.fileName())
                .bind("sha256", file.sha256())
                .bind("sizeBytes", file.sizeBytes())
                .bind("uploadedAt", file.uploadedAt())
                .bind("who", file.who())
                .execute();
        tx.handle()
                .createUpdate(
                        "insert into logger_file_progress (file_id, samples_done, samples_all) values (:id, 0, 0)")
                .bind("id", file.id())
                .execute();
    }

    void setContent(Transaction tx, String id, String sha256, long sizeBytes) {
        tx.handle()
                .createUpdate("update logger_file set sha256 = :sha256, size_bytes = :size where id = :id")
                .bind("id", id)
                .bind("sha256", sha256)
                .bind("size", sizeBytes)
                .execute();
    }

    void addPiece(Transaction tx, String id, int seq, byte[] bytes) {
        tx.handle()
                .createUpdate("insert into logger_file_piece (file_id, seq, bytes) values (:id, :seq, :bytes)")
                .bind("id", id)
                .bind("seq", seq)
                .bind("bytes", bytes)
                .execute();
    }

    Optional<byte[]> piece(Transaction tx, String id, int seq) {
        return tx.handle()
                .createQuery("select bytes from logger_file_piece where file_id = :id and seq = :seq")
                .bind("id", id)
                .bind("seq", seq)
                .map((row, context) -> row.getBytes(1))
                .findFirst();
    }

    Optional<LoggerFile> byId(Transaction tx, String id) {
        return tx.handle()
                .createQuery(FILE + "where id = :id")
                .bind("id", id)
                .mapTo(LoggerFile.class)
                .findFirst();
    }

    /** Charts of ovens are no readings of a place. */
    List<LoggerFile> newest(Transaction tx, int most) {
        return tx.handle()
                .createQuery(FILE + "where not exists (select 1 from oven_chart c where c.file_id = logger_file.id)"
                        + " order by uploaded_at desc, id limit :most")
                .bind("most", most)
                .mapTo(LoggerFile.class)
                .list();
    }

    /** The newest files of a logger at a place first. */
    List<LoggerFile> newestOf(Transaction tx, String logger, String placeCode, int most) {
        return tx.handle()
                .createQuery(FILE + "where logger = :logger and place_code = :place"
                        + " and not exists (select 1 from oven_chart c where c.file_id = logger_file.id)"
                        + " order by uploaded_at desc, id limit :most")
                .bind("logger", logger)
                .bind("place", placeCode)
                .bind("most", most)
                .mapTo(LoggerFile.class)
                .list();
    }

    /** So that of two that would write the next event the second sees the first one's. */
    void lock(Transaction tx, String id) {
        tx.handle()
                .createQuery("select id from logger_file where id = :id for update")
                .bind("id", id)
                .mapTo(String.class)
                .list();
    }

    /** Whether a file of the logger, not taken back, may have readings of one of these places at or after a moment. */
    boolean hasReadSince(Transaction tx, String logger, Collection<String> places, Instant from) {
        return !places.isEmpty()
                && tx.handle()
                                .createQuery("""
                                        select count(*) from logger_file f
                                        join logger_file_event e on e.file_id = f.id
                                        where f.logger = :logger and f.place_code in (<places>) and e.last_at >= :from
                                            and not exists (select 1 from logger_file_event t
                                                where t.file_id = f.id and t.what = 'TAKEN_BACK' and t.seq > e.seq)
                                        """)
                                .bind("logger", logger)
                                .bindList("places", List.copyOf(places))
                                .bind("from", from)
                                .mapTo(Integer.class)
                                .one()
                        > 0;
    }

    List<FileEvent> events(Transaction tx, String id) {
        return tx.handle()
                .createQuery("select seq, what, happened_at, who, added, known, refused, first_at, last_at, report"
                        + " from logger_file_event where file_id = :id order by seq")
                .bind("id", id)
                .mapTo(FileEvent.class)
                .list();
    }

    void add(Transaction tx, String id, FileEvent event) {
        tx.handle()
                .createUpdate("""
                        insert into logger_file_event (file_id, seq, what, happened_at, who, added, known, refused,
                            first_at, last_at, report)
                        values (:id, :seq, :what, :happenedAt, :who, :added, :known, :refused, :firstAt, :lastAt, :report)
                        """)
                .bind("id", id)
                .bind("seq", event.seq())
                .bind("what", event.what().name())
                .bind("happenedAt", event.happenedAt())
                .bind("who", event.who())
                .bind("added", event.added())
                .bind("known", event.known())
                .bind("refused", event.refused())
                .bindByType("firstAt", event.firstAt(), Instant.class)
                .bindByType("lastAt", event.lastAt(), Instant.class)
                .bind("report", event.report())
                .execute();
    }

    void setProgress(Transaction tx, String id, Progress progress) {
        tx.handle()
                .createUpdate(
                        "update logger_file_progress set samples_done = :done, samples_all = :all where file_id = :id")
                .bind("id", id)
                .bind("done", progress.samplesDone())
                .bind("all", progress.samplesAll())
                .execute();
    }

    Progress progress(Transaction tx, String id) {
        return tx.handle()
                .createQuery("select samples_done, samples_all from logger_file_progress where file_id = :id")
                .bind("id", id)
                .mapTo(Progress.class)
                .one();
    }
}
