package bagclock.core.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * docs/reference/diffusion.md and its drawing are written by this test when the property bagclock.write is set, and
 * compared with the model and the tables otherwise: {@code mvn test -Dtest=ResidualsPageTest -Dbagclock.write=true}.
 */
class ResidualsPageTest {
    private static final Path PAGE = Path.of("docs/reference/diffusion.md");
    private static final Path DRAWING = Path.of("docs/reference/diffusion-residuals.svg");

    @Test
    void thePageShowsTheModelAsItIs() throws IOException {
        isKept(PAGE, ResidualsPage.text());
    }

    @Test
    void theResidualsAreDrawnAsTheyAre() throws IOException {
        isKept(DRAWING, ResidualsDrawing.text());
    }

    private static void isKept(Path file, String text) throws IOException {
        if (System.getProperty("bagclock.write") != null) {
            Files.writeString(file, text);
        }
        assertThat(Files.readString(file)).isEqualTo(text);
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
