package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A broken table stops the start and says where and why. */
class SheetTest {
    private static final List<String> SOUND = List.of(
            "# title: Oven",
            "# document: a standard",
            "# table: table 1",
            "# units: none",
            "# blanks: none",
            "# read by: the test",
            "# checked: never",
            "# marks: seen; memory",
            "# note: one",
            "# note: two",
            "temp_c,limit,value,status,sources",
            "125,above set-point C,10,memory,",
            "125,oven %RH,none,seen,S1",
            "90,above set-point C,8,memory,",
            "90,oven %RH,5,seen,S1",
            "40,above set-point C,5,memory,",
            "40,oven %RH,5,seen,S1+S2");

    private static List<String> lines(int number, String line) {
        List<String> lines = new ArrayList<>(SOUND);
        lines.set(number - 1, line);
        return lines;
    }

    private static void read(List<String> lines) {
        Sheet.parse(Table.BAKE_LIMITS, lines).values(CellText::wholeOrNone);
    }

    @Test
    void aSoundFileGivesEachCellWithItsCitation() {
        Sheet sheet = Sheet.parse(Table.BAKE_LIMITS, SOUND);
        assertThat(sheet.cells()).hasSize(6);
        assertThat(sheet.cells().get(5))
                .isEqualTo(new Cell(
                        Table.BAKE_LIMITS,
                        "5",
                        new Citation("a standard", "table 1", "40 C", "oven %RH", Status.SEEN, "S1+S2")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "3  | # table table 1                    | unknown head line",
                "3  | # owner: nobody                    | unknown head line",
                "9  | # table: table 2                   | stands twice: table",
                "11 | temp,limit,value,status,sources    | columns must be temp_c,limit,value,status,sources",
                "12 | 125,above set-point C,10,memory    | needs 5 fields, has 4",
                "12 | 125,above set-point C,10,memory,,  | needs 5 fields, has 6",
                "13 | \"\"                               | needs 5 fields, has 1",
                "12 | 120,above set-point C,10,memory,   | expected 125,above set-point C, found 120",
                "14 | 90,oven %RH,5,seen,S1              | expected 90,above set-point C, found 90,oven",
                "12 | 125,above set-point C,,memory,     | whole number above 0, was ''",
                "12 | 125,above set-point C,1O,memory,   | whole number above 0, was '1O'",
                "12 | 125,above set-point C,0,memory,    | whole number above 0, was '0'",
                "12 | 125,above set-point C,-5,memory,   | whole number above 0, was '-5'",
                "12 | 125,above set-point C,none,memory, | whole number above 0, was 'none'",
                "12 | 125,above set-point C,10,guess,S1  | status must be seen or memory, was 'guess'",
                "12 | 125,above set-point C,10,site,S1   | status must be seen or memory, was 'site'",
                "15 | 90,oven %RH,5,seen,                | a value that was seen needs its sources"
            })
    void aBrokenLineIsNamedWithFileAndReason(int number, String line, String reason) {
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> read(lines(number, line)))
                .withMessageStartingWith("bake-limits.csv line " + number + ": ")
                .withMessageContaining(reason);
    }

    @Test
    void aMissingLineAndOneTooManyAreRefused() {
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> read(SOUND.subList(0, SOUND.size() - 1)))
                .withMessage("bake-limits.csv line 17: missing: 40,oven %RH");
        List<String> longer = new ArrayList<>(SOUND);
        longer.add("30,oven %RH,5,seen,S1");
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> read(longer))
                .withMessage("bake-limits.csv line 18: one line too many");
    }

    @Test
    void aSourceWithoutTitleIsRefused() {
        Sheet sheet = Sheet.parse(Table.BAKE_LIMITS, SOUND);
        assertThatNoException().isThrownBy(() -> sheet.requireSources(Set.of("S1", "S2")));
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> sheet.requireSources(Set.of("S1")))
                .withMessage("bake-limits.csv line 17: unknown source 'S2'");
    }

    @Test
    void anIncompleteHeadIsRefused() {
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> read(SOUND.subList(1, SOUND.size())))
                .withMessage("bake-limits.csv line 1: no head line 'title'");
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> read(SOUND.subList(0, 10)))
                .withMessageStartingWith("bake-limits.csv line 11: columns must be");
    }

    @ParameterizedTest
    @CsvSource({"8 d,192", "17 h,17"})
    void aTimeIsInHoursOrDays(String text, long hours) {
        assertThat(CellText.time(cell(text, "")).toHours()).isEqualTo(hours);
    }

    @ParameterizedTest
    @CsvSource({"8", "8d", "8 days", "-8 d", "0 h", "08 h", "1.5 h", "12345 h", "''"})
    void noOtherTimeIsRead(String text) {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> CellText.time(cell(text, "")))
                .withMessageContaining("'" + text + "'");
    }

    @ParameterizedTest
    @CsvSource({"0.5,43200000", "28,2419200000"})
    void aLifeIsInDays(String text, long ms) {
        assertThat(CellText.days(cell(text, ""))).isEqualTo(new Life(ms, 1));
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "1e3", "'1,5'", ".5", "Unlimited", "''"})
    void noOtherLifeIsRead(String text) {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> CellText.days(cell(text, "")))
                .withMessageNotContaining("null");
    }

    @Test
    void onlyLevel6HasItsLifeOnTheLabel() {
        assertThat(CellText.hours(cell("label", "level 6"))).isEmpty();
        for (Cell wrong : Arrays.asList(cell("label", "level 5"), cell("24", "level 6"))) {
            assertThatExceptionOfType(IllegalArgumentException.class)
                    .isThrownBy(() -> CellText.hours(wrong))
                    .withMessageContaining("label");
        }
    }

    private static Cell cell(String value, String row) {
        return new Cell(Table.FLOOR_LIFE, value, new Citation("", "", row, "", Status.MEMORY, ""));
    }
}
