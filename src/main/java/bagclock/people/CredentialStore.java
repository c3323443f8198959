package bagclock.people;

import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The hashed secrets, and how often each was guessed wrong. */
final class CredentialStore {
    /** One secret of a person. */
    record Row(String secretHash, @Nullable Instant lockedUntil) {}

    Optional<Row> find(Transaction tx, String personId, SecretKind kind) {
        return tx.handle()
                .createQuery("""
                        select secret_hash, locked_until from credential
                        where person_id = :personId and kind = :kind
                        """)
                .bind("personId", personId)
                .bind("kind", kind.name())
                .mapTo(Row.class)
                .findOne();
    }

    void set(Transaction tx, String personId, SecretKind kind, String hash) {
        tx.handle()
                .createUpdate("delete from credential where person_id = :personId and kind = :kind")
                .bind("personId", personId)
                .bind("kind", kind.name())
                .execute();
        tx.handle()
                .createUpdate("""
                        insert into credential (person_id, kind, secret_hash, failures)
                        values (:personId, :kind, :hash, 0)
                        """)
                .bind("personId", personId)
                .bind("kind", kind.name())
                .bind("hash", hash)
                .execute();
    }

    /** Counts an attempt as failed until it turns out right; false, and nothing counted, while the secret is locked. */
    boolean countAttempt(Transaction tx, String personId, SecretKind kind, Instant now, Instant lockUntil) {
        return tx.handle()
                        .createUpdate("""
                                update credential set
                                    locked_until = case when failures + 1 >= :most then cast(:lockUntil as timestamp with time zone) end,
                                    failures = failures + 1
                                where person_id = :personId and kind = :kind
                                    and (locked_until is null or locked_until <= :now)
                                """)
                        .bind("personId", personId)
                        .bind("kind", kind.name())
                        .bind("most", SignIns.MOST_FAILURES)
                        .bind("lockUntil", lockUntil)
                        .bind("now", now)
                        .execute()
                == 1;
    }

    void forgetFailures(Transaction tx, String personId, SecretKind kind) {
        tx.handle()
                .createUpdate("""
                        update credential set failures = 0, locked_until = null
                        where person_id = :personId and kind = :kind
                        """)
                .bind("personId", personId)
                .bind("kind", kind.name())
                .execute();
    }
}
