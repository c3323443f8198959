package bagclock.core.exposure;

import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Cited;
import bagclock.core.standard.Life;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What one rating's clock shows at a moment.
 *
 * @param total the part's floor life; empty if unlimited or none
 * @param used share of the total
 * @param inside whether the part is inside its floor life, its history known; always true without a floor life
 * @param column bake column, empty for levels without rows
 * @param unknown why the history is not known
 * @param spentAt the past moment at which the life ran out
 * @param timerEnd end of a use-within time or of a level 6 label time
 * @param restEnd when a rest under way will reset the clock
 * @param run the bake under way
 * @param driedAt the ends of the bakes that counted
 * @param trail account of the share used
 * @param fault what else bars or restricts the part
 */
public record ClockReading(
        Optional<Cited<Life>> total,
        Share used,
        boolean inside,
        ClockState state,
        Optional<BakeColumn> column,
        Optional<UnknownHistory> unknown,
        Optional<Instant> spentAt,
        Optional<Instant> timerEnd,
        Optional<Instant> restEnd,
        Optional<Run> run,
        List<Instant> driedAt,
        List<TrailEntry> trail,
        List<Fault> fault) {
    /**
     * A bake under way.
     *
     * @param needed time at temperature that dries the part, empty if the run cannot count
     */
    public record Run(Event.BakeStarted bake, Optional<Duration> needed) {
        /** When the run will have done its work. */
        public Optional<Instant> readyAt() {
            return needed.map(bake.at()::plus);
        }
    }

    /** What bars or restricts a part beside its used life. */
    public enum Fault {
        /** Some time since dry lay outside the tables. */
        OUTSIDE_TABLE,
        /** Longer at 5 to 10 %RH than the 10 % cell allows. */
        DRY_STAY_TOO_LONG,
        /** Some time since dry was above 30 C / 60 %RH. */
        ABOVE_30_60,
        /** Level 1: wetted. */
        LEVEL_1_WETTED,
        /** Level 1: longer than 24 h above 85 %RH. */
        LEVEL_1_TOO_DAMP,
        /** Level 1: some time above 30 C / 85 %RH. */
        LEVEL_1_ABOVE_30_85,
        /** Level 6: not baked since its last use. */
        LEVEL_6_NOT_BAKED,
        /** Level 6: above 30 C / 60 %RH after its bake. */
        LEVEL_6_ABOVE_30_60,
        /** Some counted time rests on a declared worst case. */
        AIR_DECLARED,
        /** For some counted time neither a reading nor a declared worst case is there. */
        AIR_UNKNOWN,
        /** "sealed" was recorded after a bake that did not count. */
        SEALED_AFTER_FAILED_BAKE
    }

    /** Whether a fault is among them. */
    public boolean has(Fault one) {
        return fault.contains(one);
    }

    /** The citation of the total, if there is one. */
    public Optional<Citation> citation() {
        return total.map(Cited::citation);
    }
}
