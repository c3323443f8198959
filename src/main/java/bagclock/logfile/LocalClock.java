package bagclock.logfile;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.Optional;

/**
 * Turns the times of a logger's own clock into moments, line by line. Of an hour that autumn has twice the lines above a
 * step back in time belong to summer time, those from it on to winter time; a file without such a step leaves it open. A
 * time that spring skips is moved on.
 */
final class LocalClock {
    private final ZoneRules rules;
    private final boolean newestFirst;
    private final Optional<Boolean> secondOfBoth;

    private LocalDate plainDay = LocalDate.MIN;
    private ZoneOffset plainOffset = ZoneOffset.UTC;
    private Optional<Overlap> overlap = Optional.empty();
    private boolean unclear;
    private boolean skipped;

    /** An hour that the zone has twice. */
    private static final class Overlap {
        private final ZoneOffsetTransition transition;
        private LocalDateTime last;
        private boolean stepped;

        Overlap(ZoneOffsetTransition transition, LocalDateTime first) {
            this.transition = transition;
            this.last = first;
        }
    }

    LocalClock(ZoneId zone, boolean newestFirst, Optional<Boolean> secondOfBoth) {
        this.rules = zone.getRules();
        this.newestFirst = newestFirst;
        this.secondOfBoth = secondOfBoth;
    }

    /** Whether an hour that the zone has twice was there once only. */
    boolean isUnclear() {
        return secondOfBoth.isEmpty()
                && (unclear || overlap.filter(hour -> !hour.stepped).isPresent());
    }

    /** Whether the last time was one that spring skips. */
    boolean wasSkipped() {
        return skipped;
    }

    long ms(LocalDateTime local) {
        skipped = false;
        return local.toInstant(offset(local)).toEpochMilli();
    }

    private ZoneOffset offset(LocalDateTime local) {
        LocalDate day = local.toLocalDate();
        if (day.equals(plainDay)) {
            return plainOffset;
        }
        ZoneOffsetTransition transition = rules.getTransition(local);
        if (transition != null && transition.isOverlap()) {
            return twice(transition, local);
        }
        leaveOverlap();
        skipped = transition != null;
        ZoneOffset offset = rules.getOffset(local);
        if (rules.getOffset(day.atStartOfDay())
                .equals(rules.getOffset(day.plusDays(1).atStartOfDay()))) {
            plainDay = day;
            plainOffset = offset;
        }
        return offset;
    }

    private ZoneOffset twice(ZoneOffsetTransition transition, LocalDateTime local) {
        if (overlap.isEmpty() || !overlap.get().transition.equals(transition)) {
            leaveOverlap();
            overlap = Optional.of(new Overlap(transition, local));
        } else {
            Overlap hour = overlap.get();
            boolean back = newestFirst ? !local.isBefore(hour.last) : !local.isAfter(hour.last);
            hour.stepped |= back;
            hour.last = local;
        }
        boolean second = newestFirst != overlap.get().stepped;
        boolean wanted = overlap.get().stepped ? second : secondOfBoth.orElse(second);
        return wanted ? transition.getOffsetAfter() : transition.getOffsetBefore();
    }

    private void leaveOverlap() {
        unclear |= overlap.filter(hour -> !hour.stepped).isPresent();
        overlap = Optional.empty();
    }
}
