package bagclock.people;

import bagclock.platform.Person;
import bagclock.platform.Role;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * A person's account.
 *
 * @param id stands in events and is never reused
 * @param signInName in lower case
 * @param roles at least one
 */
record Account(
        String id,
        String signInName,
        String display,
        Optional<String> badgeCode,
        Optional<Instant> retiredAt,
        Set<Role> roles) {

    Person person() {
        return new Person(id, display, roles);
    }

    boolean isRetired() {
        return retiredAt.isPresent();
    }

    /** As an administrator entered it, to be shown again. */
    Account entered(String newDisplay, Set<Role> newRoles) {
        return new Account(id, signInName, newDisplay, badgeCode, retiredAt, newRoles);
    }

    Account withBadge(String code) {
        return new Account(id, signInName, display, Optional.of(code), retiredAt, roles);
    }
}
