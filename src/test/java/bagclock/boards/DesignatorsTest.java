package bagclock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DesignatorsTest {
    @Test
    void listsAndRangesAreReadInTheirOrder() {
        assertThat(Designators.read("R1-R4, R7")).contains(List.of("R1", "R2", "R3", "R4", "R7"));
        assertThat(Designators.read("U9;C1..C3 Q12A")).contains(List.of("U9", "C1", "C2", "C3", "Q12A"));
        assertThat(Designators.read("R8 - 10")).contains(List.of("R8", "R9", "R10"));
        assertThat(Designators.read("D3\u2013D4")).contains(List.of("D3", "D4"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "R4-R1", "R1-C4", "R1-R9999", "R1-R3, R2", "seven", "R-1", "R1-", "1-4"})
    void whatIsNoneIsRefused(String text) {
        assertThat(Designators.read(text)).isEmpty();
    }
}
