package bagclock.core.exposure;

import bagclock.core.exposure.TrailEntry.Where;
import bagclock.core.standard.Life;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the account of used life since the part was last dry, merging neighbours that count alike. */
final class Trail {
    private final List<Line> lines;

    Trail() {
        this(new ArrayList<>());
    }

    private Trail(List<Line> lines) {
        this.lines = lines;
    }

    Trail copy() {
        return new Trail(new ArrayList<>(lines));
    }

    /** What a stretch counted as: at a life each by the strict and the lenient reading, or raised outside the table. */
    record Line(
            long startMs,
            long endMs,
            Where where,
            Optional<Zone> zone,
            Optional<Air> air,
            Optional<Life> strict,
            Optional<Life> lenient,
            Share strictRaise,
            Share lenientRaise) {
        boolean continues(Line before) {
            return before.endMs == startMs
                    && before.where == where
                    && before.zone.equals(zone)
                    && before.strict.equals(strict)
                    && before.lenient.equals(lenient)
                    && strict.isPresent();
        }

        Line mergedInto(Line before) {
            Optional<Air> harsher = before.air.flatMap(one -> air.map(one::harsherOf));
            return new Line(before.startMs, endMs, where, zone, harsher, strict, lenient, strictRaise, lenientRaise);
        }

        TrailEntry entry(boolean leniently) {
            Optional<Life> life = leniently ? lenient : strict;
            Share raise = leniently ? lenientRaise : strictRaise;
            Share used = life.map(l -> Share.of(endMs - startMs, l)).orElse(raise);
            return new TrailEntry(
                    Instant.ofEpochMilli(startMs), Instant.ofEpochMilli(endMs), where, zone, air, life, used);
        }
    }

    void add(Line line) {
        int last = lines.size() - 1;
        if (last >= 0 && line.continues(lines.get(last))) {
            lines.set(last, line.mergedInto(lines.get(last)));
        } else {
            lines.add(line);
        }
    }

    List<TrailEntry> entries(boolean leniently) {
        return lines.stream().map(line -> line.entry(leniently)).toList();
    }
}
