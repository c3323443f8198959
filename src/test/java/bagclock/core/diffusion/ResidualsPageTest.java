package bagclock.core.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * docs/reference/diffusion.md is written by this test when the property bagclock.write is set, and compared with the
 * model and the tables otherwise: {@code mvn test -Dtest=ResidualsPageTest -Dbagclock.write=true}.
 */
class ResidualsPageTest {
    private static final Path PAGE = Path.of("docs/reference/diffusion.md");

    @Test
    void thePageShowsTheModelAsItIs() throws IOException {
        String page = ResidualsPage.text();
        if (System.getProperty("bagclock.write") != null) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page);
    }

    /** The constants of the class that was read are the best fit to its cells, within a step of the search. */
    @Test
    void theFitToTheClassThatWasReadGivesTheConstants() {
        assertThat(FloorLifeFit.of(">=3.1 mm", "2a").depthMm()).isCloseTo(Constant.DEPTH_2A.value(), tolerance());
        assertThat(FloorLifeFit.of(">=3.1 mm", "3").depthMm()).isCloseTo(Constant.DEPTH_3.value(), tolerance());
    }

    private static Offset<Double> tolerance() {
        return within(0.06);
    }
}
