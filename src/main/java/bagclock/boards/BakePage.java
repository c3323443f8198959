package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;
import java.util.Optional;

/**
 * A bake of a board outside a job: must it be baked, what it may stand, and the record that it was.
 *
 * @param refusals why the last sending was not taken
 * @param topics what the answer depends on, for the live stream
 * @param answer for a heat of the whole board, now
 * @param borne what the board and the parts on it bear
 * @param record into the oven, or out of it
 * @param elsewhere a bake in an oven that this shop does not know; empty while the board is in one
 * @param takeBack the form that takes the last entry back
 */
public record BakePage(
        String title,
        String serial,
        List<String> refusals,
        String address,
        String topics,
        AnswerBox answer,
        List<TypePage.Fact> borne,
        FormPart record,
        Optional<FormPart> elsewhere,
        Optional<FormPart> takeBack,
        List<String> cautions)
        implements Page {
    @Override
    public String template() {
        return "boards/bake.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
