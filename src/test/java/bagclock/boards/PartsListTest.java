package bagclock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Reason;
import bagclock.register.BoardType.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartsListTest {
    private static final String HEAD = "part number,quantity,reference designators\n";

    @Test
    void aLineNamesAPartAndWhereItSits() {
        PartsList list = PartsList.read("Part;Qty;Description;Designators\nSNR-1001;3;Front end;U1-U2,U7\n");

        assertThat(list.bad()).isEmpty();
        assertThat(list.spots())
                .containsExactly(new Spot("U1", "SNR-1001"), new Spot("U2", "SNR-1001"), new Spot("U7", "SNR-1001"));
        assertThat(list.good().get(0).description()).isEqualTo("Front end");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A-1,2,\"R1-R3\" | quantity | QUANTITY_DIFFERS",
                "A-1,two,\"R1,R2\" | quantity | NUMBER_UNREADABLE",
                "A-1,2, | reference designators | DESIGNATORS_UNREADABLE",
                "A-1,2,\"R4-R1\" | reference designators | DESIGNATORS_UNREADABLE",
                ",1,R1 | part number | TEXT_MISSING"
            })
    void aFaultIsNamedByLineAndColumn(String line, String column, Reason reason) {
        PartsList list = PartsList.read(HEAD + "B-1,1,U1\n" + line + "\n");

        assertThat(list.good()).hasSize(1);
        assertThat(list.bad()).singleElement().satisfies(bad -> {
            assertThat(bad.line()).isEqualTo(3);
            assertThat(bad.column()).isEqualTo(column);
            assertThat(bad.refusal().reason()).isEqualTo(reason);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"A-1,2", "A-1,2,R1,R2"})
    void aLineOfOtherLengthIsNamedAndTheNextIsRead(String line) {
        PartsList list = PartsList.read(HEAD + line + "\nB-1,1,U1\n");

        assertThat(list.spots()).containsExactly(new Spot("U1", "B-1"));
        assertThat(list.bad()).singleElement().satisfies(bad -> {
            assertThat(bad.line()).isEqualTo(2);
            assertThat(bad.refusal().reason()).isEqualTo(Reason.LINE_OF_OTHER_LENGTH);
        });
    }

    @Test
    void aLocationTwiceIsNamedAtItsSecondLine() {
        PartsList list = PartsList.read(HEAD + "A-1,2,R1-R2\nB-1,1,R2\n");

        assertThat(list.bad()).extracting(PartsList.BadLine::line).containsExactly(3L);
        assertThat(list.bad().get(0).refusal().reason()).isEqualTo(Reason.LOCATION_TWICE);
    }

    @Test
    void aMissingColumnIsNamedAndNothingIsRead() {
        PartsList list = PartsList.read("part number,quantity\nA-1,1\n");

        assertThat(list.good()).isEmpty();
        assertThat(list.bad()).extracting(PartsList.BadLine::column).containsExactly("reference designators");
    }

    /** Every fault is found at its own line, and every other line is kept. */
    @Test
    void twoThousandLinesWithFaultsAreSortedLineByLine() {
        SplittableRandom random = new SplittableRandom(20260312);
        StringBuilder text = new StringBuilder(HEAD);
        List<Long> faulty = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            int first = i * 4 + 1;
            String good = "P-" + i % 300 + ",3,\"R" + first + "-R" + (first + 1) + ",R" + (first + 2) + "\"";
            boolean isFaulty = random.nextInt(10) == 0;
            text.append(isFaulty ? good.replace(",3,", random.nextBoolean() ? ",4," : ",x,") : good)
                    .append('\n');
            if (isFaulty) {
                faulty.add(i + 2L);
            }
        }

        PartsList list = PartsList.read(text.toString());

        assertThat(list.bad()).extracting(PartsList.BadLine::line).containsExactlyElementsOf(faulty);
        assertThat(list.good()).hasSize(2000 - faulty.size());
        assertThat(list.spots()).hasSize(3 * list.good().size());
    }
}
