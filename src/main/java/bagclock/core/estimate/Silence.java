package bagclock.core.estimate;

/** Why the model says nothing about a part. */
public enum Silence {
    /** Level unknown, or 1, 2 or 6, for which the model was not tried. */
    LEVEL_NOT_TRIED,
    /** Levels 4 to 5a: up to 66 % too long at 35 C; only warnings. */
    LEVEL_NOT_SOUND,
    /** The maker's own floor life or derating decides, and the model was tried on the table alone. */
    MAKERS_RULE,
    /** Only the class of 3.1 mm and above was tried on values that were read. */
    BODY_NOT_TRIED,
    /** Above 4.5 mm. */
    BODY_TOO_THICK,
    /** On a board at some time since it was dry: copper planes defeat a model in one dimension. */
    ON_BOARD,
    /** Put together from several histories. */
    JOINED,
    /** The history is not known. */
    HISTORY_UNKNOWN,
    /** Neither a reading nor a declared worst case for some time. */
    AIR_UNKNOWN,
    /** Some time above 35 C or 90 %RH, where the table ends. */
    AIR_OUTSIDE,
    /** A bake is under way. */
    IN_OVEN,
    /** Not in the air of a room since it was dry. */
    STILL_DRY
}
