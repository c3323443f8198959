package bagclock.core.estimate;

import java.time.Duration;

/**
 * The rules may be too kind: by the model a part that they leave inside its floor life has clearly less of it.
 *
 * @param modelLeaves time at 30 C / 60 %RH until the limit, by the worse diffusivity
 * @param rulesLeave what is left by the rules, at the same air
 */
public record Warning(Cause cause, Duration modelLeaves, Duration rulesLeave) {
    /** Where the rules and the model are known to part. */
    public enum Cause {
        /** A short stay in the air and a dry rest; the rules began a new floor life. */
        DRY_REST,
        /** Drier air than 60 %RH counted longer than the part's own life. */
        DRIER_AIR,
        /** Neither of them. */
        OTHER
    }
}
