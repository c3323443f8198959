package bagclock.core.standard;

import java.time.LocalDate;

/**
 * A cell that an engineer of the site compared with the standard: confirmed if the value is the same, else corrected.
 *
 * @param value in the form and unit of the table's file, such as {@code 8 d}, {@code 168} or {@code unlimited}
 * @param by the engineer's name
 */
public record SiteValue(CellKey key, String value, String by, LocalDate on) {
    /** Refuses with {@link IllegalArgumentException} a blank name. */
    public SiteValue {
        if (by.isBlank()) {
            throw new IllegalArgumentException("a site value needs the engineer's name");
        }
    }
}
