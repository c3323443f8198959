package bagclock.core.oven;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Who goes with whom, where and in which order; {@link Decoder} gives it its times. Immutable. */
public record Sketch(List<List<Batch>> ovens) {
    /** Keeps its own copies. */
    public Sketch {
        ovens = ovens.stream().map(List::copyOf).toList();
    }

    /** Nothing anywhere. */
    public static Sketch empty(Problem problem) {
        return new Sketch(Collections.nCopies(problem.ovens().length, List.of()));
    }

    Sketch with(int oven, List<Batch> batches) {
        List<List<Batch>> changed = new ArrayList<>(ovens);
        changed.set(oven, batches);
        return new Sketch(changed);
    }
}
