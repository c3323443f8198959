package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SourcesTest {
    private static final String COLUMNS = "id|title|link";

    @Test
    void linksAreSplitAndMayBeNone() {
        assertThat(Sources.parse(List.of("# head", COLUMNS, "S1|A title, with comma|http://a http://b", "T|Here|")))
                .containsExactly(
                        new Source("S1", "A title, with comma", List.of("http://a", "http://b")),
                        new Source("T", "Here", List.of()));
    }

    @Test
    void aBrokenLineIsNamedWithFileAndReason() {
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> Sources.parse(List.of("id,title,link")))
                .withMessageStartingWith("sources.csv line 1: columns must be");
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> Sources.parse(List.of("# head")))
                .withMessageStartingWith("sources.csv line 2: columns must be");
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> Sources.parse(List.of(COLUMNS, "S1|title")))
                .withMessageStartingWith("sources.csv line 2: needs id, title and link");
        assertThatExceptionOfType(BrokenTable.class)
                .isThrownBy(() -> Sources.parse(List.of(COLUMNS, "S1|a|", "S1|b|")))
                .withMessage("sources.csv line 3: stands twice: S1");
    }

    @Test
    void everySourceOfACellIsListed() {
        Standard standard = Standard.load(Edition.J_STD_033D);
        Set<String> listed = standard.sources().stream().map(Source::id).collect(Collectors.toSet());
        for (Cell cell : standard.cells()) {
            String sources = cell.citation().sources();
            if (!sources.isEmpty()) {
                assertThat(listed).contains(sources.split("\\+"));
            }
        }
    }
}
