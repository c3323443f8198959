package bagclock.ovens;

import bagclock.platform.Page;
import java.util.List;
import java.util.Map;

/**
 * The planner's front door.
 *
 * @param lead what needs a hand next, in a sentence
 * @param done what was just done; empty for nothing
 * @param waiting what waits for a bake and can have one, the first to load first
 * @param stuck what needs a bake and can't have one as it is
 */
public record OvensPage(String title, String lead, String done, List<Oven> ovens, List<Line> waiting, List<Stuck> stuck)
        implements Page {
    /**
     * One oven.
     *
     * @param ability what it can do, in words
     * @param free positions left, in words
     */
    public record Oven(String code, String name, String ability, String free, List<Run> runs) {}

    /**
     * One load in it.
     *
     * @param ready when it will be ready, in a sentence
     * @param left how long until then; empty when it is ready
     * @param proof what its chart proves so far, or that there is none
     * @param facts set-point and since when
     * @param href of its own page
     */
    public record Run(String ready, String left, String proof, String facts, String href, List<Tag> items) {
        private Run proving(Map<String, String> proofs) {
            return new Run(ready, left, proofs.getOrDefault(href, proof), facts, href, items);
        }
    }

    /** With what charts prove, by the address of the load. */
    OvensPage proving(Map<String, String> proofs) {
        List<Oven> told = ovens.stream()
                .map(oven -> new Oven(
                        oven.code(),
                        oven.name(),
                        oven.ability(),
                        oven.free(),
                        oven.runs().stream().map(run -> run.proving(proofs)).toList()))
                .toList();
        return new OvensPage(title, lead, done, told, waiting, stuck);
    }

    /** An item in it. */
    public record Tag(String tag, String what) {}

    /** An item that waits. */
    public record Line(
            String tag,
            String part,
            String quantity,
            String where,
            String why,
            List<String> programmes,
            String needed) {}

    /** An item that needs a bake and can't have one. */
    public record Stuck(String tag, String part, String why, String next) {}

    @Override
    public String template() {
        return "ovens/ovens.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
