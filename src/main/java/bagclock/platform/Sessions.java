package bagclock.platform;

import java.time.Instant;
import java.util.Optional;

/** Where the gate asks who a token belongs to; the sign-in feature knows. */
@FunctionalInterface
public interface Sessions {
    /** The person of a session that has not ended; being asked keeps it from ending early. */
    Optional<Person> find(String token, Instant now);
}
