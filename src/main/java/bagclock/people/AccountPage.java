package bagclock.people;

import bagclock.platform.Field;
import bagclock.platform.Page;

/** Where a person changes the own password. */
public record AccountPage(String title, Field current, Field password) implements Page {
    @Override
    public String template() {
        return "people/account.jte";
    }
}
