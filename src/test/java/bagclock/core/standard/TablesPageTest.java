package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What docs/reference/tables.md tells of the files stays true. */
class TablesPageTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);

    private static List<String> page() throws IOException {
        return Files.readAllLines(Path.of("docs/reference/tables.md"));
    }

    @ParameterizedTest
    @EnumSource
    void eachFileIsListedWithItsCellsAndHowManyAreFromMemory(Table table) throws IOException {
        List<Cell> cells =
                STANDARD.cells().stream().filter(cell -> cell.table() == table).toList();
        long memory = cells.stream()
                .filter(cell -> cell.citation().status() == Status.MEMORY)
                .count();
        assertThat(page())
                .filteredOn(line -> line.startsWith("| `" + table.fileName() + "`"))
                .singleElement()
                .asString()
                .contains("| " + cells.size() + " | " + memory + " |")
                .contains(cells.get(0).citation().document() + ", "
                        + cells.get(0).citation().table());
    }

    @Test
    void eachSourceIsListedWithTitleAndLinks() throws IOException {
        List<String> page = page();
        for (Source source : STANDARD.sources()) {
            assertThat(page)
                    .filteredOn(line -> line.startsWith("| " + source.id() + " | " + source.title() + " |"))
                    .singleElement()
                    .asString()
                    .satisfies(line -> assertThat(source.links()).allMatch(line::contains));
        }
        assertThat(page).anyMatch(line -> line.contains(STANDARD.cells().size() + " cells " + STANDARD.memoryCells()));
    }
}
