package bagclock.people;

import bagclock.platform.Messages;

/** What a new secret must be like. Length is what counts; no rule asks for odd characters. */
final class PasswordRule {
    static final int LEAST_LENGTH = 12;
    static final int MOST_LENGTH = 200;
    static final int LEAST_DIGITS = 4;
    static final int MOST_DIGITS = 8;

    private PasswordRule() {}

    /** What is wrong with a password, in words; empty when nothing is. */
    static String fault(String password, String signInName, Messages messages) {
        if (password.codePointCount(0, password.length()) < LEAST_LENGTH) {
            return messages.text("people.password.short", LEAST_LENGTH);
        }
        if (password.length() > MOST_LENGTH) {
            return messages.text("people.password.long", MOST_LENGTH);
        }
        boolean isOneCharacter = password.chars().distinct().count() == 1;
        return isOneCharacter || password.equalsIgnoreCase(signInName)
                ? messages.text("people.password.guessable")
                : "";
    }

    /** What is wrong with a PIN, in words; empty when nothing is. */
    static String pinFault(String pin, Messages messages) {
        if (!pin.matches("[0-9]{" + LEAST_DIGITS + "," + MOST_DIGITS + "}")) {
            return messages.text("people.pin.digits", LEAST_DIGITS, MOST_DIGITS);
        }
        return pin.chars().distinct().count() == 1 ? messages.text("people.pin.guessable") : "";
    }
}
