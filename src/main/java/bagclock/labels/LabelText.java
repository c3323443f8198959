package bagclock.labels;

import java.util.List;

/**
 * What a label says.
 *
 * @param tag what its code holds; also its largest words
 * @param sentence what counts most, such as by when the heat must end
 * @param lines the rest, the most important first
 * @param caution across the foot
 */
record LabelText(String tag, String sentence, List<String> lines, String caution) {
    LabelText {
        lines = List.copyOf(lines);
    }
}
