package bagclock.tables;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.standard.CellKey;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import bagclock.register.ComparedCell;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A comparison as entered: name, day and copy once, and for each cell a tick or another value. A cell that was neither
 * ticked nor altered is not compared.
 */
final class ComparisonForm {
    static final String BY = "by";
    static final String ON = "on";
    static final String COPY = "copy";
    static final String BASED_ON = "basedOn";
    static final String GRID = "grid";

    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_COPY = 120;

    private ComparisonForm() {}

    /** Name of the field of a cell: what is read in the copy. */
    static String value(String number) {
        return "v" + number;
    }

    /** Name of the field that keeps what the form was made with. */
    static String was(String number) {
        return "w" + number;
    }

    /** Name of the tick of a cell: the copy says the same. */
    static String tick(String number) {
        return "t" + number;
    }

    /** Name of the tick of a row. */
    static String rowTick(int row) {
        return "r" + row;
    }

    /** The cells that were compared; what is wrong is noted by field. */
    static List<ComparedCell> cells(Entered entered, Layout.Grid grid, CellValues values, LocalDate today) {
        Texts texts = entered.texts();
        String by = words(entered, BY, LONGEST_NAME);
        String copy = words(entered, COPY, LONGEST_COPY);
        Optional<LocalDate> on = Days.past(entered.text(ON), today);
        if (on.isEmpty()) {
            entered.refuse(ON, texts.refusal(Refusal.of(Reason.DATE_UNREADABLE, entered.text(ON))));
        }
        List<ComparedCell> compared = new ArrayList<>();
        for (int row = 0; row < grid.rows().size(); row++) {
            boolean all = entered.isChecked(rowTick(row));
            for (Layout.Placed placed : grid.rows().get(row).cells()) {
                String number = Integer.toString(placed.number());
                String text = entered.text(value(number));
                boolean altered = !text.equals(entered.text(was(number)));
                CellKey key = placed.cell().key();
                if (altered && !values.takes(key, text)) {
                    entered.refuse(value(number), texts.refusal(Refusal.of(Reason.CELL_VALUE_UNREADABLE, text)));
                } else if (altered || all || entered.isChecked(tick(number))) {
                    compared.add(new ComparedCell(key, Optional.of(text), by, on.orElse(today), copy));
                }
            }
        }
        return compared;
    }

    private static String words(Entered entered, String name, int longest) {
        String text = entered.required(name);
        if (text.length() > longest) {
            entered.refuse(name, entered.texts().refusal(Refusal.of(Reason.TEXT_TOO_LONG, longest)));
        }
        return text;
    }
}
