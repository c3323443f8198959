package bagclock.ovens;

import bagclock.core.oven.Run;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What calendars of other programs are told of one run (RFC 5545: UID, SEQUENCE, LAST-MODIFIED, STATUS). A run keeps its
 * name from plan to plan as long as it has a lot in common with what it was.
 *
 * @param sequence 0 at first, one more with each change
 * @param changedAt when it changed last
 */
record CalendarEntry(String uid, int sequence, Instant changedAt, boolean cancelled, Run run) {
    /** Two runs that may be one, and how many lots they share. */
    private record Pair(CalendarEntry entry, Run run, long shared) {}

    /**
     * The entries after a plan was published: those that go on, changed or not, those that are new, and those that are
     * cancelled. What has begun and is not in the plan any more was done, or its lots are in it elsewhere: it stays.
     *
     * @param before entries that are neither over nor cancelled
     * @param runs of the plan
     * @param plan names what is new, with the run's place in the plan
     */
    static List<CalendarEntry> follow(List<CalendarEntry> before, List<Run> runs, String plan, Instant now) {
        List<Pair> pairs = new ArrayList<>();
        for (CalendarEntry entry : before) {
            for (Run run : runs) {
                long shared =
                        run.lots().stream().filter(entry.run().lots()::contains).count();
                if (shared > 0) {
                    pairs.add(new Pair(entry, run, shared));
                }
            }
        }
        pairs.sort(Comparator.comparingLong(Pair::shared)
                .reversed()
                .thenComparing(pair -> pair.entry().uid())
                .thenComparing(pair -> pair.run().startAt()));
        List<CalendarEntry> after = new ArrayList<>();
        Set<CalendarEntry> goOn = new HashSet<>();
        Set<Run> named = new HashSet<>();
        for (Pair pair : pairs) {
            if (!goOn.contains(pair.entry()) && named.add(pair.run())) {
                goOn.add(pair.entry());
                after.add(pair.entry().becomes(pair.run(), now));
            }
        }
        before.stream()
                .filter(entry -> !goOn.contains(entry) && entry.run().startAt().isAfter(now))
                .map(entry -> new CalendarEntry(entry.uid(), entry.sequence() + 1, now, true, entry.run()))
                .forEach(after::add);
        for (int at = 0; at < runs.size(); at++) {
            if (!named.contains(runs.get(at))) {
                after.add(new CalendarEntry(plan + "-" + at, 0, now, false, runs.get(at)));
            }
        }
        return after;
    }

    private CalendarEntry becomes(Run other, Instant now) {
        return isSame(other)
                ? new CalendarEntry(uid, sequence, changedAt, false, other)
                : new CalendarEntry(uid, sequence + 1, now, false, other);
    }

    private boolean isSame(Run other) {
        return run.oven().equals(other.oven())
                && run.temperature().equals(other.temperature())
                && new HashSet<>(run.stays()).equals(new HashSet<>(other.stays()));
    }
}
