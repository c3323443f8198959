package bagclock.people;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/** The form for a new person. */
public record NewPersonPage(
        String title, Field display, Field signInName, Field roles, List<Choice> roleChoices, Field password)
        implements Page {
    @Override
    public String template() {
        return "people/newPerson.jte";
    }

    @Override
    public String frontDoor() {
        return "people";
    }
}
