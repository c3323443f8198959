package bagclock.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bagclock.platform.Messages;
import bagclock.platform.NotThere;
import bagclock.platform.OnBothDatabases;
import bagclock.platform.Person;
import bagclock.platform.Role;
import java.time.Instant;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class AccountsTest extends OnBothDatabases {
    private static final Instant NOON = Instant.parse("2026-03-05T12:00:00Z");
    private static final String PASSWORD = "tide gauge and teapot";

    private Accounts accounts;
    private SignIns signIns;

    @BeforeEach
    void open() {
        accounts = new Accounts(database);
        signIns = new SignIns(database);
    }

    @Test
    void theCodeOfTheLastStartMakesTheFirstAccountOnce() {
        String older = accounts.firstStartCode().orElseThrow();
        String code = accounts.firstStartCode().orElseThrow();
        Accounts.Profile profile = new Accounts.Profile("first", "First", Set.of(Role.ADMINISTRATOR));

        assertThat(accounts.addFirst(older, profile, PASSWORD, NOON)).isEmpty();
        assertThat(accounts.addFirst("", profile, PASSWORD, NOON)).isEmpty();
        assertThat(accounts.addFirst(" " + code.toLowerCase(Locale.ROOT), profile, PASSWORD, NOON))
                .isPresent();
        assertThat(accounts.addFirst(
                        code, new Accounts.Profile("second", "Second", Set.of(Role.CLERK)), PASSWORD, NOON))
                .isEmpty();
        assertThat(accounts.firstStartCode()).isEmpty();
    }

    @Test
    void aSignInNameAndABadgeBelongToOnePerson() {
        String one = add("one", Role.CLERK);
        String two = add("two", Role.CLERK);

        assertThat(accounts.add(new Accounts.Profile("one", "Again", Set.of(Role.CLERK)), PASSWORD, NOON))
                .isEmpty();
        assertThat(accounts.setBadge(one, "HQ-0001", "4711")).isTrue();
        assertThat(accounts.setBadge(two, "HQ-0001", "4712")).isFalse();
        assertThat(accounts.byId(two).badgeCode()).isEmpty();
        assertThat(accounts.setBadge(one, "HQ-0001", "4713")).isTrue();
        assertThat(signIns.withBadge("HQ-0001", "4713", NOON).token()).isPresent();
    }

    @Test
    void aRetiredPersonIsOutAtOnceAndCanComeBack() {
        String id = add("one", Role.CLERK);
        String token = signIns.withPassword("one", PASSWORD, NOON).token().orElseThrow();

        assertThat(accounts.retire(id, NOON)).isTrue();
        assertThat(signIns.find(token, NOON)).isEmpty();
        assertThat(signIns.withPassword("one", PASSWORD, NOON)).isEqualTo(Admission.REFUSED);

        accounts.takeBack(id);
        assertThat(signIns.find(token, NOON)).as("an old session stays ended").isEmpty();
        assertThat(signIns.withPassword("one", PASSWORD, NOON).token()).isPresent();
    }

    @Test
    void theLastAdministratorStays() {
        String id = add("one", Role.ADMINISTRATOR);
        add("clerk", Role.CLERK);

        assertThat(accounts.retire(id, NOON)).isFalse();
        assertThat(accounts.change(id, "One", Set.of(Role.CLERK))).isFalse();
        assertThat(accounts.byId(id).roles()).containsExactly(Role.ADMINISTRATOR);

        add("two", Role.ADMINISTRATOR);
        assertThat(accounts.retire(id, NOON)).isTrue();
    }

    @Test
    void changedRolesHoldForOpenSessions() {
        String id = add("one", Role.CLERK);
        String token = signIns.withPassword("one", PASSWORD, NOON).token().orElseThrow();

        accounts.change(id, "New name", Set.of(Role.PLANNER, Role.ENGINEER));

        assertThat(signIns.find(token, NOON)).contains(new Person(id, "New name", Set.of(Role.PLANNER, Role.ENGINEER)));
    }

    @Test
    void aNewPasswordEndsOpenSessionsAndUnlocks() {
        String id = add("one", Role.CLERK);
        String token = signIns.withPassword("one", PASSWORD, NOON).token().orElseThrow();
        for (int i = 0; i < SignIns.MOST_FAILURES; i++) {
            signIns.withPassword("one", "wrong", NOON);
        }

        accounts.setPassword(id, "another long password");

        assertThat(signIns.find(token, NOON)).isEmpty();
        assertThat(signIns.withPassword("one", PASSWORD, NOON)).isEqualTo(Admission.REFUSED);
        assertThat(signIns.withPassword("one", "another long password", NOON).token())
                .isPresent();
    }

    @Test
    void peopleAreListedByNameWithTheirRoles() {
        add("zeta", Role.CLERK);
        add("Alpha", Role.ENGINEER);

        assertThat(accounts.all()).extracting(Account::display).containsExactly("Alpha", "zeta");
        assertThat(accounts.all())
                .extracting(Account::roles)
                .containsExactly(Set.of(Role.ENGINEER), Set.of(Role.CLERK));
    }

    @Test
    void theDemonstrationHasOnePersonForEachRole() {
        accounts.addDemoPeople(Messages.load(), NOON);
        accounts.addDemoPeople(Messages.load(), NOON);

        assertThat(accounts.all()).hasSize(Role.signedIn().length);
        assertThat(signIns.find(signIns.asDemo(Role.PLANNER, NOON), NOON))
                .map(Person::id)
                .contains("demo-planner");
        assertThat(signIns.withPassword("demo-planner", "", NOON)).isEqualTo(Admission.REFUSED);
    }

    @Test
    void whoDoesNotExistIsNotThere() {
        assertThatThrownBy(() -> accounts.byId("nobody")).isInstanceOf(NotThere.class);
    }

    private String add(String name, Role role) {
        return accounts.add(new Accounts.Profile(name, name, Set.of(role)), PASSWORD, NOON)
                .orElseThrow();
    }
}
