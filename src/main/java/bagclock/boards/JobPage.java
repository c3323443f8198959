package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;
import java.util.Optional;

/**
 * A rework job: one line, may it be heated now; what to do next; what was done.
 *
 * @param lead location, why, and what becomes of the old part
 * @param done words of what was just done; empty for nothing
 * @param refusals why the last sending was not taken
 * @param address of this very page, with the plan
 * @param topics what it depends on, for the live stream
 * @param line what to do where no heat comes next; empty beside an answer
 * @param release the release that waits for this heat, in words; empty for none
 * @param plan the fields of the plan; empty where no heat on the board comes next
 * @param forms what can be told now, the next thing first
 * @param cautions for this step
 */
public record JobPage(
        String title,
        String serial,
        String lead,
        String done,
        List<String> refusals,
        String address,
        String topics,
        Optional<AnswerBox> answer,
        String line,
        String release,
        Optional<Plan> plan,
        List<FormPart> forms,
        Optional<FormPart> releaseForm,
        List<StepLine> steps,
        List<Entry> entries,
        List<Link> links,
        List<String> cautions)
        implements Page {
    /** The plan of the next heat. */
    public record Plan(String action, List<Input> inputs) {}

    /** A step with its state. */
    public record StepLine(String name, String state, boolean isNow) {}

    /** What was told; {@code href} leads to its record, empty for none. */
    public record Entry(String when, String what, String who, String href) {}

    /** Another page that helps. */
    public record Link(String href, String label) {}

    @Override
    public String template() {
        return "boards/job.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
