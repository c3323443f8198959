package bagclock.core.heat;

import java.util.List;

/**
 * The answer for a board: its worst part's, with its own bakes, and one for each location.
 *
 * @param parts in the order of the question
 */
public record BoardAnswer(Answer whole, List<At> parts) {
    /** Keeps its own copy. */
    public BoardAnswer {
        parts = List.copyOf(parts);
    }

    /**
     * The answer of one location.
     *
     * @param counts whether the part decides the board's answer: it will pass 200 C
     */
    public record At(String location, Answer answer, boolean counts) {}
}
