package bagclock.scan;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/** A published keyboard layout, and what a scanner set to US keys types into it. */
public record KeyboardLayout(String name, String plain, String shifted) {
    private static final char ACCENT = '\u25cc';
    private static final char NOTHING = '\u25cf';

    /** The codes of the keys (UI Events), in the order of the file. */
    private static final List<String> CODES = codes();

    /** A key that types nothing by itself. */
    public record Key(String code, boolean isShifted) {}

    /** The layouts of {@code layouts.tsv}. */
    public static List<KeyboardLayout> all() {
        try (BufferedReader file = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(KeyboardLayout.class.getResourceAsStream("layouts.tsv")),
                StandardCharsets.UTF_8))) {
            return file.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\t"))
                    .map(columns -> new KeyboardLayout(columns[0], columns[1], columns[2]))
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** The layout of this name. */
    public static KeyboardLayout named(String name) {
        return all().stream()
                .filter(layout -> layout.name.equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The key that types nothing by itself where a US keyboard has this character; empty for one that types. */
    public Optional<Key> silent(char meant) {
        KeyboardLayout us = named("us(basic)");
        boolean isShifted = us.shifted.indexOf(meant) >= 0;
        int at = (isShifted ? us.shifted : us.plain).indexOf(meant);
        return at >= 0 && (typed(at, isShifted) == ACCENT || typed(at, isShifted) == NOTHING)
                ? Optional.of(new Key(CODES.get(at), isShifted))
                : Optional.empty();
    }

    private char typed(int at, boolean isShifted) {
        return (isShifted ? shifted : plain).charAt(at);
    }

    /** What the page tells: an accent by its place. */
    public String type(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char meant = text.charAt(i);
            out.append(silent(meant)
                    .map(key -> UsKeys.place(key.code(), key.isShifted()))
                    .orElseGet(() -> typed(meant)));
        }
        return out.toString();
    }

    private char typed(char meant) {
        KeyboardLayout us = named("us(basic)");
        int plainAt = us.plain.indexOf(meant);
        int shiftedAt = us.shifted.indexOf(meant);
        return plainAt >= 0 ? plain.charAt(plainAt) : shiftedAt >= 0 ? shifted.charAt(shiftedAt) : meant;
    }

    @Override
    public String toString() {
        return name;
    }

    private static List<String> codes() {
        String names = "Backquote " + digits() + "Minus Equal " + letters("QWERTYUIOP") + "BracketLeft BracketRight "
                + letters("ASDFGHJKL") + "Semicolon Quote Backslash " + letters("ZXCVBNM") + "Comma Period Slash";
        return List.of(names.split(" "));
    }

    private static String digits() {
        return IntStream.rangeClosed(1, 10)
                .mapToObj(i -> "Digit" + i % 10 + " ")
                .reduce("", String::concat);
    }

    private static String letters(String letters) {
        return letters.chars().mapToObj(c -> "Key" + (char) c + " ").reduce("", String::concat);
    }
}
