package bagclock.platform;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Every word that a page says, by key; {@code {0}}, {@code {1}} stand for parts. Immutable. */
public final class Messages {
    private static final String BUNDLE = "/bagclock/messages.properties";
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private final Map<String, String> texts;

    private Messages(Map<String, String> texts) {
        this.texts = texts;
    }

    /** Reads the bundle from the class path. */
    public static Messages load() {
        Properties bundle = new Properties();
        try (InputStream file = Messages.class.getResourceAsStream(BUNDLE)) {
            if (file == null) {
                throw new IllegalStateException("not on the class path: " + BUNDLE);
            }
            bundle.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return new Messages(bundle.stringPropertyNames().stream()
                .collect(Collectors.toUnmodifiableMap(key -> key, bundle::getProperty)));
    }

    /**
     * The text of a key with its parts put in as they are; finished words only, see {@link Texts} for quantities and
     * times.
     *
     * @throws IllegalArgumentException when the bundle lacks the key, or the text asks for a part that is not given
     */
    public String text(String key, Object... parts) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalArgumentException("no message has the key " + key);
        }
        return PLACE.matcher(text).replaceAll(place -> {
            int index = Integer.parseInt(place.group(1));
            if (index >= parts.length) {
                throw new IllegalArgumentException("message " + key + " needs part " + index);
            }
            return Matcher.quoteReplacement(parts[index].toString());
        });
    }

    /** Whether the bundle has the key. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /** Every key. */
    public Set<String> keys() {
        return texts.keySet();
    }
}
