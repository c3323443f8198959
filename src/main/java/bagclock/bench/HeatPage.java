package bagclock.bench;

import bagclock.platform.Page;
import java.util.List;

/**
 * A heat that was recorded, with the answer of then.
 *
 * @param isNew recorded a moment ago
 * @param state that it was taken back; empty if it stands
 * @param asked the planned heat, in words; empty if it was not kept
 * @param boardRecord address of the record of the board that it was done on; empty for none
 * @param readings that the answer rests on, in words
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
        String asked,
        String boardRecord,
        String verdict,
        String sentence,
        String life,
        List<AnswerPart.Reason> reasons,
        List<String> readings,
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
