package bagclock.people;

import bagclock.platform.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Who is signed in: hashes of the tokens, and when each session ends. */
final class SessionStore {
    /** A session that has not ended. */
    record Row(String personId, long idleS, Instant idleEndsAt) {}

    void begin(Transaction tx, String tokenHash, String personId, Duration idleFor, Instant now) {
        tx.handle()
                .createUpdate("delete from sign_in_session where idle_ends_at <= :now or ends_at <= :now")
                .bind("now", now)
                .execute();
        tx.handle()
                .createUpdate("""
                        insert into sign_in_session (token_hash, person_id, idle_s, idle_ends_at, ends_at)
                        values (:tokenHash, :personId, :idleS, :idleEndsAt, :endsAt)
                        """)
                .bind("tokenHash", tokenHash)
                .bind("personId", personId)
                .bind("idleS", idleFor.toSeconds())
                .bind("idleEndsAt", now.plus(idleFor))
                .bind("endsAt", now.plus(SignIns.LONGEST_SESSION))
                .execute();
    }

    Optional<Row> find(Transaction tx, String tokenHash, Instant now) {
        return tx.handle()
                .createQuery("""
                        select person_id, idle_s, idle_ends_at from sign_in_session
                        where token_hash = :tokenHash and idle_ends_at > :now and ends_at > :now
                        """)
                .bind("tokenHash", tokenHash)
                .bind("now", now)
                .mapTo(Row.class)
                .findOne();
    }

    void prolong(Transaction tx, String tokenHash, Instant idleEndsAt) {
        tx.handle()
                .createUpdate("update sign_in_session set idle_ends_at = :idleEndsAt where token_hash = :tokenHash")
                .bind("tokenHash", tokenHash)
                .bind("idleEndsAt", idleEndsAt)
                .execute();
    }

    void end(Transaction tx, String tokenHash) {
        tx.handle()
                .createUpdate("delete from sign_in_session where token_hash = :tokenHash")
                .bind("tokenHash", tokenHash)
                .execute();
    }

    void endAllOf(Transaction tx, String personId) {
        tx.handle()
                .createUpdate("delete from sign_in_session where person_id = :personId")
                .bind("personId", personId)
                .execute();
    }
}
