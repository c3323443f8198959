package bagclock.demo;

import static bagclock.demo.Carriers.LOOSE;
import static bagclock.demo.Places.BENCH;
import static bagclock.demo.Places.LINE;
import static bagclock.demo.Places.SHED;

import bagclock.core.heat.HeatPlan.Purpose;

/** What happened to the parts on two boards: one repaired here, one back from a harbour. */
record BoardStory(StockStory story) {
    private static final String SONAR_BOARD = "HQB-0117";
    private static final String RADAR_BOARD = "HQB-0204";

    void tell() {
        sonarBoard();
        radarBoard();
    }

    private void sonarBoard() {
        placed("P-461", "SNR-1001", "U1", 15);
        placed("P-462", "SNR-1003", "U2", 20);
        placed("P-463", "TGE-2003", "U7", 18);
        placed("P-464", "PWR-4002", "Q3", 30);
    }

    /** Placed and soldered within its floor life. */
    private void placed(String tag, String partNumber, String location, int sealedDays) {
        story.item(tag)
                .at("P4D")
                .comes(partNumber, 1, LOOSE, sealedDays)
                .at("PT52H")
                .opened(LINE)
                .at("PT51H")
                .mountedOn(SONAR_BOARD, location, LINE)
                .at("PT50H")
                .heated(Purpose.WHOLE_BOARD, 238)
                .at("PT49H")
                .boardBears(110);
    }

    private void radarBoard() {
        returned("P-471", "RDR-3001", "U4");
        returned("P-472", "RDR-3003", "U9");
        returned("P-473", "RDR-3004", "J2");
        story.item("P-474")
                .at("P3D")
                .comesLoose("RDR-3006", 1, LOOSE, SHED)
                .at("P2DT23H")
                .mountedOn(RADAR_BOARD, "U5", SHED)
                .at("PT26H")
                .heated(Purpose.REMOVAL_SCRAP, 215)
                .at("PT25H")
                .removed(BENCH);
    }

    /** Came back on its board; nobody knows what it went through. */
    private void returned(String tag, String partNumber, String location) {
        story.item(tag)
                .at("P3D")
                .comesLoose(partNumber, 1, LOOSE, SHED)
                .at("P2DT23H")
                .mountedOn(RADAR_BOARD, location, SHED);
    }
}
