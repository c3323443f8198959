package bagclock.people;

import bagclock.platform.Page;
import java.util.List;

/** Everyone who has an account. */
public record PeoplePage(String title, List<Line> people) implements Page {
    /**
     * One person.
     *
     * @param roles in words
     * @param ways how the person can sign in, in words
     * @param state in words; empty for a person in service
     */
    public record Line(String id, String display, String signInName, String roles, String ways, String state) {}

    @Override
    public String template() {
        return "people/people.jte";
    }

    @Override
    public String frontDoor() {
        return "people";
    }
}
