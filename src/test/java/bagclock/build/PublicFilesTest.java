package bagclock.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every browser has to fetch stays small and comes from here. */
class PublicFilesTest {
    private static final Path PUBLIC = Path.of("src/main/resources/public");
    private static final long MOST_SCRIPT_BYTES = 60_000;
    private static final Pattern ELSEWHERE = Pattern.compile("@import|url\\(|@font-face");

    @Test
    void allScriptIsBelowSixtyKilobytes() throws IOException {
        long bytes = 0;
        for (Path script : files(".js")) {
            bytes += Files.size(script);
        }

        assertThat(bytes).isPositive().isLessThan(MOST_SCRIPT_BYTES);
    }

    @Test
    void styleFetchesNothing() throws IOException {
        for (Path style : files(".css")) {
            assertThat(Files.readString(style)).as(style.toString()).doesNotContainPattern(ELSEWHERE);
        }
    }

    private static List<Path> files(String ending) throws IOException {
        try (Stream<Path> files = Files.walk(PUBLIC)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }
}
