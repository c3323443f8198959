package bagclock.people;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Where a session begins.
 *
 * @param demoRoles one button each; empty at a real site
 * @param isFirstStart whether nobody has an account yet
 * @param refusal why the attempt before was refused; empty when there was none
 * @param next where to go then; empty for the person's front door
 */
public record SignInPage(
        String title,
        List<Choice> demoRoles,
        boolean isFirstStart,
        Field name,
        Field password,
        Field badge,
        Field pin,
        String refusal,
        String next)
        implements Page {
    @Override
    public String template() {
        return "people/signIn.jte";
    }
}
