package bagclock.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What docs/reference/rules.md says of classes and tests stays true: those that it names exist. */
class RulesPageTest {
    private static final Path PAGE = Path.of("docs/reference/rules.md");
    private static final Pattern CLASS = Pattern.compile("`([A-Z]\\w+)`");

    @Test
    void classesAndTestsOfThePageExist() throws IOException {
        Set<String> named = CLASS.matcher(Files.readString(PAGE))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(named).hasSizeGreaterThan(50).isSubsetOf(written());
    }

    @Test
    void eachRuleNamesATest() throws IOException {
        assertThat(Files.readAllLines(PAGE))
                .filteredOn(line -> line.startsWith("| ") && !line.startsWith("| ---") && !line.startsWith("| rule"))
                .allMatch(line -> line.contains("Test`"));
    }

    private static Set<String> written() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java"))
                    .map(name -> name.substring(0, name.length() - ".java".length()))
                    .collect(Collectors.toSet());
        }
    }
}
