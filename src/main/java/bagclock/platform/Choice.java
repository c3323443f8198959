package bagclock.platform;

/**
 * One of the values that a field offers.
 *
 * @param value sent in the request; without commas
 * @param note smaller words under the label; empty for none
 */
public record Choice(String value, String label, String note) {
    /** A choice that needs no further words. */
    public static Choice of(String value, String label) {
        return new Choice(value, label, "");
    }
}
