package bagclock.people;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * One person, and what an administrator can do about the account.
 *
 * @param done what the last act did, in words; empty when there was none
 * @param refusal why the last act was refused as a whole; empty when it was not
 * @param retired since when, in words; empty for a person in service
 */
public record PersonPage(
        String id,
        String title,
        String signInName,
        String done,
        String refusal,
        String retired,
        Field display,
        Field roles,
        List<Choice> roleChoices,
        Field password,
        Field badge,
        Field pin)
        implements Page {
    @Override
    public String template() {
        return "people/person.jte";
    }

    @Override
    public String frontDoor() {
        return "people";
    }
}
