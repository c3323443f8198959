package bagclock.people;

import bagclock.platform.Role;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Accounts and their roles. */
final class AccountStore {
    /** A person without roles. */
    record Row(
            String id,
            String signInName,
            String display,
            @Nullable String badgeCode,
            @Nullable Instant retiredAt) {

        Account with(Set<Role> roles) {
            return new Account(
                    id, signInName, display, Optional.ofNullable(badgeCode), Optional.ofNullable(retiredAt), roles);
        }
    }

    /** One role of a person. */
    record RoleRow(String personId, String role) {}

    private static final String PERSON = "select id, sign_in_name, display, badge_code, retired_at from person ";

    boolean isEmpty(Transaction tx) {
        return tx.handle()
                        .createQuery("select count(*) from person")
                        .mapTo(Long.class)
                        .one()
                == 0;
    }

    List<Account> all(Transaction tx) {
        Map<String, Set<Role>> roles = new HashMap<>();
        tx.handle()
                .createQuery("select person_id, role from person_role")
                .mapTo(RoleRow.class)
                .forEach(row -> roles.computeIfAbsent(row.personId(), id -> EnumSet.noneOf(Role.class))
                        .add(Role.valueOf(row.role())));
        return tx.handle().createQuery(PERSON + "order by sort_key, id").mapTo(Row.class).stream()
                .map(row -> row.with(roles.getOrDefault(row.id(), Set.of())))
                .toList();
    }

    Optional<Account> byId(Transaction tx, String id) {
        return find(tx, "where id = :value", id);
    }

    Optional<Account> bySignInName(Transaction tx, String name) {
        return find(tx, "where sign_in_name = :value", name);
    }

    Optional<Account> byBadge(Transaction tx, String code) {
        return find(tx, "where badge_code = :value", code);
    }

    void add(Transaction tx, Account account, String sortKey, Instant now) {
        tx.handle()
                .createUpdate("""
                        insert into person (id, sign_in_name, display, sort_key, created_at)
                        values (:id, :signInName, :display, :sortKey, :now)
                        """)
                .bind("id", account.id())
                .bind("signInName", account.signInName())
                .bind("display", account.display())
                .bind("sortKey", sortKey)
                .bind("now", now)
                .execute();
        addRoles(tx, account.id(), account.roles());
    }

    void rename(Transaction tx, String id, String display, String sortKey) {
        tx.handle()
                .createUpdate("update person set display = :display, sort_key = :sortKey where id = :id")
                .bind("id", id)
                .bind("display", display)
                .bind("sortKey", sortKey)
                .execute();
    }

    void setRoles(Transaction tx, String id, Set<Role> roles) {
        tx.handle()
                .createUpdate("delete from person_role where person_id = :id")
                .bind("id", id)
                .execute();
        addRoles(tx, id, roles);
    }

    void setBadge(Transaction tx, String id, String code) {
        tx.handle()
                .createUpdate("update person set badge_code = :code where id = :id")
                .bind("id", id)
                .bind("code", code)
                .execute();
    }

    void setRetiredAt(Transaction tx, String id, @Nullable Instant at) {
        tx.handle()
                .createUpdate("update person set retired_at = :at where id = :id")
                .bind("id", id)
                .bindByType("at", at, Instant.class)
                .execute();
    }

    /** Whether somebody else could still keep the accounts. */
    boolean hasOtherAdministrator(Transaction tx, String id) {
        return tx.handle().createQuery("""
                                select count(*) from person p join person_role r on r.person_id = p.id
                                where r.role = 'ADMINISTRATOR' and p.retired_at is null and p.id <> :id
                                """).bind("id", id).mapTo(Long.class).one() > 0;
    }

    void replaceFirstStartCode(Transaction tx, String hash) {
        tx.handle().execute("delete from first_start");
        tx.handle()
                .createUpdate("insert into first_start (code_hash) values (:hash)")
                .bind("hash", hash)
                .execute();
    }

    /** Uses the code up; false when it is not the one. */
    boolean takeFirstStartCode(Transaction tx, String hash) {
        return tx.handle()
                        .createUpdate("delete from first_start where code_hash = :hash")
                        .bind("hash", hash)
                        .execute()
                == 1;
    }

    private static void addRoles(Transaction tx, String id, Set<Role> roles) {
        for (Role role : roles) {
            tx.handle()
                    .createUpdate("insert into person_role (person_id, role) values (:id, :role)")
                    .bind("id", id)
                    .bind("role", role.name())
                    .execute();
        }
    }

    private static Optional<Account> find(Transaction tx, String where, String value) {
        return tx.handle()
                .createQuery(PERSON + where)
                .bind("value", value)
                .mapTo(Row.class)
                .findOne()
                .map(row -> row.with(rolesOf(tx, row.id())));
    }

    private static Set<Role> rolesOf(Transaction tx, String id) {
        EnumSet<Role> roles = EnumSet.noneOf(Role.class);
        tx.handle()
                .createQuery("select role from person_role where person_id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .forEach(role -> roles.add(Role.valueOf(role)));
        return roles;
    }
}
