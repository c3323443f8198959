package bagclock.tables;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Reason;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.register.ComparedCell;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Files of compared cells. */
class ConfirmationsFileTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    private static final CellValues VALUES = new CellValues(STANDARD);
    private static final LocalDate TODAY = LocalDate.parse("2026-03-12");

    private static ConfirmationsFile read(String text) {
        return ConfirmationsFile.read(text, VALUES, TODAY);
    }

    @Test
    void everyCellComesBackAsItWent() {
        List<ComparedCell> cells = STANDARD.cells().stream()
                .map(cell -> new ComparedCell(
                        cell.key(), Optional.of(cell.value()), "Someone, \"engineer\"", TODAY, "J-STD-033D, 2018"))
                .toList();
        String written = ConfirmationsFile.write("J_STD_033D", cells);
        ConfirmationsFile file = read(written);
        assertThat(file.bad()).isEmpty();
        assertThat(file.good()).extracting(ConfirmationsFile.Line::cell).isEqualTo(cells);
    }

    @Test
    void badLinesAreNamedByLineAndColumn() {
        ConfirmationsFile file = read("""
                edition,table,row,column,value,compared_by,compared_on,copy,page
                J_STD_033D,USER_BAKE,"<=1.4 mm, level 3","125 C, >72 h",9 h,Someone,2026-03-01,2018,1
                J_STD_033D,USER_BAKE,"<=1.4 mm, level 3","125 C, >72 h",8 h,Someone,2026-03-01,2018,1
                J_STD_033C,USER_BAKE,"<=1.4 mm, level 4","125 C, >72 h",9 h,Someone,2026-03-01,2018,1
                J_STD_033D,USER_BAKE,"<=1.4 mm, level 9","125 C, >72 h",9 h,Someone,2026-03-01,2018,1
                J_STD_033D,USER_BAKE,"<=1.4 mm, level 4","125 C, >72 h",soon,,2026-03-13,2018,1
                J_STD_033D,USER_BAKE
                """);
        assertThat(file.unknownColumns()).containsExactly("page");
        assertThat(file.good()).hasSize(1);
        assertThat(file.bad())
                .extracting(bad ->
                        bad.line() + " " + bad.column() + " " + bad.refusal().reason())
                .containsExactly(
                        "3 row " + Reason.NAMED_TWICE,
                        "4 edition " + Reason.EDITION_DIFFERS,
                        "5 table " + Reason.CELL_UNKNOWN,
                        "6 row " + Reason.NAMED_TWICE,
                        "6 value " + Reason.CELL_VALUE_UNREADABLE,
                        "6 compared_by " + Reason.TEXT_MISSING,
                        "6 compared_on " + Reason.DATE_UNREADABLE,
                        "7  " + Reason.LINE_OF_OTHER_LENGTH);
    }

    @Test
    void aFileWithoutItsColumnsIsRefusedAsAWhole() {
        assertThat(read("table,row\nUSER_BAKE,x\n").bad())
                .extracting(bad -> bad.refusal().reason())
                .containsOnly(Reason.COLUMN_MISSING);
    }
}
