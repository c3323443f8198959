package bagclock.parts;

import bagclock.parts.PartFormPage.Kind;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Facts that stand together on form and page. */
enum FormGroup {
    LABEL(
            Column.NUMBER,
            Column.MAKER,
            Column.DESCRIPTION,
            Column.LEVEL,
            Column.PEAK,
            Column.MORE_RATINGS,
            Column.DOCUMENT,
            Column.REVISION),
    BODY(
            Column.BODY,
            Column.THICKNESS,
            Column.LENGTH,
            Column.WIDTH,
            Column.LEAD_FREE,
            Column.STACKED_DIE,
            Column.BLOCKING_PLANES),
    LIFE(Column.FLOOR_LIFE, Column.DERATING, Column.SHELF),
    BAKES(
            Column.BAKES,
            Column.TABLE_TOO,
            Column.USE_WITHIN,
            Column.MOST_BAKES,
            Column.BAKE_LIMIT,
            Column.CARRIER,
            Column.MOST_PASSES),
    BEFORE(Column.BAKED_BEFORE, Column.BAKES_BEFORE, Column.PASSES_BEFORE);

    /** What the rules ask of every part; unknown, it makes answers stricter. */
    static final Set<Column> MATTERS = EnumSet.of(
            Column.LEVEL,
            Column.PEAK,
            Column.BODY,
            Column.THICKNESS,
            Column.LENGTH,
            Column.WIDTH,
            Column.LEAD_FREE,
            Column.STACKED_DIE,
            Column.BLOCKING_PLANES,
            Column.BAKE_LIMIT,
            Column.CARRIER);

    private static final Set<Column> LINES = EnumSet.of(Column.DERATING, Column.BAKES);
    private static final Set<Column> CHOICES = EnumSet.of(
            Column.LEVEL, Column.BODY, Column.LEAD_FREE, Column.STACKED_DIE, Column.BLOCKING_PLANES, Column.TABLE_TOO);
    private static final Set<Column> WORDS = EnumSet.of(
            Column.NUMBER,
            Column.MAKER,
            Column.DESCRIPTION,
            Column.DOCUMENT,
            Column.REVISION,
            Column.MORE_RATINGS,
            Column.CARRIER);

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which the checker can't see
    private final List<Column> columns;

    FormGroup(Column... columns) {
        this.columns = List.of(columns);
    }

    List<Column> columns() {
        return columns;
    }

    static Kind kind(Column column) {
        if (LINES.contains(column)) {
            return Kind.LINES;
        } else if (CHOICES.contains(column)) {
            return Kind.CHOICE;
        }
        return WORDS.contains(column) ? Kind.WORDS : Kind.NUMBER;
    }
}
