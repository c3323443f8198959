package bagclock.people;

import bagclock.platform.Database;
import bagclock.platform.Person;
import bagclock.platform.Role;
import bagclock.platform.Secret;
import bagclock.platform.Sessions;
import bagclock.platform.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** Begins, finds and ends sessions. A secret that was wrong five times in a row is locked for a while. */
public final class SignIns implements Sessions {
    static final int MOST_FAILURES = 5;
    static final Duration LOCKED_FOR = Duration.ofMinutes(15);

    /** However busy: a session does not outlive a day. */
    static final Duration LONGEST_SESSION = Duration.ofHours(24);

    /** A session's end is moved at most once in this time, so that reading a page seldom writes. */
    private static final Duration PROLONG_AFTER = Duration.ofMinutes(1);

    private final Database database;
    private final AccountStore accounts = new AccountStore();
    private final CredentialStore credentials = new CredentialStore();
    private final SessionStore sessions = new SessionStore();

    /** Sessions kept in the given database. */
    public SignIns(Database database) {
        this.database = database;
    }

    Admission withPassword(String name, String password, Instant now) {
        String key = name.strip().toLowerCase(Locale.ROOT);
        return admit(
                database.read(tx -> accounts.bySignInName(tx, key)), new Proof(SecretKind.PASSWORD, password), now);
    }

    Admission withBadge(String code, String pin, Instant now) {
        return admit(database.read(tx -> accounts.byBadge(tx, code.strip())), new Proof(SecretKind.PIN, pin), now);
    }

    /** Why this is not the person's password; empty when it is. Wrong ones count as at sign-in. */
    Optional<Admission> faultOfPassword(String personId, String password, Instant now) {
        return fault(personId, new Proof(SecretKind.PASSWORD, password), now);
    }

    /** The demonstration's own person of a role, without any secret. Never reachable at a real site. */
    String asDemo(Role role, Instant now) {
        String id = "demo-" + role.name().toLowerCase(Locale.ROOT);
        return database.inTransaction(tx -> {
            if (accounts.byId(tx, id).isEmpty()) {
                throw new IllegalStateException("the demonstration has no person for " + role);
            }
            return begin(tx, id, SecretKind.PASSWORD, now);
        });
    }

    /** A session for someone who has just proved who it is. */
    String begin(String personId, Instant now) {
        return database.inTransaction(tx -> begin(tx, personId, SecretKind.PASSWORD, now));
    }

    void end(String token) {
        database.withTransaction(tx -> sessions.end(tx, Secret.fingerprint(token)));
    }

    @Override
    public Optional<Person> find(String token, Instant now) {
        String hash = Secret.fingerprint(token);
        Optional<SessionStore.Row> session = database.read(tx -> sessions.find(tx, hash, now));
        session.ifPresent(row -> {
            Instant end = now.plusSeconds(row.idleS());
            if (row.idleEndsAt().plus(PROLONG_AFTER).isBefore(end)) {
                database.withTransaction(tx -> sessions.prolong(tx, hash, end));
            }
        });
        return session.flatMap(row -> database.read(tx -> accounts.byId(tx, row.personId())))
                .filter(account -> !account.isRetired() && !account.roles().isEmpty())
                .map(Account::person);
    }

    private record Proof(SecretKind kind, String secret) {}

    private Admission admit(Optional<Account> account, Proof proof, Instant now) {
        Optional<Account> current = account.filter(found -> !found.isRetired());
        if (current.isEmpty()) {
            SlowHash.waste(proof.secret());
            return Admission.REFUSED;
        }
        String id = current.get().id();
        return fault(id, proof, now)
                .orElseGet(() -> Admission.with(database.inTransaction(tx -> begin(tx, id, proof.kind(), now))));
    }

    /** Why the secret does not prove the person; empty when it does. */
    private Optional<Admission> fault(String id, Proof proof, Instant now) {
        Optional<CredentialStore.Row> credential = database.read(tx -> credentials.find(tx, id, proof.kind()));
        if (credential.isEmpty()) {
            SlowHash.waste(proof.secret());
            return Optional.of(Admission.REFUSED);
        }
        Instant lockUntil = now.plus(LOCKED_FOR);
        boolean isCounted =
                database.inTransaction(tx -> credentials.countAttempt(tx, id, proof.kind(), now, lockUntil));
        if (isCounted && SlowHash.fits(proof.secret(), credential.get().secretHash())) {
            database.withTransaction(tx -> credentials.forgetFailures(tx, id, proof.kind()));
            return Optional.empty();
        }
        return Optional.of(database.read(tx -> credentials.find(tx, id, proof.kind()))
                .flatMap(row -> Optional.ofNullable(row.lockedUntil()))
                .map(Admission::locked)
                .orElse(Admission.REFUSED));
    }

    private String begin(Transaction tx, String personId, SecretKind kind, Instant now) {
        String token = Secret.token();
        sessions.begin(tx, Secret.fingerprint(token), personId, kind.idleFor(), now);
        return token;
    }
}
