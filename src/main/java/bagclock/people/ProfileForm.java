package bagclock.people;

import bagclock.platform.Messages;
import bagclock.platform.Role;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A person as entered, and what is wrong with it by field.
 *
 * @param code of the first start; empty elsewhere
 * @param errors words by the name of the field
 */
record ProfileForm(
        String code, String signInName, String display, Set<Role> roles, String password, Map<String, String> errors) {
    private static final int MOST_LENGTH = 64;

    /** A form that nothing was entered into yet. */
    static ProfileForm empty(Set<Role> roles) {
        return new ProfileForm("", "", "", roles, "", Map.of());
    }

    /** A new person. */
    static ProfileForm ofNewPerson(Context ctx, Messages messages) {
        ProfileForm form = read(ctx);
        Map<String, String> errors = new LinkedHashMap<>();
        if (!form.signInName().matches("[\\p{L}\\p{N}._-]{2," + MOST_LENGTH + "}")) {
            errors.put("signInName", messages.text("people.sign-in-name.shape", MOST_LENGTH));
        }
        form.checkDisplayAndRoles(errors, messages);
        note(errors, "password", PasswordRule.fault(form.password(), form.signInName(), messages));
        return form.with(errors);
    }

    /** The first person, who gets every role. */
    static ProfileForm ofFirstPerson(Context ctx, Messages messages) {
        Map<String, String> errors =
                new LinkedHashMap<>(ofNewPerson(ctx, messages).errors());
        errors.remove("roles");
        ProfileForm form = read(ctx);
        return new ProfileForm(
                form.code(),
                form.signInName(),
                form.display(),
                EnumSet.copyOf(Arrays.asList(Role.signedIn())),
                form.password(),
                errors);
    }

    /** A change of display name and roles. */
    static ProfileForm ofChange(Context ctx, Messages messages) {
        ProfileForm form = read(ctx);
        Map<String, String> errors = new LinkedHashMap<>();
        form.checkDisplayAndRoles(errors, messages);
        return form.with(errors);
    }

    ProfileForm refused(String field, String words) {
        Map<String, String> more = new LinkedHashMap<>(errors);
        more.put(field, words);
        return with(more);
    }

    boolean isRefused() {
        return !errors.isEmpty();
    }

    Accounts.Profile profile() {
        return new Accounts.Profile(signInName, display, roles);
    }

    String error(String field) {
        return errors.getOrDefault(field, "");
    }

    private ProfileForm with(Map<String, String> found) {
        return new ProfileForm(code, signInName, display, roles, password, Map.copyOf(found));
    }

    private void checkDisplayAndRoles(Map<String, String> errors, Messages messages) {
        if (display.isEmpty() || display.length() > MOST_LENGTH) {
            errors.put("display", messages.text("people.display.shape", MOST_LENGTH));
        }
        if (roles.isEmpty()) {
            errors.put("roles", messages.text("people.roles.none"));
        }
    }

    private static ProfileForm read(Context ctx) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (Role role : Role.signedIn()) {
            if (ctx.formParams("roles").contains(role.name())) {
                roles.add(role);
            }
        }
        return new ProfileForm(
                entered(ctx, "code").strip(),
                entered(ctx, "signInName").strip().toLowerCase(Locale.ROOT),
                entered(ctx, "display").strip(),
                roles,
                entered(ctx, "password"),
                Map.of());
    }

    private static String entered(Context ctx, String name) {
        String value = ctx.formParam(name);
        return value == null ? "" : value;
    }

    private static void note(Map<String, String> errors, String field, String fault) {
        if (!fault.isEmpty()) {
            errors.put(field, fault);
        }
    }
}
