package bagclock.platform;

import java.util.Optional;

/**
 * What the layout needs around a page.
 *
 * @param person who is signed in
 * @param csrfToken for every form's hidden field; empty without a session
 * @param activeFrontDoor see {@link Page#frontDoor()}
 * @param siteZone the zone's name, such as {@code Europe/Berlin}
 */
public record Chrome(
        String title,
        Optional<Person> person,
        String csrfToken,
        String activeFrontDoor,
        boolean demo,
        String siteZone,
        Messages messages) {

    /** A fixed text of the page, from the bundle. */
    public String text(String key, Object... parts) {
        return messages.text(key, parts);
    }
}
