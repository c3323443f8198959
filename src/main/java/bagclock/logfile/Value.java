package bagclock.logfile;

import java.util.Locale;
import java.util.Set;

/** Reads a cell with a number. */
final class Value {
    /** Marks of a sensor that said nothing. */
    private static final Set<String> MISSING = Set.of(
            "", "-", "--", "---", "nan", "n/a", "na", "#n/a", "null", "none", "err", "error", "unavailable", "unknown");

    /** Numbers that stand for nothing. */
    private static final Set<Double> SENTINELS = Set.of(-99.0, -999.0, -9999.0);

    /** What can't be read. */
    static final double UNREADABLE = Double.POSITIVE_INFINITY;

    private Value() {}

    /** The number; not a number for one that is missing; {@link #UNREADABLE} for anything else. */
    static double read(String cell, boolean decimalComma) {
        int comma = cell.indexOf(',');
        String text = comma < 0 ? cell : withPoint(cell, comma, decimalComma);
        if (text.isEmpty() || !isNumber(text)) {
            return MISSING.contains(cell.toLowerCase(Locale.ROOT)) ? Double.NaN : UNREADABLE;
        }
        double value = Double.parseDouble(text);
        return value <= -99 && SENTINELS.contains(value) ? Double.NaN : value;
    }

    static boolean isValueOrMissing(String cell, boolean decimalComma) {
        return read(cell.strip(), decimalComma) != UNREADABLE;
    }

    /** In a file with commas only a quoted cell can hold one; three digits behind it may be thousands. */
    private static String withPoint(String cell, int comma, boolean decimalComma) {
        boolean mayBeThousands = cell.length() - comma == 4;
        return decimalComma || !mayBeThousands ? cell.substring(0, comma) + "." + cell.substring(comma + 1) : "";
    }

    private static boolean isNumber(String text) {
        int digits = 0;
        int points = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits++;
            } else if (c == '.') {
                points++;
            } else if (i > 0 || (c != '-' && c != '+')) {
                return false;
            }
        }
        return digits > 0 && points <= 1;
    }
}
