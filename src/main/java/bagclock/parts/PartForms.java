package bagclock.parts;

import bagclock.parts.PartFormPage.Group;
import bagclock.parts.PartFormPage.Kind;
import bagclock.parts.PartFormPage.Line;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.register.PartType;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Fills the form of a part type. */
final class PartForms {

    private final PartWords words;

    PartForms(PartWords words) {
        this.words = words;
    }

    /** What the form shows of a part type: lists one entry on a line. */
    static Map<String, String> values(PartType type) {
        Map<String, String> values = new HashMap<>();
        PartWriting.of(type)
                .forEach((column, text) -> values.put(
                        column.code(),
                        FormGroup.kind(column) == Kind.LINES ? String.join("\n", Entries.split(text)) : text));
        return values;
    }

    /** The texts of a form by column. */
    static Map<Column, String> texts(Entered entered) {
        Map<Column, String> texts = new EnumMap<>(Column.class);
        for (Column column : Column.values()) {
            texts.put(column, entered.text(column.code()));
        }
        return texts;
    }

    /** Names doubts, so that the next request can say which of them were seen. */
    static String seen(List<Doubt> doubts) {
        return doubts.stream()
                .map(doubt -> doubt.column().code() + ":" + doubt.code() + ":"
                        + Integer.toHexString(doubt.parts().hashCode()))
                .distinct()
                .collect(Collectors.joining(" "));
    }

    /** A form that alters a part type, or enters a new one. */
    PartFormPage page(Entered entered, State state, List<Doubt> doubts) {
        Map<Column, List<String>> byColumn = words.byColumn(doubts);
        boolean fresh = state.number().isEmpty();
        return new PartFormPage(
                fresh ? words.text("parts.new") : state.number(),
                fresh ? "/parts" : PartPages.href(state.number()),
                fresh ? "/parts/new" : "/parts/change",
                state.number(),
                state.basedOn(),
                seen(doubts),
                state.refusal(),
                Arrays.stream(FormGroup.values())
                        .map(group -> group(group, entered, byColumn, fresh))
                        .toList(),
                words.text(state.again() ? "parts.keep.all-the-same" : "parts.keep"));
    }

    /**
     * Where a form stands.
     *
     * @param number empty for a new part type
     * @param refusal why nothing was kept; empty for no reason
     * @param again kept if it is sent once more
     */
    record State(String number, int basedOn, String refusal, boolean again) {
        static State fresh() {
            return new State("", 0, "", false);
        }

        State refused(String words, boolean again) {
            return new State(number, basedOn, words, again);
        }
    }

    private Group group(FormGroup group, Entered entered, Map<Column, List<String>> doubts, boolean fresh) {
        return new Group(
                words.text("parts.group." + group.name()),
                words.text("parts.group." + group.name() + ".hint"),
                group.columns().stream()
                        .filter(column -> fresh || column != Column.NUMBER)
                        .map(column -> line(column, entered, doubts.getOrDefault(column, List.of())))
                        .toList());
    }

    private Line line(Column column, Entered entered, List<String> doubts) {
        Field field = entered.field(column.code(), words.label(column), words.hint(column));
        return new Line(field, FormGroup.kind(column), words.choices(column), doubts);
    }
}
