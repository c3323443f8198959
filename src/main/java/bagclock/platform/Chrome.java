package bagclock.platform;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the layout needs around a page.
 *
 * @param person who is signed in
 * @param csrfToken for every form's hidden field; empty without a session
 * @param scannerMap see {@link Workstation#scannerMap}
 * @param activeFrontDoor see {@link Page#frontDoor()}
 * @param siteZone the zone's name, such as {@code Europe/Berlin}
 */
public record Chrome(
        String title,
        Optional<Person> person,
        String csrfToken,
        String scannerMap,
        String activeFrontDoor,
        boolean demo,
        String siteZone,
        Messages messages) {

    /** A fixed text of the page, from the bundle. */
    public String text(String key, Object... parts) {
        return messages.text(key, parts);
    }

    /** Whether the page lies behind this front door or menu entry. */
    public boolean isBehind(String door) {
        return activeFrontDoor.equals(door);
    }

    /** Whether the visitor has one of the roles. */
    public boolean allows(Role... roles) {
        return person.filter(visitor -> visitor.isOneOf(Set.of(roles))).isPresent();
    }

    /** The visitor's roles in words, in the order of the role's declaration. */
    public String roleWords() {
        return person.stream()
                .flatMap(visitor -> visitor.roles().stream())
                .sorted()
                .map(role -> text("role." + role.name()))
                .collect(Collectors.joining(", "));
    }
}
