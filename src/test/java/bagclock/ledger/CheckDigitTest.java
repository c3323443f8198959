package bagclock.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO/IEC 7064, MOD 11,10. */
class CheckDigitTest {
    /** The standard's own example (0794, check digit 5) and the German tax number's published example; from memory. */
    @ParameterizedTest
    @CsvSource({"0794, 5", "8609574271, 9"})
    void itIsTheOneOfTheStandard(String digits, int check) {
        assertThat(CheckDigit.of(digits)).isEqualTo(check);
    }

    @Test
    void everyWrongDigitIsNoticed() {
        String tag = CheckDigit.tag(1042);
        assertThat(CheckDigit.isMisread(tag)).isFalse();
        for (int i = 1; i < tag.length(); i++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                String other = tag.substring(0, i) + digit + tag.substring(i + 1);
                assertThat(CheckDigit.isMisread(other)).as(other).isEqualTo(digit != tag.charAt(i));
            }
        }
    }

    @Test
    void whatWasNotDrawnHereIsNotJudged() {
        assertThat(CheckDigit.isMisread("R-401")).isFalse();
        assertThat(CheckDigit.isMisread("LINE")).isFalse();
        assertThat(CheckDigit.isMisread("R123")).isFalse();
    }
}
