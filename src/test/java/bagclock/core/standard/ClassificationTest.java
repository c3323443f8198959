package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** P4 for the lead-free temperatures; tin-lead and the edges of the rows from memory (P1, P3). */
class ClassificationTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);

    @ParameterizedTest
    @CsvSource({
        "true,1.59,349,260",
        "true,1.59,2001,260",
        "true,1.6,349.9,260",
        "true,1.6,350,250",
        "true,2.49,2000,250",
        "true,2.49,2000.1,245",
        "true,2.5,349,250",
        "true,2.5,350,245",
        "true,5,5000,245",
        "false,2.49,349,235",
        "false,2.49,350,220",
        "false,2.5,349,220",
        "false,2.5,350,220"
    })
    void aKnownBodyHasOneCell(boolean leadFree, String mm, String mm3, double celsius) {
        assertThat(classify(leadFree, mm, mm3)).isEqualTo(new Celsius(celsius));
    }

    @ParameterizedTest
    @CsvSource({
        "true,,,245",
        "true,1.5,,260",
        "true,2.0,,245",
        "true,,100,250",
        "true,,2000,245",
        "false,,,220",
        "false,1.0,,220",
        "false,,100,220",
        ",,,220",
        ",1.0,100,235",
        ",3.0,100,220"
    })
    void anUnknownFactTakesTheLowestCellStillPossible(Boolean leadFree, String mm, String mm3, double celsius) {
        assertThat(classify(leadFree, mm, mm3)).isEqualTo(new Celsius(celsius));
    }

    private static Celsius classify(Boolean leadFree, String mm, String mm3) {
        return STANDARD.classification(
                        Optional.ofNullable(leadFree),
                        Optional.ofNullable(mm).map(Millimetres::of),
                        Optional.ofNullable(mm3).map(BigDecimal::new))
                .value();
    }
}
