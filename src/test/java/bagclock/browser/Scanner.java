package bagclock.browser;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;

/** A hand scanner: 200 keys in a second by the time that stands on each, however busy this computer is. */
final class Scanner {
    private static final double SECONDS_BETWEEN = 0.005;
    private static final String CONTROL = "Control+";
    private static final int ALT_MODIFIER = 1;
    private static final int CONTROL_MODIFIER = 2;
    private static final int SHIFT_MODIFIER = 8;

    private final CDPSession keys;
    private double at = System.currentTimeMillis() / 1000.0;

    Scanner(Page page) {
        this.keys = page.context().newCDPSession(page);
    }

    /** Types a code and Enter. */
    void scan(String code) {
        type(code);
        press("Enter", "\r");
    }

    void type(String code) {
        code.chars().mapToObj(Character::toString).forEach(letter -> press(letter, letter));
    }

    /** A key that types nothing, such as F8, or the place of a key together with the control key: Control+BracketRight. */
    void press(String key) {
        boolean isChord = key.startsWith(CONTROL);
        JsonObject event = new JsonObject();
        event.addProperty(isChord ? "code" : "key", isChord ? key.substring(CONTROL.length()) : key);
        event.addProperty("modifiers", isChord ? CONTROL_MODIFIER : 0);
        event.addProperty("type", "rawKeyDown");
        send(event);
    }

    /** A key that types an accent and waits. */
    void accent(String code, boolean isShifted) {
        JsonObject event = new JsonObject();
        event.addProperty("key", "Dead");
        event.addProperty("code", code);
        event.addProperty("modifiers", isShifted ? SHIFT_MODIFIER : 0);
        event.addProperty("type", "rawKeyDown");
        send(event);
    }

    /** A character as the digits of its number on the number pad, with Alt held. */
    void alt(String digits) {
        send("rawKeyDown", "Alt", "AltLeft", ALT_MODIFIER);
        digits.chars().mapToObj(Character::toString).forEach(digit -> {
            send("rawKeyDown", digit, "Numpad" + digit, ALT_MODIFIER);
            send("keyUp", digit, "Numpad" + digit, ALT_MODIFIER);
        });
        send("keyUp", "Alt", "AltLeft", 0);
    }

    private void send(String type, String key, String code, int modifiers) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.addProperty("key", key);
        event.addProperty("code", code);
        event.addProperty("modifiers", modifiers);
        event.addProperty("timestamp", at);
        keys.send("Input.dispatchKeyEvent", event);
        at += SECONDS_BETWEEN;
    }

    private void press(String key, String text) {
        JsonObject event = new JsonObject();
        event.addProperty("key", key);
        event.addProperty("type", "keyDown");
        event.addProperty("text", text);
        send(event);
    }

    private void send(JsonObject event) {
        event.addProperty("timestamp", at);
        keys.send("Input.dispatchKeyEvent", event);
        event.remove("text");
        event.addProperty("type", "keyUp");
        keys.send("Input.dispatchKeyEvent", event);
        at += SECONDS_BETWEEN;
    }
}
