package bagclock.parts;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Reason;
import bagclock.core.standard.Level;
import bagclock.parts.PartsFile.Effect;
import bagclock.register.PartType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Files of part types. */
class PartsFileTest {
    private static List<PartType> drawn(int count) {
        SomeParts some = new SomeParts(7);
        List<PartType> types = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            types.add(some.next((i % 3 == 0 ? "=" : "N-") + i));
        }
        return types;
    }

    private static PartsFile read(String text) {
        return PartsFile.read(text, number -> Optional.empty());
    }

    @Test
    void whatIsWrittenIsReadAndWrittenAgainTheSame() {
        List<PartType> types = drawn(5000);
        String written = PartsCsv.of(types);
        PartsFile file = read(written);
        assertThat(file.bad()).isEmpty();
        assertThat(file.good()).extracting(PartsFile.Line::type).isEqualTo(types);
        assertThat(PartsCsv.of(file.good().stream().map(PartsFile.Line::type).toList()))
                .isEqualTo(written);
    }

    @Test
    void aKnownPartTypeThatIsTheSameIsLeftAlone() {
        List<PartType> types = drawn(20);
        PartsFile file = PartsFile.read(
                PartsCsv.of(types),
                number -> types.stream()
                        .filter(type -> type.number().equals(number))
                        .findFirst());
        assertThat(file.good()).extracting(PartsFile.Line::effect).containsOnly(Effect.SAME);
    }

    @Test
    void aColumnThatIsNotThereLeavesWhatIsKnownAndAnEmptyFieldDoesNot() {
        PartType before = read("part_number,level,peak_c,maker,thickness_mm\nA,3,260,Gull,1.4\n")
                .good()
                .get(0)
                .type();
        PartsFile file = PartsFile.read("part_number;level;maker\nA;4;\n", number -> Optional.of(before));
        PartsFile.Line line = file.good().get(0);
        assertThat(line.effect()).isEqualTo(Effect.CHANGED);
        assertThat(line.changed()).containsExactly(Column.MAKER, Column.LEVEL);
        assertThat(line.type().maker()).isEmpty();
        assertThat(line.type().part().ratings().get(0).level()).contains(Level.L4);
        assertThat(line.type().part().body()).isEqualTo(before.part().body());
    }

    @Test
    void badLinesAreNamedByLineAndColumnAndTheGoodOnesStay() {
        PartsFile file = read("""
                part_number,level,thickness_mm,colour
                A,3,1.4,red
                B,9,thin,
                C,3
                ,3,1,
                A,4,1,
                "D",2a,"0,8",
                """);
        assertThat(file.unknownColumns()).containsExactly("colour");
        assertThat(file.bad())
                .extracting(bad ->
                        bad.line() + " " + bad.column() + " " + bad.refusal().reason())
                .containsExactly(
                        "3 level " + Reason.WORD_UNKNOWN,
                        "3 thickness_mm " + Reason.NUMBER_UNREADABLE,
                        "4  " + Reason.LINE_OF_OTHER_LENGTH,
                        "5 part_number " + Reason.TEXT_MISSING,
                        "6 part_number " + Reason.NAMED_TWICE);
        assertThat(file.good()).extracting(line -> line.type().number()).containsExactly("A", "D");
    }

    @Test
    void aFileThatIsNoneIsNamed() {
        assertThat(read("level,maker\n3,Gull\n").bad())
                .extracting(bad -> bad.refusal().reason())
                .containsExactly(Reason.COLUMN_MISSING);
        assertThat(read("part_number,level,level\nA,3,4\n").bad())
                .extracting(bad -> bad.refusal().reason())
                .containsExactly(Reason.COLUMN_TWICE);
        assertThat(read("part_number,level\nA,3\nB,\"3\nC,4\n").bad())
                .as("a quote that is not closed takes the rest of the file")
                .extracting(PartsFile.BadLine::line)
                .containsExactly(3L);
        assertThat(read("").good()).isEmpty();
    }

    @Test
    void fiveThousandLinesWithFaultsKeepEveryGoodOne() {
        StringBuilder text = new StringBuilder("part_number\tlevel\tmaker\n");
        IntStream.range(0, 5000)
                .forEach(i -> text.append("N-")
                        .append(i)
                        .append(i % 10 == 0 ? "\t7\t" : "\t3\t")
                        .append("Gull\n"));
        PartsFile file = read(text.toString());
        assertThat(file.good()).hasSize(4500);
        assertThat(file.bad()).hasSize(500);
        assertThat(file.bad().get(1).line()).isEqualTo(12);
    }
}
