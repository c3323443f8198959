package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.Celsius;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanMatchTest {
    private static final Instant START = Instant.parse("2026-03-12T08:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "A, O1, 125, 0, AS_PLANNED",
        "A, O1, 125, 60, AS_PLANNED",
        "A, O1, 125, -60, AS_PLANNED",
        "A, O1, 125, 61, OTHER_TIME",
        "A, O1, 125, -61, OTHER_TIME",
        "A, O1, 90, 0, OTHER_TEMPERATURE",
        "A, O2, 125, 0, OTHER_OVEN",
        "A, O2, 90, 600, OTHER_OVEN",
        "B, O1, 125, 0, NOT_PLANNED"
    })
    void aLotIsComparedWithItsRun(String lot, String oven, double temperature, int minutes, PlanMatch expected) {
        Run run = new Run("O1", new Celsius(125), List.of(new Run.Stay("A", START, START.plusSeconds(36_000))));
        Instant at = START.plusSeconds(minutes * 60L);

        assertThat(PlanMatch.of(new Plan(List.of(run)), lot, oven, new Celsius(temperature), at))
                .isEqualTo(expected);
    }
}
