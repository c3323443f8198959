package bagclock.core.heat;

import bagclock.core.exposure.ClockReading;
import bagclock.core.exposure.ClockReading.Fault;
import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.Tally;
import bagclock.core.exposure.UnknownHistory;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether moisture bars a heat, and whether a bake, a wait or a person mends it. */
final class Moisture {
    private final Part part;
    private final Level level;
    private final FoldedHistory folded;
    private final ClockReading reading;
    private final Tally tally;
    private final List<BakeOffer> offers;
    private final Duration heatLength;
    private final Instant moment;
    private final boolean onBoard;

    Moisture(Question question, FoldedHistory folded, Tally tally, CountingRating counting, List<BakeOffer> offers) {
        this.part = question.history().part();
        this.level = counting.rating().level().orElse(Level.L1);
        this.folded = folded;
        this.reading = folded.reading();
        this.tally = tally;
        this.offers = offers;
        this.heatLength = Assess.lengthOf(question.heat());
        this.moment = question.history().moment();
        this.onBoard = question.heldBy().isPresent();
    }

    /** Where moisture is no bar, an oven still is. */
    List<Finding> inOvenOnly() {
        return reading.run().map(run -> List.of(inOven(run))).orElse(List.of());
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        BakeRuns.findings(part, tally).forEach(findings::add);
        findings.addAll(levelHolds());
        List<Finding> dampness = dampness();
        if (dampness.isEmpty()) {
            findings.addAll(inOvenOnly());
            return findings;
        }
        Optional<Finding> mending = mending(dampness);
        findings.addAll(unmeasured());
        if (mending.isPresent()) {
            findings.add(mending.get());
            return findings;
        }
        findings.addAll(dampness);
        reading.run().ifPresent(run -> findings.add(Finding.of(FindingCode.BAKE_CANNOT_COUNT)));
        boolean refused = offers.stream().noneMatch(BakeOffer::isAllowed);
        boolean saidOtherwise = findings.stream().anyMatch(finding -> isHoldForWantOfRow(finding.code()));
        if (refused && !saidOtherwise) {
            findings.add(0, Finding.of(FindingCode.NO_BAKE_ALLOWED));
        }
        return findings;
    }

    private static boolean isHoldForWantOfRow(FindingCode code) {
        return code == FindingCode.BODY_NOT_MEASURED
                || code == FindingCode.BODY_WITHOUT_BAKE_ROW
                || code == FindingCode.LEVEL_6_WITHOUT_RULE;
    }

    private List<Finding> levelHolds() {
        List<Finding> holds = new ArrayList<>();
        if (reading.has(Fault.LEVEL_1_WETTED)) {
            holds.add(Finding.of(FindingCode.LEVEL_1_WETTED));
        }
        if (reading.has(Fault.LEVEL_1_TOO_DAMP)) {
            holds.add(Finding.of(FindingCode.LEVEL_1_TOO_DAMP));
        }
        if (level == Level.L6 && part.maker().bakes().isEmpty()) {
            holds.add(Finding.of(FindingCode.LEVEL_6_WITHOUT_RULE));
        }
        if (level == Level.L6 && part.maker().useWithin().isEmpty()) {
            holds.add(Finding.of(FindingCode.LEVEL_6_WITHOUT_TIME));
        }
        return holds;
    }

    /** Why the part is too damp to be heated; empty if it is not. */
    private List<Finding> dampness() {
        List<Finding> findings = new ArrayList<>();
        reading.unknown().ifPresent(unknown -> findings.add(Finding.of(code(unknown.cause()), unknown.at())));
        if (level == Level.L6) {
            levelSix(findings);
        } else if (findings.isEmpty() && !folded.isInsideAfterHeat(heatLength)) {
            findings.add(lifeOut());
        }
        boolean late =
                reading.timerEnd().filter(moment.plus(heatLength)::isAfter).isPresent();
        if (late) {
            findings.add(
                    Finding.of(FindingCode.USE_WITHIN_PASSED, reading.timerEnd().orElseThrow()));
        }
        return findings;
    }

    private void levelSix(List<Finding> findings) {
        if (findings.isEmpty() && reading.has(Fault.LEVEL_6_NOT_BAKED)) {
            findings.add(Finding.of(FindingCode.LEVEL_6_BAKE_FIRST));
        } else if (!reading.has(Fault.LEVEL_6_NOT_BAKED) && !folded.isInsideAfterHeat(heatLength)) {
            findings.add(Finding.of(FindingCode.LEVEL_6_ABOVE_30_60));
        }
    }

    private Finding lifeOut() {
        Object total = Finding.time(reading.total().orElseThrow().value());
        if (reading.has(Fault.DRY_STAY_TOO_LONG)) {
            return Finding.of(FindingCode.DRY_STORAGE_TOO_LONG);
        } else if (reading.has(Fault.OUTSIDE_TABLE)) {
            return Finding.of(FindingCode.OUTSIDE_TABLE).citing(reading.citation());
        }
        FindingCode code = reading.inside() ? FindingCode.HEAT_ENDS_TOO_LATE : FindingCode.FLOOR_LIFE_USED;
        Object when = folded.endsAt().map(end -> (Object) end).orElse("");
        return Finding.of(code, total, when).citing(reading.citation());
    }

    private static FindingCode code(UnknownHistory.Cause cause) {
        return switch (cause) {
            case UNKNOWN_EXPOSURE -> FindingCode.EXPOSURE_UNKNOWN;
            case WETTED -> FindingCode.PART_WETTED;
            case BAG_DAMAGED -> FindingCode.BAG_DAMAGED;
            case CARD_MISSING -> FindingCode.CARD_MISSING;
            case CARD_WITHOUT_PROOF -> FindingCode.CARD_WITHOUT_PROOF;
            case CARD_READ_LATE -> FindingCode.CARD_READ_LATE;
            case CARD_WET -> FindingCode.CARD_WET;
        };
    }

    /** A bake or a rest under way that will mend the part. */
    private Optional<Finding> mending(List<Finding> dampness) {
        if (reading.run().isPresent()) {
            return reading.run().filter(run -> run.needed().isPresent()).map(this::inOven);
        }
        boolean lifeOnly = dampness.stream()
                .allMatch(finding -> finding.code() == FindingCode.FLOOR_LIFE_USED
                        || finding.code() == FindingCode.HEAT_ENDS_TOO_LATE);
        return reading.restEnd()
                .filter(end -> lifeOnly && level.runsOnOnceExposed())
                .map(end -> Finding.of(FindingCode.DRY_REST, end));
    }

    private Finding inOven(ClockReading.Run run) {
        Optional<Instant> ready = run.readyAt();
        boolean over = ready.filter(end -> !end.isAfter(moment)).isPresent();
        FindingCode code = over ? FindingCode.BAKE_END_NOT_RECORDED : FindingCode.IN_OVEN;
        return Finding.of(code, ready.map(end -> (Object) end).orElse(""));
    }

    /** What must be known before a bake can be named. */
    private List<Finding> unmeasured() {
        List<Finding> findings = new ArrayList<>();
        boolean byTable = part.maker().bakes().isEmpty() && level.hasFloorLife();
        boolean noThickness = part.body().thickness().isEmpty();
        if (byTable && (noThickness || part.body().kind() == BodyKind.UNKNOWN)) {
            findings.add(Finding.of(FindingCode.BODY_NOT_MEASURED));
        } else if (byTable && offers.isEmpty()) {
            findings.add(Finding.of(
                    FindingCode.BODY_WITHOUT_BAKE_ROW, part.body().thickness().orElseThrow()));
        }
        if (isOnUnknownBoard()) {
            findings.add(Finding.of(FindingCode.BOARD_LIMIT_UNKNOWN));
        }
        return findings;
    }

    private boolean isOnUnknownBoard() {
        boolean mounted = folded.whereabouts().mounted() || onBoard;
        return mounted
                && reading.unknown().isPresent()
                && tally.carrier().borne().isEmpty();
    }
}
