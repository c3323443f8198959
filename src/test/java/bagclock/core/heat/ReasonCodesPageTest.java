package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What docs/reference/reason-codes.md tells of the codes stays true. */
class ReasonCodesPageTest {
    private static List<String> page() throws IOException {
        return Files.readAllLines(Path.of("docs/reference/reason-codes.md"));
    }

    @ParameterizedTest
    @EnumSource
    void eachReasonIsListedWithVerdictSourceAndStatus(FindingCode code) throws IOException {
        assertThat(page())
                .filteredOn(line -> line.startsWith("| " + code.name() + " | "))
                .singleElement()
                .asString()
                .startsWith("| " + code.name() + " | " + code.brings().code() + " |")
                .endsWith("| " + code.source() + " | " + code.status().name().toLowerCase(Locale.ROOT) + " |");
    }

    @ParameterizedTest
    @EnumSource
    void eachStepIsListedWithItsPerson(StepCode code) throws IOException {
        assertThat(page())
                .filteredOn(line -> line.startsWith("| " + code.name() + " | ")
                        && line.endsWith("| " + code.role().code() + " |"))
                .hasSize(1);
    }

    @Test
    void eachBarIsListed() throws IOException {
        for (BakeOffer.BarCode code : BakeOffer.BarCode.values()) {
            assertThat(page()).anyMatch(line -> line.startsWith("| " + code.name() + " | "));
        }
    }
}
