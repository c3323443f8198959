package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Double entry: a wrong digit in a table needs the same slip twice. */
class SecondReadingTest {
    @Test
    void everyShippedCellStandsInTheSecondReadingToo() throws IOException {
        Map<CellKey, String> second;
        try (InputStream stream = SecondReadingTest.class.getResourceAsStream("second-reading-d2018.txt")) {
            second = SecondReading.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        }
        Map<CellKey, String> shipped = new LinkedHashMap<>();
        for (Cell cell : Standard.load(Edition.J_STD_033D).cells()) {
            shipped.put(
                    cell.key(), cell.value() + " " + cell.citation().status().code());
        }
        assertThat(second).hasSize(762).containsExactlyInAnyOrderEntriesOf(shipped);
    }
}
