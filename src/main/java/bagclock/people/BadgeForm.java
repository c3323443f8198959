package bagclock.people;

import bagclock.platform.Messages;
import io.javalin.http.Context;

/**
 * A badge and its PIN as entered, and what is wrong with each.
 *
 * @param codeError in words; empty when nothing is wrong
 * @param pinError in words; empty when nothing is wrong
 */
record BadgeForm(String code, String pin, String codeError, String pinError) {
    private static final int LEAST_LENGTH = 4;
    private static final int MOST_LENGTH = 64;

    static BadgeForm read(Context ctx, Messages messages) {
        String code = entered(ctx, "badge").strip();
        String pin = entered(ctx, "pin");
        boolean isCode = code.length() >= LEAST_LENGTH && code.length() <= MOST_LENGTH;
        return new BadgeForm(
                code,
                pin,
                isCode ? "" : messages.text("people.badge.shape", LEAST_LENGTH, MOST_LENGTH),
                PasswordRule.pinFault(pin, messages));
    }

    boolean isRefused() {
        return !codeError.isEmpty() || !pinError.isEmpty();
    }

    BadgeForm taken(String words) {
        return new BadgeForm(code, pin, words, pinError);
    }

    private static String entered(Context ctx, String name) {
        String value = ctx.formParam(name);
        return value == null ? "" : value;
    }
}
