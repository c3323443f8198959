package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.Millimetres;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The derating table and the bake table class thickness differently (J-STD-033D, tables 7-1 and 4-1). */
class ThicknessClassesTest {
    @ParameterizedTest
    @CsvSource({"0.01,THIN", "2.09,THIN", "2.1,MEDIUM", "2.10,MEDIUM", "3.09,MEDIUM", "3.1,THICK", "100,THICK"})
    void deratingClassesIncludeTheirLowerLimit(String mm, DeratingClass expected) {
        assertThat(DeratingClass.of(Millimetres.of(mm))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "0.01,UP_TO_1_4",
        "1.4,UP_TO_1_4",
        "1.401,UP_TO_2_0",
        "2.0,UP_TO_2_0",
        "2.001,UP_TO_4_5",
        "4.5,UP_TO_4_5"
    })
    void bakeRowsIncludeTheirUpperLimit(String mm, BakeRow expected) {
        assertThat(BakeRow.of(Millimetres.of(mm))).contains(expected);
    }

    @Test
    void aboveTheLastRowThereIsNone() {
        assertThat(BakeRow.of(Millimetres.of("4.501"))).isEmpty();
    }
}
