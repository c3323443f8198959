package bagclock.ovens.solver;

import bagclock.core.oven.Problem;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.util.Domain;

/** Times at which a door may be opened. */
final class Doors {
    private final CpModel model;
    private final Domain times;

    Doors(Problem problem, CpModel model, int horizon) {
        this.model = model;
        this.times = times(problem.attended(), horizon);
    }

    private static Domain times(int[] attended, int horizon) {
        if (attended.length == 0) {
            return new Domain(0, horizon);
        }
        long[] intervals = new long[attended.length + 2];
        for (int i = 0; i < attended.length; i++) {
            intervals[i] = attended[i];
        }
        intervals[attended.length] = attended[attended.length - 1] + 1L;
        intervals[attended.length + 1] = Math.max(horizon, intervals[attended.length]);
        return Domain.fromFlatIntervals(intervals).intersectionWith(new Domain(0, horizon));
    }

    IntVar opening(String name) {
        return model.newIntVarFromDomain(times, name);
    }
}
