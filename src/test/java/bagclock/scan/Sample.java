package bagclock.scan;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** A published scan and what it says. */
record Sample(String number, String source, String scan, Map<Fact, String> facts, Set<Flag> flags) {
    static List<Sample> all() {
        try (BufferedReader file = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Sample.class.getResourceAsStream("samples.tsv")), StandardCharsets.UTF_8))) {
            return file.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(Sample::of)
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Sample of(String line) {
        String[] columns = line.split("\t");
        Map<Fact, String> facts = new EnumMap<>(Fact.class);
        Set<Flag> flags = EnumSet.noneOf(Flag.class);
        Arrays.stream(columns[3].split(";")).forEach(said -> {
            if (said.startsWith("!")) {
                flags.add(Flag.valueOf(said.substring(1)));
            } else {
                facts.put(Fact.valueOf(said.split("=", 2)[0]), said.split("=", 2)[1]);
            }
        });
        return new Sample(columns[0], columns[1], controls(columns[2]), facts, flags);
    }

    static String controls(String text) {
        return text.replace("<GS>", "\u001d")
                .replace("<RS>", "\u001e")
                .replace("<EOT>", "\u0004")
                .replace("<CR>", "\r");
    }

    @Override
    public String toString() {
        return number + ", " + source;
    }
}
