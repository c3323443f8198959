package bagclock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The contract on the command line: 0 with an answer, 2 with a clear message on standard error. */
class AssessCommandTest {
    private static final String GOOD = "{\"part\":{\"level\":\"1\"},\"history\":[{\"at\":\"2026-03-01T00:00:00Z\","
            + "\"event\":\"to-floor\"}],\"at\":\"2026-03-05T00:00:00Z\"}";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    private int run(String... arguments) {
        return Main.commandLine(Clock.systemUTC())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    private String file(String content) throws IOException {
        Path file = folder.resolve("request.json");
        Files.writeString(file, content);
        return file.toString();
    }

    @Test
    void aRequestIsAnsweredWithStatus0() throws IOException {
        assertThat(run("assess", file(GOOD))).isZero();
        assertThat(out.toString()).contains("\"verdict\" : \"clear\"");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void anArrayIsAnsweredAsAnArray() throws IOException {
        assertThat(run("assess", file("[" + GOOD + "," + GOOD + "]"))).isZero();
        assertThat(out.toString().strip()).startsWith("[").endsWith("]");
    }

    @Test
    void standardInputIsReadForADash() {
        InputStream usual = System.in;
        try {
            System.setIn(new ByteArrayInputStream(GOOD.getBytes(StandardCharsets.UTF_8)));
            assertThat(run("assess", "-")).isZero();
            assertThat(out.toString()).contains("NO_FLOOR_LIFE");
        } finally {
            System.setIn(usual);
        }
    }

    @Test
    void aBadRequestEndsWithStatus2AndEveryProblemOnStandardError() throws IOException {
        assertThat(run("assess", file("{\"part\":{\"levle\":\"3\",\"thicknessMm\":0}}")))
                .isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .contains("part.levle is not a field")
                .contains("part.thicknessMm must be")
                .contains("at is required")
                .doesNotContain("Exception");
    }

    @Test
    void aFileThatCannotBeReadEndsWithStatus2() {
        assertThat(run("assess", folder.resolve("missing.json").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("can't be read").contains("missing.json");
        assertThat(run("assess", "bad\0name")).isEqualTo(2);
    }

    @Test
    void withoutAFileTheUsageIsSaid() {
        assertThat(run("assess")).isEqualTo(2);
        assertThat(err.toString()).contains("FILE");
    }
}
