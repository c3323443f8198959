package bagclock.people;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts accounts into words. */
final class PersonPages {
    private final Messages messages;
    private final Texts texts;

    PersonPages(Messages messages, Texts texts) {
        this.messages = messages;
        this.texts = texts;
    }

    /**
     * What the page says about the last act.
     *
     * @param done empty when nothing was done
     * @param refusal of the act as a whole; empty for none
     * @param errors words by the name of the field
     */
    record Said(String done, String refusal, Map<String, String> errors) {
        String error(String field) {
            return errors.getOrDefault(field, "");
        }
    }

    PeoplePage list(List<Account> accounts) {
        return new PeoplePage(
                messages.text("people.title"), accounts.stream().map(this::line).toList());
    }

    NewPersonPage empty(ProfileForm form) {
        return new NewPersonPage(
                messages.text("people.new"),
                display(form.display()).refused(form.error("display")),
                Field.of("signInName", messages.text("people.sign-in-name"), form.signInName())
                        .hinting(messages.text("people.sign-in-name.hint"))
                        .refused(form.error("signInName")),
                roles(form.roles()).refused(form.error("roles")),
                roleChoices(),
                password().refused(form.error("password")));
    }

    PersonPage of(Account account, Said said) {
        return new PersonPage(
                account.id(),
                account.display(),
                account.signInName(),
                said.done(),
                said.refusal(),
                account.retiredAt()
                        .map(at -> messages.text("people.retired-since", texts.at(at)))
                        .orElse(""),
                display(account.display()).refused(said.error("display")),
                roles(account.roles()).refused(said.error("roles")),
                roleChoices(),
                password().refused(said.error("password")),
                Field.of(
                                "badge",
                                messages.text("people.badge"),
                                account.badgeCode().orElse(""))
                        .hinting(messages.text("people.badge.hint"))
                        .refused(said.error("badge")),
                Field.of("pin", messages.text("people.pin"), "")
                        .hinting(
                                messages.text("people.pin.digits", PasswordRule.LEAST_DIGITS, PasswordRule.MOST_DIGITS))
                        .refused(said.error("pin")));
    }

    private PeoplePage.Line line(Account account) {
        String ways = account.badgeCode().isPresent() ? "people.ways.both" : "people.ways.password";
        return new PeoplePage.Line(
                account.id(),
                account.display(),
                account.signInName(),
                account.roles().stream()
                        .sorted()
                        .map(role -> messages.text("role." + role.name()))
                        .collect(Collectors.joining(", ")),
                messages.text(ways),
                account.retiredAt()
                        .map(at -> messages.text("people.retired-since", texts.at(at)))
                        .orElse(""));
    }

    private Field display(String value) {
        return Field.of("display", messages.text("people.display"), value)
                .hinting(messages.text("people.display.hint"));
    }

    private Field roles(Set<Role> roles) {
        String value = roles.stream().map(Role::name).collect(Collectors.joining(","));
        return Field.of("roles", messages.text("people.roles"), value);
    }

    private Field password() {
        return Field.of("password", messages.text("people.password"), "")
                .hinting(messages.text("people.password.hint", PasswordRule.LEAST_LENGTH));
    }

    private List<Choice> roleChoices() {
        return Arrays.stream(Role.signedIn())
                .map(role -> new Choice(
                        role.name(),
                        messages.text("demo." + role.name()),
                        messages.text("demo." + role.name() + ".does")))
                .toList();
    }
}
