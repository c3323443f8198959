package bagclock.demo;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardAsk;
import bagclock.desk.BoardNote;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.register.BoardType;
import bagclock.register.BoardType.KeptOn;
import bagclock.register.BoardType.Spot;
import bagclock.register.Change;
import bagclock.register.HeatProfile;
import bagclock.register.KnownBoard;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The shop's board types, heat profiles, boards and rework jobs, one of them half done. */
record BoardJobs(Desk desk, Instant now) {
    private static final String SONAR = "HQB-S1";
    private static final String RADAR = "HQB-R2";
    private static final String SONAR_BOARD = "HQB-0117";
    private static final String RADAR_BOARD = "HQB-0204";
    private static final Celsius ELSEWHERE = new Celsius(135);

    void tell() {
        Instant opened = now.minus(HarrowQuay.PAST);
        Change first = new Change(opened, opened, Team.ENGINEER, 0);
        desk.boards().keep(sonar(), first);
        desk.boards().keep(radar(), first);
        desk.boards().keep(new KnownBoard(SONAR_BOARD, SONAR, false), first);
        desk.boards().keep(new KnownBoard(RADAR_BOARD, RADAR, true), first);
        List.of(
                        profile(SONAR, 1, "U1", HeatProfile.Kind.REMOVAL, Map.of("U2", 212.0, "U7", 168.0)),
                        profile(SONAR, 2, "U1", HeatProfile.Kind.PLACEMENT, Map.of("U2", 208.0, "U7", 160.0)),
                        profile(RADAR, 1, "U4", HeatProfile.Kind.REMOVAL, Map.of("U9", 214.0, "J2", 120.0)))
                .forEach(profile -> desk.boards().keep(profile, first));
        sonarJob();
        radarJob();
    }

    private static BoardType sonar() {
        return new BoardType(
                SONAR,
                "Sonar receiver board",
                Optional.of(new Celsius(110)),
                Optional.empty(),
                Optional.of(false),
                List.of(new KeptOn("electrolytic capacitors C1, C2", Optional.of(new Celsius(105)))),
                List.of(
                        new Spot("U1", "SNR-1001"),
                        new Spot("U2", "SNR-1003"),
                        new Spot("U7", "TGE-2003"),
                        new Spot("Q3", "PWR-4002")));
    }

    private static BoardType radar() {
        return new BoardType(
                RADAR,
                "Radar display board",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(new KeptOn("clock battery BT1", Optional.empty())),
                List.of(
                        new Spot("U4", "RDR-3001"),
                        new Spot("U5", "RDR-3006"),
                        new Spot("U9", "RDR-3003"),
                        new Spot("J2", "RDR-3004")));
    }

    private HeatProfile profile(
            String type, int number, String location, HeatProfile.Kind kind, Map<String, Double> neighbours) {
        Map<String, Celsius> peaks = new java.util.TreeMap<>();
        neighbours.forEach((spot, degrees) -> peaks.put(spot, new Celsius(degrees)));
        return new HeatProfile(
                type + "." + number,
                type,
                location,
                kind,
                "hot air, 27 mm nozzle, preheater 120 \u00b0C",
                Optional.of(new Celsius(238)),
                peaks,
                Optional.of(ELSEWHERE),
                Duration.ofMinutes(6),
                now.minus(Duration.ofDays(40)).atZone(ZoneOffset.UTC).toLocalDate(),
                "Process engineer, three thermocouples");
    }

    /** Half done: checked, no bake needed, the removal comes next. */
    private void sonarJob() {
        note(
                SONAR_BOARD,
                0,
                "PT5H",
                Kind.JOB_OPENED,
                Map.of(
                        BoardNotes.LOCATION, "U1",
                        BoardNotes.WHY, "Channel 3 is deaf, work order HQ-3317.",
                        BoardNotes.FATE, "analysis"));
        note(
                SONAR_BOARD,
                1,
                "PT4H30M",
                Kind.STEP_DONE,
                Map.of(
                        BoardNotes.JOB,
                        "1",
                        BoardNotes.STEP,
                        "check",
                        BoardNotes.WHY,
                        "No coating; capacitors stay on."));
        note(SONAR_BOARD, 2, "PT4H", Kind.STEP_DONE, Map.of(BoardNotes.JOB, "1", BoardNotes.STEP, "bake"));
    }

    /** Held: nobody knows what the board bears. An engineer released one heat. */
    private void radarJob() {
        note(
                RADAR_BOARD,
                0,
                "PT22H",
                Kind.JOB_OPENED,
                Map.of(
                        BoardNotes.LOCATION, "U4",
                        BoardNotes.WHY, "No picture.",
                        BoardNotes.FATE, "scrap"));
        note(RADAR_BOARD, 1, "PT21H", Kind.STEP_DONE, Map.of(BoardNotes.JOB, "1", BoardNotes.STEP, "check"));
        BoardAsk ask = new BoardAsk(
                RADAR_BOARD,
                "U4",
                Purpose.REMOVAL_SCRAP,
                Optional.empty(),
                Optional.of(RADAR + ".1"),
                Optional.empty(),
                Duration.ofMinutes(6),
                now.minus(Duration.ofHours(20)));
        desk.boards()
                .record(
                        new BoardNote(
                                header(RADAR_BOARD, 2, "PT20H", Team.ENGINEER),
                                RADAR_BOARD,
                                2,
                                Kind.RELEASED,
                                Map.of(
                                        BoardNotes.JOB,
                                        "1",
                                        BoardNotes.WHY,
                                        "Last board of its kind; U9 is replaced next whatever becomes of it."),
                                Optional.of(ask),
                                List.of()),
                        now.minus(Duration.ofHours(20)))
                .fold(entry -> entry, refusals -> {
                    throw new IllegalStateException("refused: " + refusals);
                });
    }

    private Command.Header header(String serial, int seen, String ago, String who) {
        return new Command.Header(who, now.minus(Duration.parse(ago)), "demo board " + serial + " " + (seen + 1));
    }

    private void note(String serial, int seen, String ago, Kind kind, Map<String, String> told) {
        BoardNote note = new BoardNote(
                header(serial, seen, ago, Team.TECHNICIAN), serial, seen, kind, told, Optional.empty(), List.of());
        desk.boards().record(note, now.minus(Duration.parse(ago))).fold(entry -> entry, refusals -> {
            throw new IllegalStateException("refused: " + refusals);
        });
    }
}
