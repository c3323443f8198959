package bagclock.bench;

import bagclock.platform.Page;
import java.util.List;

/**
 * A heat that was recorded, with the answer of then.
 *
 * @param isNew recorded a moment ago
 * @param state that it was taken back; empty if it stands
 * @param verdict empty when no answer was kept
 * @param inputs SHA-256 of what the answer was worked out from
 */
public record HeatPage(
        String title,
        String tag,
        String partNumber,
        boolean isNew,
        String state,
        String at,
        String recorded,
        String peak,
        String verdict,
        String sentence,
        String life,
        List<AnswerPart.Reason> reasons,
        String versions,
        String inputs)
        implements Page {
    @Override
    public String template() {
        return "bench/heat.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
