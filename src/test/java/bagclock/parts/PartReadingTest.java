package bagclock.parts;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Reason;
import bagclock.core.standard.Level;
import bagclock.register.PartType;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The texts of a part type: no fact is lost on the way out and in again. */
class PartReadingTest {
    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    private static Map<Column, String> texts(String... columnsAndTexts) {
        Map<Column, String> texts = new EnumMap<>(Column.class);
        texts.put(Column.NUMBER, "SNR-1");
        for (int i = 0; i < columnsAndTexts.length; i += 2) {
            texts.put(Column.parse(columnsAndTexts[i]).orElseThrow(), columnsAndTexts[i + 1]);
        }
        return texts;
    }

    private static PartType read(String... columnsAndTexts) {
        PartReading.Read read = PartReading.of(texts(columnsAndTexts));
        assertThat(read.faults()).isEmpty();
        return read.type().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFactIsReadBackAsItWasWritten(long seed) {
        PartType type = new SomeParts(seed).next("N-" + seed);
        PartReading.Read read = PartReading.of(PartWriting.of(type));
        assertThat(read.faults()).isEmpty();
        assertThat(read.type()).contains(type);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theFormShowsEveryFactToo(long seed) {
        PartType type = new SomeParts(seed).next("N-" + seed);
        Map<Column, String> texts = new EnumMap<>(Column.class);
        PartForms.values(type)
                .forEach((name, text) -> texts.put(Column.parse(name).orElseThrow(), text));
        assertThat(PartReading.of(texts).type()).contains(type);
    }

    @Test
    void nothingEnteredStaysUnknown() {
        PartType type = read();
        assertThat(type.part().ratings().get(0).level()).isEmpty();
        assertThat(type.part().body().thickness()).isEmpty();
        assertThat(type.part().maker().maxReflowPasses()).isEqualTo(3);
    }

    @Test
    void aLevelIsReadAsLabelsPutIt() {
        for (String text : List.of("2A", "msl 2a", "Level 2a", "2a")) {
            assertThat(read("level", text).part().ratings().get(0).level()).contains(Level.L2A);
        }
    }

    @Test
    void aPastedTableIsReadLineByLine() {
        PartType type = read("floor_life_table", "30\t60\t168\r\n30 C 70 %RH 96,5 h");
        assertThat(type.part().maker().derating().orElseThrow().cells()).hasSize(2);
        assertThat(type.part().maker().derating().get().cells().get(1).life())
                .isEqualTo(Duration.ofMinutes(96 * 60 + 30));
    }

    @Test
    void aLifeIsRoundedDownAndABakeUp() {
        PartType type = read("floor_life_h", "0.0000006", "bakes", "125 C 0.0000006 h");
        assertThat(type.part().maker().floorLife()).contains(Duration.ofMillis(2));
        assertThat(type.part().maker().bakes().get(0).time()).isEqualTo(Duration.ofMillis(3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "level|7|WORD_UNKNOWN",
                "body|cube|WORD_UNKNOWN",
                "lead_free|maybe|WORD_UNKNOWN",
                "thickness_mm|thin|NUMBER_UNREADABLE",
                "thickness_mm|0|NUMBER_OUT_OF_RANGE",
                "thickness_mm|1.1234567|TOO_MANY_DECIMALS",
                "floor_life_h|1,000|COMMA_UNCLEAR",
                "floor_life_h|0|NUMBER_OUT_OF_RANGE",
                "shelf_months|12.5|NUMBER_NOT_WHOLE",
                "peak_c|1e3|NUMBER_UNREADABLE",
                "bakes|24 h at 125|ENTRY_UNREADABLE",
                "bakes|125 C 24 h; 501 C 1 h|NUMBER_OUT_OF_RANGE",
                "floor_life_table|30 C 168 h|ENTRY_UNREADABLE",
                "more_ratings|3 240|ENTRY_UNREADABLE"
            })
    void whatCannotBeReadIsNamedByItsField(String column, String text, Reason reason) {
        PartReading.Read read = PartReading.of(texts(column, text));
        assertThat(read.type()).isEmpty();
        assertThat(read.faults())
                .allMatch(fault -> fault.column().code().equals(column))
                .extracting(fault -> fault.refusal().reason())
                .contains(reason);
    }

    @Test
    void everyFaultIsNamedNotTheFirstAlone() {
        PartReading.Read read = PartReading.of(texts("level", "x", "width_mm", "y", "max_bakes", "z"));
        assertThat(read.faults()).hasSize(3);
    }

    @Test
    void whatCannotBeRightIsRefused() {
        assertThat(refused("peak_c", "245", "level", "3", "more_ratings", "4@245"))
                .contains(Reason.RATING_TWICE);
        assertThat(refused("level", "3", "more_ratings", "4@245")).contains(Reason.RATING_WITHOUT_PEAK);
        assertThat(refused("max_bake_c", "90", "bakes", "125 C 24 h")).contains(Reason.BAKE_ABOVE_OWN_LIMIT);
        assertThat(refused("peak_c", "220", "bakes", "230 C 1 h")).contains(Reason.BAKE_ABOVE_PEAK);
        assertThat(refused("floor_life_table", "30 C 60 % 24 h; 30 60 48")).contains(Reason.CELL_TWICE);
    }

    private static List<Reason> refused(String... columnsAndTexts) {
        List<Reason> reasons = new ArrayList<>();
        PartReading.Read read = PartReading.of(texts(columnsAndTexts));
        assertThat(read.type()).isEqualTo(Optional.empty());
        read.faults().forEach(fault -> reasons.add(fault.refusal().reason()));
        return reasons;
    }
}
