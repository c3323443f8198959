package bagclock.readings;

import bagclock.platform.Transaction;
import java.util.List;
import java.util.Optional;

/** Which files are read together. */
final class HalfStore {
    private static final String LAST =
            " h.seq = (select max(n.seq) from logger_file_half n where n.file_id = h.file_id) ";

    /** Says with which other file a file is read; with none if empty. */
    void say(Transaction tx, String id, Optional<String> other, Source source) {
        tx.handle()
                .createUpdate("insert into logger_file_half (file_id, seq, other_id, said_at, who) values (:id,"
                        + " (select coalesce(max(seq), 0) + 1 from logger_file_half where file_id = :id),"
                        + " :other, :saidAt, :who)")
                .bind("id", id)
                .bind("other", other.orElse(null))
                .bind("saidAt", source.recordedAt())
                .bind("who", source.who())
                .execute();
    }

    Optional<String> otherOf(Transaction tx, String id) {
        return tx.handle()
                .createQuery(
                        "select h.other_id from logger_file_half h where h.file_id = :id and h.other_id is not null"
                                + " and" + LAST)
                .bind("id", id)
                .mapTo(String.class)
                .findFirst();
    }

    /** The files that are read with this one. */
    List<String> readWith(Transaction tx, String otherId) {
        return tx.handle()
                .createQuery("select h.file_id from logger_file_half h where h.other_id = :other and" + LAST
                        + "order by h.file_id")
                .bind("other", otherId)
                .mapTo(String.class)
                .list();
    }
}
