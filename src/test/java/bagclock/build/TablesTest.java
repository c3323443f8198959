package bagclock.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every table of the standard says what it is, and every cell of it where it was read. */
class TablesTest {
    private static final Path TABLES = Path.of("src/main/resources/bagclock/core/standard");
    private static final String SOURCES = "sources.csv";
    private static final Set<String> STATUS = Set.of("seen", "memory", "inference");

    static Stream<Path> tables() throws IOException {
        try (Stream<Path> files = Files.walk(TABLES)) {
            return files
                    .filter(file -> file.toString().endsWith(".csv") && !file.endsWith(SOURCES))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void theHeadNamesDocumentTableUnitsAndReader(Path table) throws IOException {
        Set<String> head = Files.readAllLines(table).stream()
                .filter(line -> line.startsWith("# "))
                .map(line -> line.substring(2).split(":", 2)[0])
                .collect(Collectors.toSet());

        assertThat(head).contains("title", "document", "table", "units", "blanks", "read by", "checked");
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyCellIsCited(Path table) throws IOException {
        Set<String> known = Files.readAllLines(table.resolveSibling(SOURCES)).stream()
                .map(line -> line.split("\\|", 2)[0])
                .collect(Collectors.toSet());
        List<String[]> rows = Files.readAllLines(table).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(",", -1))
                .toList();
        int status = Arrays.asList(rows.get(0)).indexOf("status");
        int sources = Arrays.asList(rows.get(0)).indexOf("sources");

        assertThat(rows).hasSizeGreaterThan(1);
        for (String[] row : rows.subList(1, rows.size())) {
            assertThat(STATUS).as(Arrays.toString(row)).contains(row[status]);
            if (row[sources].isEmpty()) {
                assertThat(row[status]).as(Arrays.toString(row)).isNotEqualTo("seen");
            } else {
                assertThat(known).as(Arrays.toString(row)).contains(row[sources].split("\\+", -1));
            }
        }
    }
}
