package bagclock.platform;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One field of a form as a page shows it: what was entered stays, and what is wrong with it stands beside it.
 *
 * @param name of the field in the request; also its id on the page
 * @param hint empty for none
 * @param value as entered; of several chosen values, separated by commas
 * @param error why it was refused, in words; empty when it was not
 */
public record Field(String name, String label, String hint, String value, String error) {
    /** A field without a hint that was not refused. */
    public static Field of(String name, String label, String value) {
        return new Field(name, label, "", value, "");
    }

    /** The same field with a hint. */
    public Field hinting(String words) {
        return new Field(name, label, words, value, error);
    }

    /** The same field, refused in these words; not refused when they are empty. */
    public Field refused(String words) {
        return new Field(name, label, hint, value, words);
    }

    /** Whether what was entered can't be taken. */
    public boolean isRefused() {
        return !error.isEmpty();
    }

    /** Whether the choice is taken: the only one, which may have commas in its value, or one of several. */
    public boolean holds(Choice choice) {
        return value.equals(choice.value()) || List.of(value.split(",")).contains(choice.value());
    }

    /** The ids of the texts that belong to the field, or null for none: a template leaves the attribute out then. */
    public @Nullable String describedBy() {
        String ids = (hint.isEmpty() ? "" : name + "-hint ") + (isRefused() ? name + "-error" : "");
        return ids.isEmpty() ? null : ids.strip();
    }
}
