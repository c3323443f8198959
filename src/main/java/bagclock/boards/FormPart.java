package bagclock.boards;

import java.util.List;

/**
 * A form.
 *
 * @param act words of its button
 * @param isFirst it is what to do next
 * @param isFolded it is seldom needed: only its title shows until it is opened
 */
public record FormPart(
        String title,
        String text,
        String action,
        List<Hidden> hidden,
        List<Input> inputs,
        String act,
        boolean isFirst,
        boolean isFolded) {
    /** A form that stands open. */
    public FormPart(
            String title,
            String text,
            String action,
            List<Hidden> hidden,
            List<Input> inputs,
            String act,
            boolean isFirst) {
        this(title, text, action, hidden, inputs, act, isFirst, false);
    }
}
