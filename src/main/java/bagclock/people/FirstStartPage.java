package bagclock.people;

import bagclock.platform.Field;
import bagclock.platform.Page;

/** Where the first person gets an account, with the code that the console printed. */
public record FirstStartPage(String title, Field code, Field display, Field signInName, Field password)
        implements Page {
    @Override
    public String template() {
        return "people/firstStart.jte";
    }
}
