package bagclock.parts;

import java.util.EnumSet;
import java.util.Set;

/**
 * Keeps a spreadsheet from taking a text for a formula: a free text that begins like one goes out with an apostrophe
 * before it, and comes in without.
 */
final class CellGuard {
    private static final Set<Column> FREE =
            EnumSet.of(Column.NUMBER, Column.MAKER, Column.DESCRIPTION, Column.DOCUMENT, Column.REVISION);
    private static final String STARTS = "=+-@'";
    private static final String GUARD = "'";

    private CellGuard() {}

    static String given(Column column, String text) {
        return FREE.contains(column) && isRisky(text) ? GUARD + text : text;
    }

    static String taken(Column column, String text) {
        String bare = text.strip();
        boolean guarded = FREE.contains(column) && bare.startsWith(GUARD) && isRisky(bare.substring(1));
        return guarded ? bare.substring(1) : bare;
    }

    private static boolean isRisky(String text) {
        return !text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0;
    }
}
