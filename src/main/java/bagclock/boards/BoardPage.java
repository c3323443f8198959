package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;

/**
 * One board: its answer, its jobs, what sits on it and what was done to it.
 *
 * @param done words of what was just done; empty for nothing
 * @param answer for a heat of the whole board, now
 * @param used items of which parts were used for it
 * @param forms what can be told of it
 */
public record BoardPage(
        String title,
        String serial,
        String lead,
        String typeNumber,
        String done,
        List<String> refusals,
        AnswerBox answer,
        JobPage.Plan plan,
        List<JobLine> jobs,
        List<Spot> spots,
        List<JobPage.Link> used,
        List<FormPart> forms,
        List<JobPage.Entry> entries)
        implements Page {
    /** A job with its state. */
    public record JobLine(String href, String what, String state) {}

    /** A location with what it went through. */
    public record Spot(
            String location, String part, String item, String href, String passes, String baked, String replaced) {}

    @Override
    public String template() {
        return "boards/board.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
