package bagclock.ovens;

import bagclock.core.oven.Run;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Who joins a run or leaves it while it goes on. */
final class Apart {
    private Apart() {}

    /** In words; nothing if all go in and come out together. */
    static List<String> of(Run run, OvenWords words, Function<Instant, String> at) {
        List<String> apart = new ArrayList<>();
        for (Run.Stay stay : run.stays()) {
            if (run.joins(stay)) {
                apart.add(words.text("plan.run.joins", stay.lot(), at.apply(stay.inAt())));
            }
            if (run.leaves(stay)) {
                apart.add(words.text("plan.run.leaves", stay.lot(), at.apply(stay.outAt())));
            }
        }
        return apart;
    }
}
