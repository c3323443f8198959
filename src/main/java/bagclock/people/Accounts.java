package bagclock.people;

import bagclock.platform.Database;
import bagclock.platform.Messages;
import bagclock.platform.NotThere;
import bagclock.platform.Role;
import bagclock.platform.Secret;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;

/** Keeps the accounts. Whoever loses a role, a password or the account loses every open session with it. */
public final class Accounts {
    private final Database database;
    private final AccountStore accounts = new AccountStore();
    private final CredentialStore credentials = new CredentialStore();
    private final SessionStore sessions = new SessionStore();

    /** Accounts kept in the given database. */
    public Accounts(Database database) {
        this.database = database;
    }

    /** As long as nobody has an account: a fresh one-time code for the console, which makes older ones void. */
    public Optional<String> firstStartCode() {
        return database.inTransaction(tx -> {
            if (!accounts.isEmpty(tx)) {
                return Optional.empty();
            }
            String code = Secret.typable(4);
            accounts.replaceFirstStartCode(tx, Secret.fingerprint(code));
            return Optional.of(code);
        });
    }

    /** Gives the demonstration one person for each role, {@code demo-clerk} and so on, named after the role. */
    public void addDemoPeople(Messages messages, Instant now) {
        database.withTransaction(tx -> {
            for (Role role : Role.signedIn()) {
                String id = "demo-" + role.name().toLowerCase(Locale.ROOT);
                if (accounts.byId(tx, id).isEmpty()) {
                    add(tx, id, new Profile(id, messages.text("demo." + role.name()), Set.of(role)), now);
                }
            }
        });
    }

    /**
     * What an administrator decides about a person.
     *
     * @param signInName in lower case
     */
    record Profile(String signInName, String display, Set<Role> roles) {}

    boolean hasNobody() {
        return database.read(accounts::isEmpty);
    }

    List<Account> all() {
        return database.read(accounts::all);
    }

    Account byId(String id) {
        return database.read(tx -> accounts.byId(tx, id)).orElseThrow(() -> new NotThere("no person has the id " + id));
    }

    /** The new person's id; empty when the sign-in name is taken. */
    Optional<String> add(Profile profile, String password, Instant now) {
        String hash = SlowHash.of(password);
        return unlessTaken(tx -> {
            if (accounts.bySignInName(tx, profile.signInName()).isPresent()) {
                return Optional.empty();
            }
            return Optional.of(addWithPassword(tx, profile, hash, now));
        });
    }

    /** The first person's id; empty when the code is wrong or someone has an account already. */
    Optional<String> addFirst(String code, Profile profile, String password, Instant now) {
        String hash = SlowHash.of(password);
        String typed = code.strip().toUpperCase(Locale.ROOT);
        return database.inTransaction(tx -> {
            if (!accounts.isEmpty(tx) || !accounts.takeFirstStartCode(tx, Secret.fingerprint(typed))) {
                return Optional.empty();
            }
            return Optional.of(addWithPassword(tx, profile, hash, now));
        });
    }

    /** False, and nothing changed, when the last administrator would lose that role. */
    boolean change(String id, String display, Set<Role> roles) {
        return database.inTransaction(tx -> {
            if (!roles.contains(Role.ADMINISTRATOR) && isLastAdministrator(tx, id)) {
                return false;
            }
            accounts.rename(tx, id, display, sortKey(display));
            accounts.setRoles(tx, id, roles);
            return true;
        });
    }

    void setPassword(String id, String password) {
        String hash = SlowHash.of(password);
        database.withTransaction(tx -> {
            credentials.set(tx, id, SecretKind.PASSWORD, hash);
            sessions.endAllOf(tx, id);
        });
    }

    /** False, and nothing changed, when another person has the badge. */
    boolean setBadge(String id, String code, String pin) {
        String hash = SlowHash.of(pin);
        Predicate<Account> isAnother = account -> !account.id().equals(id);
        return unlessTaken(tx -> {
                    if (accounts.byBadge(tx, code).filter(isAnother).isPresent()) {
                        return Optional.<Boolean>empty();
                    }
                    accounts.setBadge(tx, id, code);
                    credentials.set(tx, id, SecretKind.PIN, hash);
                    return Optional.of(true);
                })
                .isPresent();
    }

    /** False, and nothing changed, for the last administrator. The account stays, since events name it. */
    boolean retire(String id, Instant now) {
        return database.inTransaction(tx -> {
            if (isLastAdministrator(tx, id)) {
                return false;
            }
            accounts.setRetiredAt(tx, id, now);
            sessions.endAllOf(tx, id);
            return true;
        });
    }

    void takeBack(String id) {
        database.withTransaction(tx -> accounts.setRetiredAt(tx, id, null));
    }

    /** Two at once may both find a name free; the unique key then decides. */
    private <T> Optional<T> unlessTaken(Function<Transaction, Optional<T>> work) {
        try {
            return database.inTransaction(work);
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                return Optional.empty();
            }
            throw failure;
        }
    }

    private boolean isLastAdministrator(Transaction tx, String id) {
        return accounts.byId(tx, id)
                        .filter(account -> account.roles().contains(Role.ADMINISTRATOR) && !account.isRetired())
                        .isPresent()
                && !accounts.hasOtherAdministrator(tx, id);
    }

    private String addWithPassword(Transaction tx, Profile profile, String hash, Instant now) {
        String id = UUID.randomUUID().toString();
        add(tx, id, profile, now);
        credentials.set(tx, id, SecretKind.PASSWORD, hash);
        return id;
    }

    private void add(Transaction tx, String id, Profile profile, Instant now) {
        Account account = new Account(
                id, profile.signInName(), profile.display(), Optional.empty(), Optional.empty(), profile.roles());
        accounts.add(tx, account, sortKey(profile.display()), now);
    }

    private static String sortKey(String display) {
        return display.toLowerCase(Locale.ROOT);
    }
}
