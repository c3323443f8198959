package bagclock.core.heat;

/** What mends an answer, and whose task it is; the names are the step codes of the assess contract. */
public enum StepCode {
    OPEN_AND_READ_CARD(Role.CLERK),
    ENTER_LEVEL(Role.ENGINEER),
    MEASURE_BODY(Role.TECHNICIAN),
    MEASURE_EDGES(Role.TECHNICIAN),
    BAKE(Role.PLANNER),
    WAIT_FOR_OVEN(Role.TECHNICIAN),
    RECORD_BAKE_END(Role.PLANNER),
    WAIT_IN_DRY_STORAGE(Role.TECHNICIAN),
    CHANGE_CARRIER(Role.CLERK),
    ENTER_BAKE_LIMIT(Role.ENGINEER),
    ENTER_BOARD_LIMIT(Role.ENGINEER),
    ENTER_MAKERS_BAKE(Role.ENGINEER),
    ENTER_LABEL_TIME(Role.ENGINEER),
    LOWER_THE_PEAK(Role.TECHNICIAN),
    TAKE_ANOTHER_PART(Role.TECHNICIAN),
    ASK_ENGINEER(Role.ENGINEER);

    private final Role role;

    StepCode(Role role) {
        this.role = role;
    }

    /** Whose task it is. */
    public Role role() {
        return role;
    }

    /** The people of the site. */
    public enum Role {
        CLERK("clerk"),
        TECHNICIAN("technician"),
        PLANNER("planner"),
        ENGINEER("engineer");

        private final String code;

        Role(String code) {
            this.code = code;
        }

        /** The word used in answers. */
        public String code() {
            return code;
        }
    }
}
