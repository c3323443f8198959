package bagclock.core.diffusion;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Lines of a file of expected values, without its head. */
final class ReferenceFile {
    private ReferenceFile() {}

    static Stream<List<String>> lines(String name) {
        var stream = Objects.requireNonNull(ReferenceFile.class.getResourceAsStream(name), name);
        return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                .lines()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(line -> List.of(line.split(";", -1)));
    }
}
