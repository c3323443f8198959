package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;

/**
 * The record of one heat, or of one release: what was asked, what was answered, why, on what, who, when.
 *
 * @param released the release that the heat was done on, in words; empty for none
 * @param parts the verdict of each location that counted
 * @param inputs SHA-256 of everything that the answer rests on
 * @param hash of the entry in the board's chain
 */
public record RecordPage(
        String title,
        List<JobPage.Link> links,
        List<TypePage.Fact> asked,
        List<TypePage.Fact> done,
        String verdict,
        String sentence,
        String released,
        List<String> notices,
        List<AnswerBox.Reason> reasons,
        List<AnswerBox.Part> parts,
        List<TypePage.Fact> readings,
        String versions,
        String inputs,
        String hash)
        implements Page {
    @Override
    public String template() {
        return "boards/record.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
