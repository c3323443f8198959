package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;
import java.util.Optional;

/**
 * A heat of a whole board outside a job: may it be heated now, and the record that it was.
 *
 * @param refusals why the last sending was not taken
 * @param address of this very page, with the plan
 * @param topics what the answer depends on, for the live stream
 * @param release the release that waits for this heat, in words; empty for none
 */
public record WholePage(
        String title,
        String serial,
        List<String> refusals,
        String address,
        String topics,
        AnswerBox answer,
        String release,
        JobPage.Plan plan,
        FormPart record,
        Optional<FormPart> releaseForm,
        List<String> cautions)
        implements Page {
    @Override
    public String template() {
        return "boards/whole.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
