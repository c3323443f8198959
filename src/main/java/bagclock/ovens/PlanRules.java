package bagclock.ovens;

import bagclock.core.oven.Aim;
import bagclock.core.oven.ChangeOvers;
import bagclock.core.oven.Shop;
import bagclock.core.oven.Span;
import bagclock.register.KnownPlace.Pauses;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The site's choices for plans, in minutes.
 *
 * @param opensMin minute of the day from which somebody opens doors; both 0: always
 * @param closesMin minute of the day until which
 * @param weekends whether on Saturdays and Sundays too
 * @param fenceMin planned runs that start sooner than this stay as they are
 * @param movePriceMin weighted minutes late that moving one lot must save
 * @param coolDownMin from the end of a bake until the door is opened
 * @param turnaroundMin between two runs
 * @param changeMin between two runs at different temperatures
 * @param searchS how long the search for a better plan goes on, in seconds
 * @param doorMin what one opening of a door adds to what stays in; below 0: no run is opened
 * @param patienceMin a lot that nobody needs by a time is to be out so long after it first could be; below 0: it may wait
 *     as long as it likes
 */
public record PlanRules(
        int opensMin,
        int closesMin,
        boolean weekends,
        int fenceMin,
        int movePriceMin,
        int coolDownMin,
        int turnaroundMin,
        int changeMin,
        int searchS,
        int doorMin,
        int patienceMin) {
    /** What counts as long as nobody has decided. */
    static final PlanRules USUAL = new PlanRules(0, 0, true, 60, 30, 15, 15, 60, 20, -1, 7 * 24 * 60);

    private static final int DAYS_AHEAD = 70;
    private static final int MOST_DAYS_AHEAD = 1_000;

    /** Between two runs of an oven: its own pauses, where it has some. */
    ChangeOvers changes(Pauses own) {
        Duration turnaround = own.turnaround().orElse(Duration.ofMinutes(turnaroundMin));
        return ChangeOvers.of(turnaround, own.change().orElse(Duration.ofMinutes(changeMin)));
    }

    /** Until the door of an oven may be opened: its own, where it has one. */
    Duration coolDown(Pauses own) {
        return own.coolDown().orElse(Duration.ofMinutes(coolDownMin));
    }

    Duration search() {
        return Duration.ofSeconds(searchS);
    }

    Duration fence() {
        return Duration.ofMinutes(fenceMin);
    }

    Duration movePrice() {
        return Duration.ofMinutes(movePriceMin);
    }

    /** How long a lot without a time may wait; empty: as long as it likes. */
    Optional<Duration> patience() {
        return patienceMin < 0 ? Optional.empty() : Optional.of(Duration.ofMinutes(patienceMin));
    }

    /**
     * For a plan made at a moment.
     *
     * @param reach by when everything that is known of may be over: the hours in which doors are opened are told beyond it,
     *     but for less than three years
     */
    Shop.Customs customs(Instant now, ZoneId zone, Instant reach) {
        Optional<Duration> door = doorMin < 0 ? Optional.empty() : Optional.of(Duration.ofMinutes(doorMin));
        long days = DAYS_AHEAD + Math.max(0, Duration.between(now, reach).toDays());
        return new Shop.Customs(attended(now, zone, Math.min(days, MOST_DAYS_AHEAD)), door, Aim.STAGES);
    }

    private List<Span> attended(Instant now, ZoneId zone, long ahead) {
        List<Span> days = new ArrayList<>();
        if (opensMin == 0 && closesMin == 0) {
            return days;
        }
        LocalDate first = LocalDate.ofInstant(now, zone);
        for (int i = 0; i < ahead; i++) {
            LocalDate day = first.plusDays(i);
            boolean isWeekend = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
            Instant opens = at(day, opensMin, zone);
            Instant closes = at(day, closesMin, zone);
            if ((weekends || !isWeekend) && opens.isBefore(closes) && closes.isAfter(now)) {
                days.add(new Span(opens, closes));
            }
        }
        return days;
    }

    private static Instant at(LocalDate day, int minute, ZoneId zone) {
        // By the clock on the wall, also on the days that have an hour more or less.
        return day.atStartOfDay().plusMinutes(minute).atZone(zone).toInstant();
    }
}
