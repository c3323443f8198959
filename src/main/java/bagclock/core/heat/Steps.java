package bagclock.core.heat;

import bagclock.core.heat.BakeOffer.BarCode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What would mend an answer, best first. */
final class Steps {
    private Steps() {}

    static List<StepCode> of(Verdict verdict, List<Finding> findings, List<BakeOffer> offers) {
        Set<StepCode> steps = new LinkedHashSet<>();
        if (verdict != Verdict.CLEAR) {
            findings.stream()
                    .filter(finding -> finding.code().brings() != Verdict.CLEAR)
                    .forEach(finding -> steps.addAll(steps(finding.code(), offers)));
        }
        return List.copyOf(steps);
    }

    private static List<StepCode> steps(FindingCode code, List<BakeOffer> offers) {
        if (code == FindingCode.NO_BAKE_ALLOWED) {
            return waysOut(offers);
        } else if (code.brings() == Verdict.BAKE) {
            return offers.stream().anyMatch(BakeOffer::isAllowed) ? List.of(StepCode.BAKE) : List.of();
        }
        return code.brings() == Verdict.WAIT ? List.of(wait(code)) : hold(code);
    }

    private static StepCode wait(FindingCode code) {
        return switch (code) {
            case DRY_REST -> StepCode.WAIT_IN_DRY_STORAGE;
            case BAKE_END_NOT_RECORDED -> StepCode.RECORD_BAKE_END;
            default -> StepCode.WAIT_FOR_OVEN;
        };
    }

    private static List<StepCode> hold(FindingCode code) {
        return switch (code) {
            case BAG_SEALED -> List.of(StepCode.OPEN_AND_READ_CARD);
            case LEVEL_UNKNOWN -> List.of(StepCode.ENTER_LEVEL);
            case BODY_NOT_MEASURED -> List.of(StepCode.MEASURE_BODY);
            case BODY_WITHOUT_BAKE_ROW, LEVEL_6_WITHOUT_RULE -> List.of(StepCode.ENTER_MAKERS_BAKE);
            case LEVEL_6_WITHOUT_TIME -> List.of(StepCode.ENTER_LABEL_TIME);
            case BOARD_LIMIT_UNKNOWN -> List.of(StepCode.ENTER_BOARD_LIMIT);
            case PEAK_ABOVE_RATING -> List.of(StepCode.LOWER_THE_PEAK, StepCode.TAKE_ANOTHER_PART);
            case PASSES_USED_UP, LOCATION_REPLACED_TWICE -> List.of(StepCode.TAKE_ANOTHER_PART, StepCode.ASK_ENGINEER);
            default -> List.of(StepCode.ASK_ENGINEER);
        };
    }

    /** No bake is allowed: what would have to change so that one is. */
    private static List<StepCode> waysOut(List<BakeOffer> offers) {
        Set<StepCode> steps = new LinkedHashSet<>();
        for (BakeOffer offer : offers) {
            boolean only = offer.bars().size() == 1;
            offer.bars().stream().filter(bar -> only).forEach(bar -> steps.add(wayOut(bar.code())));
        }
        steps.add(StepCode.ASK_ENGINEER);
        return List.copyOf(steps);
    }

    private static StepCode wayOut(BarCode code) {
        return switch (code) {
            case CARRIER -> StepCode.CHANGE_CARRIER;
            case PART_LIMIT_UNKNOWN -> StepCode.ENTER_BAKE_LIMIT;
            case MEASURE_EDGES -> StepCode.MEASURE_EDGES;
            case PART_LIMIT, HOURS_ABOVE_90, SITE_HOURS_ABOVE_90, NUMBER_OF_BAKES, OTHER_PART -> StepCode.ASK_ENGINEER;
        };
    }
}
