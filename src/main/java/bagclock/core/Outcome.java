package bagclock.core;

import java.util.List;
import java.util.function.Function;

/** What became of a decision: accepted with its result, or refused with every reason at once. */
public sealed interface Outcome<T> {
    /** The decision stands. */
    record Accepted<T>(T result) implements Outcome<T> {}

    /** Nothing changed; never empty. */
    record Refused<T>(List<Refusal> refusals) implements Outcome<T> {
        /** Keeps its own copy. */
        public Refused {
            refusals = List.copyOf(refusals);
        }
    }

    /** Both continuations at once, so that neither case can be forgotten. */
    default <R> R fold(Function<T, R> accepted, Function<List<Refusal>, R> refused) {
        if (this instanceof Accepted<T> yes) {
            return accepted.apply(yes.result());
        }
        return refused.apply(((Refused<T>) this).refusals());
    }

    /** An accepted outcome. */
    static <T> Outcome<T> accepted(T result) {
        return new Accepted<>(result);
    }

    /** A refused outcome with one or more refusals. */
    static <T> Outcome<T> refused(Refusal... refusals) {
        return new Refused<>(List.of(refusals));
    }
}
