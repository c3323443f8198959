package bagclock.core.heat;

import bagclock.core.standard.Status;

/**
 * Something that an answer rests on, with the verdict that it alone would bring and where the rule comes from. The
 * names are stable: they are the reason codes of the assess contract.
 */
public enum FindingCode {
    LEVEL_UNKNOWN(Verdict.HOLD, "J-STD-020, classification", Status.SEEN),
    BAG_SEALED(Verdict.HOLD, "J-STD-033D, dry pack and card at opening", Status.SEEN),
    PEAK_ABOVE_RATING(Verdict.HOLD, "J-STD-020, classification temperature", Status.SEEN),
    PASSES_USED_UP(Verdict.HOLD, "J-STD-020, three reflow passes; the maker's limit", Status.SEEN),
    BAKED_TOO_HOT(Verdict.HOLD, "J-STD-033D, table 4-1 tolerances", Status.INFERENCE),
    PART_LIMIT_PASSED_IN_BAKE(Verdict.HOLD, "the part's own bake limit", Status.INFERENCE),
    BODY_NOT_MEASURED(Verdict.HOLD, "J-STD-033D, table 4-1 asks for body and thickness", Status.SEEN),
    BODY_WITHOUT_BAKE_ROW(Verdict.HOLD, "J-STD-033D, table 4-1 ends at 4.5 mm", Status.MEMORY),
    NO_BAKE_ALLOWED(Verdict.HOLD, "J-STD-033D, clause 4.2", Status.SEEN),
    BOARD_LIMIT_UNKNOWN(Verdict.HOLD, "common practice for boards back from the field", Status.INFERENCE),
    BOARD_COATED(Verdict.HOLD, "no table time for coated, potted or underfilled boards", Status.INFERENCE),
    LOCATION_REPLACED_TWICE(
            Verdict.HOLD, "site rule; common practice two replacements at a location", Status.INFERENCE),
    LEVEL_1_WETTED(Verdict.HOLD, "J-STD-033D has no row for level 1", Status.INFERENCE),
    LEVEL_1_TOO_DAMP(Verdict.HOLD, "J-STD-020, level 1 limit 30 C / 85 %RH", Status.INFERENCE),
    LEVEL_6_WITHOUT_RULE(Verdict.HOLD, "J-STD-020, level 6", Status.SEEN),
    LEVEL_6_WITHOUT_TIME(Verdict.HOLD, "J-STD-020, level 6, time on label", Status.SEEN),
    FLOOR_LIFE_USED(Verdict.BAKE, "J-STD-033D, table 5-1", Status.SEEN),
    HEAT_ENDS_TOO_LATE(Verdict.BAKE, "J-STD-033D, table 5-1", Status.SEEN),
    OUTSIDE_TABLE(Verdict.BAKE, "J-STD-033D, table 7-1", Status.SEEN),
    DRY_STORAGE_TOO_LONG(Verdict.BAKE, "J-STD-033D, tables 4-3 and 7-1", Status.MEMORY),
    EXPOSURE_UNKNOWN(Verdict.BAKE, "J-STD-033D, clause 4.1", Status.SEEN),
    PART_WETTED(Verdict.BAKE, "J-STD-033D, clause 4.1", Status.INFERENCE),
    BAG_DAMAGED(Verdict.BAKE, "J-STD-033D, dry pack inspection", Status.SEEN),
    CARD_MISSING(Verdict.BAKE, "J-STD-033D, humidity indicator card", Status.SEEN),
    CARD_WITHOUT_PROOF(Verdict.BAKE, "J-STD-033D, humidity indicator card", Status.INFERENCE),
    CARD_READ_LATE(Verdict.BAKE, "the project's own 30 min", Status.INFERENCE),
    CARD_WET(Verdict.BAKE, "J-STD-033D, humidity indicator card", Status.SEEN),
    USE_WITHIN_PASSED(Verdict.BAKE, "the maker's time after a bake", Status.SEEN),
    BOARD_USE_WITHIN_PASSED(Verdict.BAKE, "site rule; common practice 12 h or less", Status.INFERENCE),
    LEVEL_6_BAKE_FIRST(Verdict.BAKE, "J-STD-020, level 6", Status.SEEN),
    LEVEL_6_ABOVE_30_60(Verdict.BAKE, "J-STD-020, level 6", Status.INFERENCE),
    BAKE_CANNOT_COUNT(Verdict.BAKE, "J-STD-033D, table 4-1", Status.SEEN),
    IN_OVEN(Verdict.WAIT, "J-STD-033D, clause 4.2", Status.SEEN),
    BAKE_END_NOT_RECORDED(Verdict.WAIT, "J-STD-033D, clause 4.2", Status.INFERENCE),
    DRY_REST(Verdict.WAIT, "J-STD-033D, table 4-3", Status.MEMORY),
    INSIDE_FLOOR_LIFE(Verdict.CLEAR, "J-STD-033D, table 5-1", Status.SEEN),
    NO_FLOOR_LIFE(Verdict.CLEAR, "J-STD-020, level 1", Status.SEEN),
    INSIDE_LABEL_TIME(Verdict.CLEAR, "the maker's label", Status.SEEN),
    BODY_STAYS_AT_200(Verdict.CLEAR, "J-STD-033D, rework at or below 200 C", Status.SEEN),
    PART_IS_SCRAPPED(Verdict.CLEAR, "J-STD-033D, removal of a part not kept", Status.SEEN),
    LEVEL_1_ABOVE_30_85(Verdict.CLEAR, "J-STD-020, level 1 limit 30 C / 85 %RH", Status.SEEN),
    NOT_LOGGED(Verdict.CLEAR, "dry storage judged by its declared class", Status.INFERENCE),
    CALIBRATION_PAST_DUE(Verdict.CLEAR, "sensors and ovens past their calibration are named", Status.INFERENCE),
    AIR_DECLARED(Verdict.CLEAR, "declared worst case where no reading holds", Status.INFERENCE),
    AIR_UNKNOWN(Verdict.CLEAR, "neither reading nor declared worst case", Status.INFERENCE),
    SHELF_LIFE_PASSED(Verdict.CLEAR, "J-STD-033D, shelf life of a dry pack; the card decides", Status.SEEN),
    CHECK_SOLDERABILITY(Verdict.CLEAR, "common practice above 24 months", Status.INFERENCE),
    RENEW_DESICCANT(Verdict.CLEAR, "J-STD-033D, humidity indicator card, 5 % spot", Status.SEEN),
    MAKERS_BAKE(Verdict.CLEAR, "the maker's rule for the part", Status.SEEN),
    LOCATION_REPLACED(Verdict.CLEAR, "site rule; common practice warns at the second replacement", Status.INFERENCE),
    SITE_PEAK_LIMIT(Verdict.CLEAR, "limit of this site, stricter than the 200 C of J-STD-033D, rework", Status.SITE),
    SITE_BAKE_LIMIT(Verdict.CLEAR, "limit of this site, stricter than the 96 h of J-STD-033D, clause 4.2", Status.SITE);

    private final Verdict brings;
    private final String source;
    private final Status status;

    FindingCode(Verdict brings, String source, Status status) {
        this.brings = brings;
        this.source = source;
        this.status = status;
    }

    /** The verdict that this finding alone would bring. */
    public Verdict brings() {
        return brings;
    }

    /** Where the rule comes from, unless a finding cites a table cell. */
    public String source() {
        return source;
    }

    /** How well the rule is known, unless a finding cites a table cell. */
    public Status status() {
        return status;
    }
}
