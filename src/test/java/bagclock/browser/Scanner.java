package bagclock.browser;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;

/** A hand scanner: 200 keys in a second by the time that stands on each, however busy this computer is. */
final class Scanner {
    private static final double SECONDS_BETWEEN = 0.005;

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

    private void press(String key, String text) {
        JsonObject event = new JsonObject();
        event.addProperty("key", key);
        event.addProperty("timestamp", at);
        event.addProperty("type", "keyDown");
        event.addProperty("text", text);
        keys.send("Input.dispatchKeyEvent", event);
        event.remove("text");
        event.addProperty("type", "keyUp");
        keys.send("Input.dispatchKeyEvent", event);
        at += SECONDS_BETWEEN;
    }
}
