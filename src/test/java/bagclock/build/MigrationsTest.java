package bagclock.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A released migration is never edited: someone's database has already run it. */
class MigrationsTest {
    private static final Path MIGRATIONS = Path.of("src/main/resources/db/migration");
    private static final Path RELEASED = Path.of("src/test/resources/bagclock/build/released-migrations.txt");

    @Test
    void releasedMigrationsAreAsTheyWere() throws IOException {
        Map<String, String> now = new TreeMap<>();
        for (Path file : migrations()) {
            now.put(file.getFileName().toString(), checksum(file));
        }
        List<String> released = Files.readAllLines(RELEASED).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();

        assertThat(now.entrySet().stream()
                        .map(entry -> entry.getValue() + "  " + entry.getKey())
                        .toList())
                .as("add a new migration instead of changing one that was released")
                .containsAll(released);
    }

    @Test
    void everyMigrationHasItsOwnNumber() throws IOException {
        Map<String, Long> counts = migrations().stream()
                .map(file -> file.getFileName().toString())
                .peek(name -> assertThat(name).matches("V\\d{3}__[a-z0-9_]+\\.sql"))
                .collect(Collectors.groupingBy(name -> name.substring(0, 4), TreeMap::new, Collectors.counting()));

        assertThat(counts.values()).containsOnly(1L);
    }

    private static List<Path> migrations() throws IOException {
        try (Stream<Path> files = Files.list(MIGRATIONS)) {
            return files.sorted().toList();
        }
    }

    /** Of the text with line feeds, so that a check-out on Windows has the same. */
    private static String checksum(Path file) throws IOException {
        String text = Files.readString(file).replace("\r\n", "\n");
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
