package bagclock.core.standard;

import java.util.function.Function;

/** A value and where it stands. */
public record Cited<T>(T value, Citation citation) {
    /** Another value that follows from this one and is cited in the same way. */
    public <R> Cited<R> map(Function<? super T, ? extends R> change) {
        return new Cited<>(change.apply(value), citation);
    }
}
