package bagclock.people;

import java.time.Instant;
import java.util.Optional;

/**
 * How an attempt to sign in ended.
 *
 * @param token of the new session; empty when refused
 * @param lockedUntil after too many wrong attempts; until then nothing is even looked at
 */
record Admission(Optional<String> token, Optional<Instant> lockedUntil) {
    static final Admission REFUSED = new Admission(Optional.empty(), Optional.empty());

    static Admission with(String token) {
        return new Admission(Optional.of(token), Optional.empty());
    }

    static Admission locked(Instant until) {
        return new Admission(Optional.empty(), Optional.of(until));
    }
}
