package bagclock.ovens;

import bagclock.platform.Field;
import bagclock.platform.Page;

/** By when an item is needed, and how much that counts. */
public record NeedPage(String title, String tag, String part, Field neededBy, Field weight) implements Page {
    @Override
    public String template() {
        return "ovens/need.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
