package bagclock.platform;

import io.javalin.security.RouteRole;
import java.util.Set;

/**
 * Who is asking, as far as features may know.
 *
 * @param id stable and never reused; stands in every event
 * @param display the name shown on pages
 * @param roles at least one
 */
public record Person(String id, String display, Set<Role> roles) {
    /** Keeps its own copy of the roles. */
    public Person {
        if (roles.isEmpty()) {
            throw new IllegalArgumentException("a person needs a role: " + id);
        }
        roles = Set.copyOf(roles);
    }

    /** Whether the person has one of the given roles. */
    public boolean isOneOf(Set<? extends RouteRole> wanted) {
        return roles.stream().anyMatch(wanted::contains);
    }
}
