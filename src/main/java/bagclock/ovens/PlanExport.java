package bagclock.ovens;

import bagclock.core.oven.Plan;
import bagclock.core.oven.Run;
import bagclock.platform.CsvTable;
import bagclock.platform.Texts;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A plan for other programs: a table (RFC 4180), and a calendar (RFC 5545). Times are UTC. */
final class PlanExport {
    private static final DateTimeFormatter CALENDAR =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ENGLISH).withZone(ZoneOffset.UTC);
    private static final int LONGEST_LINE = 74;

    private final OvenWords words;
    private final Texts texts;

    PlanExport(OvenWords words, Texts texts) {
        this.words = words;
        this.texts = texts;
    }

    /** One line for each lot. */
    String table(Plan plan) {
        List<List<String>> lines = new ArrayList<>();
        for (Run run : plan.runs()) {
            for (Run.Stay stay : run.stays()) {
                lines.add(List.of(
                        run.oven(),
                        texts.number(run.temperature().degrees()),
                        CsvTable.defused(stay.lot()),
                        texts.machine(stay.inAt()),
                        texts.machine(stay.outAt())));
            }
        }
        return CsvTable.of(List.of("oven", "set_point_c", "item", "in_at", "out_at"), lines);
    }

    /** One entry for each run, the cancelled too: who reads it again finds each run under the name that it had. */
    String calendar(List<CalendarEntry> entries) {
        StringBuilder out = new StringBuilder();
        line(out, "BEGIN:VCALENDAR");
        line(out, "VERSION:2.0");
        line(out, "PRODID:-//Bagclock//Oven plan//EN");
        for (CalendarEntry entry : entries) {
            Run run = entry.run();
            line(out, "BEGIN:VEVENT");
            line(out, "UID:" + entry.uid() + "@bagclock.invalid");
            line(out, "SEQUENCE:" + entry.sequence());
            line(out, "DTSTAMP:" + CALENDAR.format(entry.changedAt()));
            line(out, "LAST-MODIFIED:" + CALENDAR.format(entry.changedAt()));
            line(out, "STATUS:" + (entry.cancelled() ? "CANCELLED" : "CONFIRMED"));
            line(out, "DTSTART:" + CALENDAR.format(run.startAt()));
            line(out, "DTEND:" + CALENDAR.format(run.endAt()));
            line(
                    out,
                    "SUMMARY:"
                            + escaped(words.text(
                                    "plan.calendar",
                                    run.oven(),
                                    texts.temperature(run.temperature()),
                                    String.join(", ", run.lots()))));
            List<String> apart = Apart.of(run, words, texts::at);
            if (!apart.isEmpty()) {
                line(out, "DESCRIPTION:" + escaped(String.join(" ", apart)));
            }
            line(out, "END:VEVENT");
        }
        line(out, "END:VCALENDAR");
        return out.toString();
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,");
    }

    /** Lines are folded, so that none is longer than 75 octets; characters here take at most two. */
    private static void line(StringBuilder out, String text) {
        String rest = text;
        while (rest.length() > LONGEST_LINE / 2) {
            out.append(rest, 0, LONGEST_LINE / 2).append("\r\n ");
            rest = rest.substring(LONGEST_LINE / 2);
        }
        out.append(rest).append("\r\n");
    }
}
