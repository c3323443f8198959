package bagclock.bench;

import bagclock.platform.Page;
import java.util.List;

/**
 * A heat that was recorded or released, with the answer of then.
 *
 * @param isNew recorded a moment ago
 * @param state that it was taken back; empty if it stands
 * @param heading heat or release
 * @param peak of the body; empty for a release
 * @param released the release that it was done on, with its reason; for a release its own reason; empty for none
 * @param other record of the heat that used the release, or of the release that the heat used; empty for none
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
        String heading,
        String at,
        String recorded,
        String peak,
        String released,
        String other,
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
