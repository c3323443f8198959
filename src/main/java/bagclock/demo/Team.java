package bagclock.demo;

/** The ids of the demonstration's people, one for each role. */
final class Team {
    static final String CLERK = "demo-clerk";
    static final String TECHNICIAN = "demo-technician";
    static final String PLANNER = "demo-planner";
    static final String ENGINEER = "demo-engineer";

    private Team() {}
}
