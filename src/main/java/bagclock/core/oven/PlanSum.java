package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a plan comes to, counted from its times alone.
 *
 * @param late lots that come out after they are needed
 * @param lateHours weighted sum of their lateness
 * @param ovenTime sum of all runs that are not frozen, from closing the door until ready to be opened
 * @param runs number of runs that are not frozen
 * @param changes how many of those have another temperature than what was in the oven before
 */
public record PlanSum(List<Late> late, Duration lateHours, Duration ovenTime, int runs, int changes) {
    /** A late lot. */
    public record Late(String lot, Instant neededBy, Instant outAt) {
        /** How late. */
        public Duration by() {
            return Duration.between(neededBy, outAt);
        }
    }

    /** Keeps its own copy. */
    public PlanSum {
        late = List.copyOf(late);
    }

    /** Of a plan for a shop; lots of frozen runs count as all others do, their runs do not. */
    public static PlanSum of(Shop shop, Plan plan) {
        List<Late> late = new ArrayList<>();
        Duration sum = Duration.ZERO;
        for (Lot lot : shop.lots()) {
            Optional<Instant> out = plan.stay(lot.tag()).map(Run.Stay::outAt);
            Optional<Instant> due = lot.wish().neededBy();
            if (out.isPresent() && due.isPresent() && out.get().isAfter(due.get())) {
                Late one = new Late(lot.tag(), due.get(), out.get());
                late.add(one);
                sum = sum.plus(one.by().multipliedBy(lot.wish().weight()));
            }
        }
        Duration time = Duration.ZERO;
        int runs = 0;
        for (Run run : plan.runs()) {
            if (!shop.frozen().contains(run)) {
                time = time.plus(shut(shop, run));
                runs++;
            }
        }
        return new PlanSum(late, sum, time, runs, changes(shop, plan));
    }

    private static int changes(Shop shop, Plan plan) {
        int changes = 0;
        for (Oven oven : shop.ovens()) {
            Optional<Celsius> before = oven.habits().last();
            for (Run run : plan.runs()) {
                if (run.oven().equals(oven.code())) {
                    boolean isOther =
                            before.filter(was -> !was.equals(run.temperature())).isPresent();
                    changes += isOther && !shop.frozen().contains(run) ? 1 : 0;
                    before = Optional.of(run.temperature());
                }
            }
        }
        return changes;
    }

    /** Time with the door shut that a run needs; waiting for somebody to open it does not count. */
    public static Duration shut(Shop shop, Run run) {
        Oven oven = shop.ovensByCode().get(run.oven());
        boolean isTogether = run.stays().stream()
                .allMatch(stay ->
                        stay.inAt().equals(run.startAt()) && stay.outAt().equals(run.endAt()));
        Duration whole = Duration.between(run.startAt(), run.endAt());
        if (!isTogether || oven == null) {
            return whole;
        }
        Duration least = Duration.ZERO;
        for (Lot lot : shop.lots()) {
            if (run.lots().contains(lot.tag())) {
                Duration needs = needs(lot, run, oven);
                least = needs.compareTo(least) > 0 ? needs : least;
            }
        }
        return oven.doorShutFor(least);
    }

    private static Duration needs(Lot lot, Run run, Oven oven) {
        return lot.programmes().stream()
                .filter(one -> one.temperature().equals(run.temperature()) && one.fits(oven))
                .map(Programme::least)
                .min(Duration::compareTo)
                .orElse(Duration.ZERO);
    }
}
