package bagclock.people;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.platform.OnBothDatabases;
import bagclock.platform.Person;
import bagclock.platform.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SignInsTest extends OnBothDatabases {
    private static final Instant NOON = Instant.parse("2026-03-05T12:00:00Z");
    private static final String PASSWORD = "tide gauge and teapot";

    private Accounts accounts;
    private SignIns signIns;
    private String id;

    @BeforeEach
    void addSomeone() {
        accounts = new Accounts(database);
        signIns = new SignIns(database);
        id = accounts.add(new Accounts.Profile("bench.one", "Bench one", Set.of(Role.TECHNICIAN)), PASSWORD, NOON)
                .orElseThrow();
    }

    @Test
    void theRightPasswordBeginsASessionOfThatPerson() {
        String token =
                signIns.withPassword(" Bench.One ", PASSWORD, NOON).token().orElseThrow();

        assertThat(signIns.find(token, NOON)).contains(new Person(id, "Bench one", Set.of(Role.TECHNICIAN)));
    }

    @Test
    void aWrongPasswordAndAnUnknownNameAreRefusedAlike() {
        assertThat(signIns.withPassword("bench.one", "another password", NOON)).isEqualTo(Admission.REFUSED);
        assertThat(signIns.withPassword("nobody", PASSWORD, NOON)).isEqualTo(Admission.REFUSED);
    }

    @Test
    void onlyHashesAreKept() {
        String token = signIns.withPassword("bench.one", PASSWORD, NOON).token().orElseThrow();

        String stored = database.read(tx -> String.join(
                " ",
                tx.handle()
                        .createQuery("select token_hash from sign_in_session union select secret_hash from credential")
                        .mapTo(String.class)
                        .list()));

        assertThat(stored).contains("$argon2id$").doesNotContain(token).doesNotContain(PASSWORD);
    }

    @Test
    void fiveWrongAttemptsLockThePasswordForAWhileEvenWhenItIsRightThen() {
        for (int i = 1; i < SignIns.MOST_FAILURES; i++) {
            assertThat(signIns.withPassword("bench.one", "wrong", NOON)).isEqualTo(Admission.REFUSED);
        }
        Instant end = NOON.plus(SignIns.LOCKED_FOR);

        assertThat(signIns.withPassword("bench.one", "wrong", NOON)).isEqualTo(Admission.locked(end));
        assertThat(signIns.withPassword("bench.one", PASSWORD, end.minusSeconds(1)))
                .isEqualTo(Admission.locked(end));
        assertThat(signIns.withPassword("bench.one", PASSWORD, end).token()).isPresent();
    }

    @Test
    void afterALockOneMoreWrongAttemptLocksAgain() {
        for (int i = 0; i < SignIns.MOST_FAILURES; i++) {
            signIns.withPassword("bench.one", "wrong", NOON);
        }
        Instant later = NOON.plus(SignIns.LOCKED_FOR);

        assertThat(signIns.withPassword("bench.one", "wrong", later))
                .isEqualTo(Admission.locked(later.plus(SignIns.LOCKED_FOR)));
    }

    @Test
    void theRightPasswordForgetsTheWrongOnesBefore() {
        for (int i = 0; i < 3 * SignIns.MOST_FAILURES; i++) {
            boolean isRight = i % (SignIns.MOST_FAILURES - 1) == 0;
            Admission admission = signIns.withPassword("bench.one", isRight ? PASSWORD : "wrong", NOON);

            assertThat(admission.token().isPresent()).isEqualTo(isRight);
        }
    }

    @Test
    void aBadgeNeedsItsPin() {
        assertThat(accounts.setBadge(id, "HQ-0007", "4711")).isTrue();

        assertThat(signIns.withBadge("HQ-0007", "4712", NOON)).isEqualTo(Admission.REFUSED);
        assertThat(signIns.withBadge("HQ-0007", "4711", NOON).token()).isPresent();
        assertThat(signIns.withBadge("HQ-0008", "4711", NOON)).isEqualTo(Admission.REFUSED);
    }

    @Test
    void aSessionAtASharedTerminalEndsAfterHalfAnHourWithoutUse() {
        accounts.setBadge(id, "HQ-0007", "4711");
        String token = signIns.withBadge("HQ-0007", "4711", NOON).token().orElseThrow();
        Duration almost = Duration.ofMinutes(29);

        assertThat(signIns.find(token, NOON.plus(almost))).isPresent();
        assertThat(signIns.find(token, NOON.plus(almost).plus(almost))).isPresent();
        assertThat(signIns.find(token, NOON.plus(almost).plus(almost).plus(Duration.ofMinutes(30))))
                .isEmpty();
    }

    @Test
    void noSessionOutlivesADay() {
        String token = signIns.withPassword("bench.one", PASSWORD, NOON).token().orElseThrow();
        for (int hour = 1; hour < 24; hour++) {
            assertThat(signIns.find(token, NOON.plus(Duration.ofHours(hour)))).isPresent();
        }

        assertThat(signIns.find(token, NOON.plus(SignIns.LONGEST_SESSION))).isEmpty();
    }

    @Test
    void signingOutEndsTheSession() {
        String token = signIns.withPassword("bench.one", PASSWORD, NOON).token().orElseThrow();

        signIns.end(token);

        assertThat(signIns.find(token, NOON)).isEqualTo(Optional.empty());
    }
}
