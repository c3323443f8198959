package bagclock.boards;

import java.util.List;

/**
 * A form.
 *
 * @param act words of its button
 * @param isFirst it is what to do next
 */
public record FormPart(
        String title,
        String text,
        String action,
        List<Hidden> hidden,
        List<Input> inputs,
        String act,
        boolean isFirst) {}
