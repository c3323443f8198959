package bagclock.parts;

import bagclock.register.PartType;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** What differs between two versions of a part type. */
final class Changed {
    private Changed() {}

    static List<Column> between(PartType before, PartType after) {
        Map<Column, String> was = PartWriting.of(before);
        Map<Column, String> is = PartWriting.of(after);
        return Arrays.stream(Column.values())
                .filter(column -> !is.getOrDefault(column, "").equals(was.getOrDefault(column, "")))
                .toList();
    }
}
