package bagclock.build;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Main;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The commands and files that the documents name exist. */
class ReadmeTest {
    private static final Pattern COMMAND =
            Pattern.compile("(?:exec\\.args=\"?|bagclock\\.jar )([a-z]+)((?: --[a-z]+[^\\s\"`]*(?: [^-\\s\"`]+)?)*)");
    private static final Pattern OPTION = Pattern.compile("--[a-z]+");
    private static final Pattern LINK = Pattern.compile("]\\((?!https?:|#|mailto:)([^)#\\s]+)[^)]*\\)");

    @Test
    void everyCommandIsKnownWithItsOptions() throws IOException {
        CommandLine main = Main.commandLine(Clock.systemUTC());
        List<String> unknown = new ArrayList<>();
        for (Path document : documents()) {
            Matcher command = COMMAND.matcher(Files.readString(document));
            while (command.find()) {
                Optional<CommandLine> known =
                        Optional.ofNullable(main.getSubcommands().get(command.group(1)));
                boolean allOptions = OPTION.matcher(command.group(2))
                        .results()
                        .allMatch(option -> known.isPresent()
                                && known.get().getCommandSpec().findOption(option.group()) != null);
                if (known.isEmpty() || !allOptions) {
                    unknown.add(document + ": " + command.group());
                }
            }
        }

        assertThat(unknown).isEmpty();
    }

    @Test
    void everyLinkedFileIsThere() throws IOException {
        List<String> missing = new ArrayList<>();
        for (Path document : documents()) {
            Matcher link = LINK.matcher(Files.readString(document));
            while (link.find()) {
                Path folder = Optional.ofNullable(document.getParent()).orElse(Path.of(""));
                if (!Files.exists(folder.resolve(link.group(1)))) {
                    missing.add(document + ": " + link.group(1));
                }
            }
        }

        assertThat(missing).isEmpty();
    }

    private static List<Path> documents() throws IOException {
        try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
            return Stream.concat(Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")), docs)
                    .filter(file -> file.toString().endsWith(".md"))
                    .toList();
        }
    }
}
