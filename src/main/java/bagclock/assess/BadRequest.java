package bagclock.assess;

import java.util.List;

/** A request that cannot be answered, with every problem found in it, each naming its field. */
public final class BadRequest extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<String> problems;

    BadRequest(List<String> problems) {
        super(String.join("; ", problems));
        this.problems = List.copyOf(problems);
    }

    /** Each problem in words, never empty. */
    public List<String> problems() {
        return problems;
    }
}
