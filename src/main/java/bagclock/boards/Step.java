package bagclock.boards;

/** The steps of a rework job, in the order of the trade. */
enum Step {
    CHECK,
    BAKE,
    REMOVE,
    CLEAN,
    /** What is kept is baked again if it must, and balled anew. */
    KEEP,
    PLACE,
    INSPECT;

    /** Its word in addresses and entries. */
    String code() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
