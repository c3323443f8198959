package bagclock.boards;

import java.util.List;

/**
 * One answer in words.
 *
 * @param sentence the one line: until when, or what first
 * @param aside time left and the like; empty for none
 * @param notices what the answer could not rest on
 * @param parts the parts that decide, strictest first
 * @param rest the parts that are not shown, in one sentence; empty for none
 */
public record AnswerBox(
        String verdict,
        String sentence,
        String aside,
        List<String> notices,
        List<Reason> reasons,
        List<Bake> bakes,
        List<Part> parts,
        String rest) {
    /** Whether it is about a part by itself, not about a board. */
    public boolean isOfPart() {
        return parts.isEmpty() && rest.isEmpty();
    }

    /** Why, and where that stands. */
    public record Reason(String text, String source) {}

    /** One bake; {@code why} says what speaks against it, empty if it is allowed. */
    public record Bake(String temperature, String time, String humidity, String why) {}

    /** A part on the board; {@code href} leads to its item, empty if it has none. */
    public record Part(String location, String what, String href, String verdict, String word, String sentence) {}
}
