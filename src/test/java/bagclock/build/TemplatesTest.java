package bagclock.build;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.platform.Messages;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.html.policy.PreventInlineEventHandlers;
import gg.jte.resolve.DirectoryCodeResolver;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What no template may do: run or style inline, which the content policy forbids, or speak without the bundle. */
class TemplatesTest {
    private static final Path TEMPLATES = Path.of("templates");
    private static final Pattern FIXED_PART = Pattern.compile("writeContent\\(\"((?:[^\"\\\\]|\\\\.)*)\"\\)");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2}");
    private static final Pattern KEY = Pattern.compile("\\btext\\(\\s*\"([a-zA-Z0-9._-]+)\"\\s*[,)]");
    private static final Set<String> SPOKEN = Set.of("title", "alt", "placeholder", "aria-label", "aria-description");
    private static final Set<String> OUR_NAME = Set.of("Bagclock");

    /** The fixed parts of each template in order, expressions left out. */
    private static final Map<String, Document> FIXED = new TreeMap<>();

    @BeforeAll
    static void generate(@TempDir Path generated) throws IOException {
        TemplateEngine engine = TemplateEngine.create(
                new DirectoryCodeResolver(TEMPLATES), generated, ContentType.Html, null, "bagclock.templates");
        engine.setHtmlPolicy(new PreventInlineEventHandlers());
        engine.generateAll();
        for (Path file : files(generated, ".java")) {
            FIXED.put(generated.relativize(file).toString(), Jsoup.parse(fixedParts(Files.readString(file))));
        }
    }

    @Test
    void nothingRunsOrIsStyledInline() {
        List<String> faults = new ArrayList<>();
        FIXED.forEach((name, document) -> {
            document.select("style").forEach(element -> faults.add(name + ": <style>"));
            document.select("script:not([src])").forEach(element -> faults.add(name + ": inline script"));
            for (Element element : document.getAllElements()) {
                for (Attribute attribute : element.attributes()) {
                    if (isForbidden(attribute)) {
                        faults.add(name + ": " + attribute);
                    }
                }
            }
        });

        assertThat(faults).isEmpty();
    }

    @Test
    void everyWordComesFromTheBundle() {
        List<String> faults = new ArrayList<>();
        FIXED.forEach((name, document) -> {
            for (Element element : document.getAllElements()) {
                Stream.concat(
                                element.textNodes().stream().map(TextNode::text),
                                element.attributes().asList().stream()
                                        .filter(attribute -> SPOKEN.contains(attribute.getKey()))
                                        .map(Attribute::getValue))
                        .filter(TemplatesTest::speaks)
                        .forEach(text -> faults.add(name + ": " + text.strip()));
            }
        });

        assertThat(faults).as("texts that belong into messages.properties").isEmpty();
    }

    @Test
    void nothingIsWrittenUnescaped() throws IOException {
        List<String> faults = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".jte")) {
            if (Files.readString(file).contains("$unsafe{")) {
                faults.add(file.toString());
            }
        }

        assertThat(faults).isEmpty();
    }

    @Test
    void everyKeyIsInTheBundle() throws IOException {
        Messages messages = Messages.load();
        List<String> missing = new ArrayList<>();
        for (Path file : Stream.concat(
                        files(TEMPLATES, ".jte").stream(), files(Path.of("src/main/java"), ".java").stream())
                .toList()) {
            Matcher key = KEY.matcher(Files.readString(file));
            while (key.find()) {
                if (!messages.has(key.group(1))) {
                    missing.add(file + ": " + key.group(1));
                }
            }
        }

        assertThat(missing).as("keys that messages.properties lacks").isEmpty();
    }

    @Test
    void noKeyStandsTwiceInTheBundle() throws IOException {
        Map<String, Long> counts =
                Files.readAllLines(Path.of("src/main/resources/bagclock/messages.properties")).stream()
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .map(line -> line.split("=", 2)[0].strip())
                        .collect(Collectors.groupingBy(key -> key, TreeMap::new, Collectors.counting()));
        counts.values().removeIf(count -> count == 1);

        assertThat(counts).isEmpty();
    }

    private static boolean isForbidden(Attribute attribute) {
        String name = attribute.getKey().toLowerCase(Locale.ROOT);
        String value = attribute.getValue().toLowerCase(Locale.ROOT);
        return name.equals("style")
                || name.startsWith("on")
                || name.startsWith("hx-on")
                || (name.startsWith("hx-") && value.startsWith("js:"))
                || (name.equals("hx-trigger") && value.contains("["))
                || value.strip().startsWith("javascript:");
    }

    private static boolean speaks(String text) {
        String rest = text;
        for (String name : OUR_NAME) {
            rest = rest.replace(name, "");
        }
        return LETTERS.matcher(rest).find();
    }

    private static String fixedParts(String source) {
        StringBuilder html = new StringBuilder();
        Matcher part = FIXED_PART.matcher(source);
        while (part.find()) {
            html.append(part.group(1).translateEscapes());
        }
        return html.toString();
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }
}
