package bagclock.core.estimate;

import java.util.Optional;

/**
 * What the model says beside the tables.
 *
 * @param estimate empty where it is silent
 * @param silence why it shows nothing
 * @param warning may stand where no estimate is shown
 */
public record Beside(Optional<Estimate> estimate, Optional<Silence> silence, Optional<Warning> warning) {
    static Beside silent(Silence why) {
        return new Beside(Optional.empty(), Optional.of(why), Optional.empty());
    }
}
