package bagclock.parts;

import bagclock.core.standard.BodyKind;
import bagclock.core.standard.Level;
import bagclock.platform.Choice;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.PartType;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The words of part types: names of fields, values with their units, doubts. */
final class PartWords {
    private final Texts texts;
    private final Messages messages;

    PartWords(Texts texts) {
        this.texts = texts;
        this.messages = texts.messages();
    }

    Texts texts() {
        return texts;
    }

    String text(String key, Object... parts) {
        return messages.text(key, parts);
    }

    String label(Column column) {
        return texts.part(column);
    }

    /** The label without its unit, for where the unit stands beside the value. */
    String name(Column column) {
        return label(column).replaceFirst(" \\([^)]*\\)$", "");
    }

    /** Empty for a field that needs none. */
    String hint(Column column) {
        String key = "parts.hint." + column.code();
        return messages.has(key) ? messages.text(key) : "";
    }

    /** A value as the page of a part type shows it; lists one entry on a line. */
    List<String> shown(Column column, String text) {
        return switch (column) {
            case DERATING, BAKES, MORE_RATINGS -> Entries.split(text);
            case BODY -> List.of(body(text));
            case STACKED_DIE, BLOCKING_PLANES, LEAD_FREE, TABLE_TOO -> List.of(messages.text("parts.flag." + text));
            case CARRIER ->
                List.of(
                        text.equals(PartWriting.NO_CARRIER)
                                ? messages.text("parts.carrier.none")
                                : text + unit(column));
            default -> List.of(text + unit(column));
        };
    }

    private static String unit(Column column) {
        String code = column.code();
        if (code.endsWith("_c")) {
            return " °C";
        } else if (code.endsWith("_mm")) {
            return " mm";
        }
        return code.endsWith("_h") ? " h" : "";
    }

    private String body(String code) {
        return texts.part(BodyKind.parse(code).orElse(BodyKind.UNKNOWN));
    }

    /** For example {@code 3 at 245 °C, 4 at 260 °C}. */
    String ratings(PartType type) {
        return type.part().ratings().stream()
                .map(rating -> {
                    String level = rating.level().map(Level::code).orElseGet(() -> messages.text("parts.not-known"));
                    return rating.peak()
                            .map(peak -> messages.text("parts.rating", level, texts.temperature(peak)))
                            .orElse(level);
                })
                .collect(Collectors.joining(", "));
    }

    List<Choice> choices(Column column) {
        return switch (column) {
            case LEVEL -> levels("parts.level.unknown");
            case BODY -> bodies();
            case TABLE_TOO -> List.of(flag(PartWriting.NO), flag(PartWriting.YES));
            case STACKED_DIE, BLOCKING_PLANES, LEAD_FREE ->
                List.of(Choice.of("", messages.text("parts.not-known")), flag(PartWriting.YES), flag(PartWriting.NO));
            default -> List.of();
        };
    }

    List<Choice> levels(String empty) {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of("", messages.text(empty)));
        Arrays.stream(Level.values())
                .map(level -> Choice.of(level.code(), level.code()))
                .forEach(choices::add);
        return choices;
    }

    private List<Choice> bodies() {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of("", texts.part(BodyKind.UNKNOWN)));
        Arrays.stream(BodyKind.values())
                .filter(kind -> kind != BodyKind.UNKNOWN)
                .map(kind -> Choice.of(kind.code(), texts.part(kind)))
                .forEach(choices::add);
        return choices;
    }

    private Choice flag(String value) {
        return Choice.of(value, messages.text("parts.flag." + value));
    }

    String doubt(Doubt doubt) {
        Object[] parts = doubt.parts().stream().map(this::part).toArray();
        return messages.text("parts.doubt." + doubt.code().name(), parts);
    }

    private Object part(Object part) {
        return part instanceof Duration time ? Hours.ofLife(time) + " h" : texts.part(part);
    }

    /** Words of doubts by the field they stand beside. */
    Map<Column, List<String>> byColumn(List<Doubt> doubts) {
        return doubts.stream()
                .collect(Collectors.groupingBy(Doubt::column, Collectors.mapping(this::doubt, Collectors.toList())));
    }

    String labels(List<Column> columns) {
        return columns.stream().map(this::label).collect(Collectors.joining(", "));
    }
}
