package bagclock.register;

import bagclock.core.standard.CellKey;
import bagclock.core.standard.SiteValue;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A cell that somebody compared with a copy of the standard.
 *
 * @param value in the form and unit of the table's file; empty when the comparison is taken back, so that the shipped
 *     value counts again
 * @param by name of who compared; may be of another site
 * @param on the day of the comparison
 * @param copy the edition or printing that it was compared with
 */
public record ComparedCell(CellKey key, Optional<String> value, String by, LocalDate on, String copy) {
    /** What counts from now on; empty when it was taken back. */
    public Optional<SiteValue> siteValue() {
        return value.map(text -> new SiteValue(key, text, by, on));
    }
}
