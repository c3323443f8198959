package bagclock.core.heat;

import bagclock.core.exposure.ClockState;
import bagclock.core.exposure.Share;
import bagclock.core.exposure.TrailEntry;
import bagclock.core.standard.Cited;
import bagclock.core.standard.Life;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One answer, explained.
 *
 * @param until clear: the heat must end by then; wait: when it mends itself; else empty
 * @param reasons the deciding one first
 * @param next what would mend it, best first; empty when clear
 * @param trail the account of used life since the part was last dry; its shares add up to the life used
 */
public record Answer(
        Verdict verdict,
        Optional<Instant> until,
        FloorLife floorLife,
        ClockState clock,
        Optional<Column> bakeColumn,
        List<BakeOffer> bakes,
        List<Finding> reasons,
        List<StepCode> next,
        List<Assumption> assumed,
        List<TrailEntry> trail) {
    /** Keeps its own copies. */
    public Answer {
        bakes = List.copyOf(bakes);
        reasons = List.copyOf(reasons);
        next = List.copyOf(next);
        assumed = List.copyOf(assumed);
        trail = List.copyOf(trail);
    }

    /** The same answer with one more reason, which may make it stricter. */
    Answer and(Finding finding) {
        List<Finding> all = new ArrayList<>(reasons);
        all.add(finding.code().brings().compareTo(verdict) > 0 ? 0 : all.size(), finding);
        Verdict stricter = verdict.stricterOf(finding.code().brings());
        return new Answer(
                stricter,
                stricter == verdict ? until : Optional.empty(),
                floorLife,
                clock,
                bakeColumn,
                bakes,
                all,
                Steps.of(stricter, all, bakes),
                assumed,
                trail);
    }

    /** The same answer, naming a logger or an oven that it rests on and that was to be calibrated by a day. */
    public Answer namingPastCalibration(String name, LocalDate dueOn) {
        return and(Finding.of(FindingCode.CALIBRATION_PAST_DUE, name, dueOn));
    }

    /** The answer for a board without parts. */
    static Answer empty(List<BakeOffer> bakes, List<Finding> reasons) {
        Verdict verdict = reasons.stream().map(f -> f.code().brings()).reduce(Verdict.CLEAR, Verdict::stricterOf);
        return new Answer(
                verdict,
                Optional.empty(),
                new FloorLife(Optional.empty(), BigDecimal.ZERO, Optional.empty()),
                ClockState.NONE,
                Optional.empty(),
                bakes,
                reasons,
                Steps.of(verdict, reasons, bakes),
                List.of(),
                List.of());
    }

    /** Which bake times count. */
    public enum Column {
        OVER_72H("over-72h"),
        WITHIN_72H("within-72h"),
        MAKER("maker");

        private final String code;

        Column(String code) {
            this.code = code;
        }

        /** The word used in answers. */
        public String code() {
            return code;
        }
    }

    /**
     * Floor life in numbers.
     *
     * @param total empty if unlimited or none
     * @param usedHours used share times the total; 0 without a total
     * @param endsAt when it runs out if the part stays where it is
     */
    public record FloorLife(Optional<Cited<Life>> total, BigDecimal usedHours, Optional<Instant> endsAt) {
        /** Total in hours. */
        public Optional<BigDecimal> totalHours() {
            return total.map(life -> Share.WHOLE.hoursOf(life.value()));
        }

        /** Total less used, never below 0; empty without a total. */
        public Optional<BigDecimal> remainingHours() {
            return totalHours().map(all -> all.subtract(usedHours).max(BigDecimal.ZERO));
        }
    }

    /** Whether a finding is among the reasons. */
    public boolean has(FindingCode code) {
        return reasons.stream().anyMatch(finding -> finding.code() == code);
    }
}
