package bagclock.core.oven;

import bagclock.core.oven.Fault.Law;
import bagclock.core.oven.Run.Stay;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether a plan is lawful: reads the shop and the plan, and nothing that made the plan. Every plan of every engine goes
 * through it before anybody sees it.
 */
public final class PlanCheck {
    private final Shop shop;
    private final Map<String, Oven> ovens;
    private final List<Fault> faults = new ArrayList<>();

    private PlanCheck(Shop shop) {
        this.shop = shop;
        this.ovens = shop.ovensByCode();
    }

    /** What is unlawful in a plan; empty if nothing is. */
    public static List<Fault> faults(Shop shop, Plan plan) {
        PlanCheck check = new PlanCheck(shop);
        check.lots(plan);
        for (Run frozen : shop.frozen()) {
            if (!plan.runs().contains(frozen)) {
                check.note(Law.FROZEN, frozen.oven());
            }
        }
        for (Oven oven : shop.ovens()) {
            check.order(oven, plan);
        }
        plan.runs().stream().filter(run -> !shop.frozen().contains(run)).forEach(check::run);
        return List.copyOf(check.faults);
    }

    private void note(Law law, String... parts) {
        faults.add(Fault.of(law, parts));
    }

    private void lots(Plan plan) {
        Set<String> seen = new HashSet<>();
        for (Run run : plan.runs()) {
            for (String lot : run.lots()) {
                if (!seen.add(lot)) {
                    note(Law.ONCE, lot);
                }
            }
        }
        for (Lot lot : shop.lots()) {
            if (!seen.contains(lot.tag())) {
                note(Law.EVERY_LOT, lot.tag());
            }
        }
    }

    /** Runs of one oven follow each other with the change between them. */
    private void order(Oven oven, Plan plan) {
        Optional<Run> before = Optional.empty();
        for (Run run : plan.runs()) {
            if (!run.oven().equals(oven.code())) {
                continue;
            }
            boolean isFrozen = shop.frozen().contains(run);
            Duration change = oven.habits()
                    .changes()
                    .between(before.map(Run::temperature).or(() -> oven.habits().last()), run.temperature())
                    .time();
            Instant free = before.map(Run::endAt).orElse(shop.now());
            boolean isBothFrozen =
                    isFrozen && (before.isEmpty() || shop.frozen().contains(before.orElseThrow()));
            if (run.startAt().minus(change).isBefore(free) && !isBothFrozen) {
                note(Law.NO_OVERLAP, oven.code());
            }
            if (!isFrozen) {
                inService(oven, run.startAt().minus(change), run.endAt());
            }
            before = Optional.of(run);
        }
    }

    private void inService(Oven oven, Instant from, Instant to) {
        for (Span span : oven.habits().outOfService()) {
            if (from.isBefore(span.endExclusive()) && span.startInclusive().isBefore(to)) {
                note(Law.IN_SERVICE, oven.code());
            }
        }
    }

    private void run(Run run) {
        Oven oven = ovens.get(run.oven());
        if (oven == null) {
            note(Law.KNOWN, run.oven());
            return;
        }
        if (run.startAt().isBefore(shop.now())) {
            note(Law.NOT_BEFORE_NOW, oven.code());
        }
        int load = 0;
        for (Stay stay : run.stays()) {
            Optional<Lot> lot = shop.lots().stream()
                    .filter(one -> one.tag().equals(stay.lot()))
                    .findFirst();
            if (lot.isEmpty()) {
                note(Law.KNOWN, stay.lot());
            } else {
                load += lot.get().positions();
                stay(lot.get(), oven, run, stay);
            }
        }
        if (load > oven.positions()) {
            note(Law.POSITIONS, oven.code());
        }
    }

    private void stay(Lot lot, Oven oven, Run run, Stay stay) {
        String tag = lot.tag();
        if (stay.inAt().isBefore(lot.wish().readyFrom())) {
            note(Law.READY, tag, oven.code());
        }
        if (!isAttended(stay.inAt()) || !isAttended(stay.outAt())) {
            note(Law.ATTENDED, tag, oven.code());
        }
        boolean isWhole = stay.inAt().equals(run.startAt()) && stay.outAt().equals(run.endAt());
        if (!isWhole && shop.customs().doorRecovery().isEmpty()) {
            note(Law.TOGETHER, tag, oven.code());
        }
        times(lot, oven, run, stay);
    }

    private void times(Lot lot, Oven oven, Run run, Stay stay) {
        List<Programme> fitting = lot.programmes().stream()
                .filter(one -> one.temperature().equals(run.temperature()) && one.fits(oven))
                .toList();
        if (fitting.isEmpty() || !lot.mayGoTo(oven)) {
            note(Law.PROGRAMME, lot.tag(), oven.code());
            return;
        }
        Duration hot = Duration.between(stay.inAt(), stay.outAt())
                .minus(oven.habits().heatUp())
                .minus(oven.habits().coolDown());
        Duration counted = hot.minus(lost(run, stay));
        List<Programme> enough = fitting.stream()
                .filter(one -> counted.compareTo(one.least()) >= 0)
                .toList();
        if (enough.isEmpty()) {
            note(Law.LEAST, lot.tag(), oven.code());
        } else if (enough.stream().allMatch(one -> hot.compareTo(one.most()) > 0)) {
            note(Law.MOST, lot.tag(), oven.code());
        }
    }

    /** What openings of the door while it was in took from its time at temperature. */
    private Duration lost(Run run, Stay stay) {
        long openings = run.stays().stream()
                .flatMap(other -> Stream.of(other.inAt(), other.outAt()))
                .distinct()
                .filter(moment -> moment.isAfter(stay.inAt()) && moment.isBefore(stay.outAt()))
                .count();
        return shop.customs().doorRecovery().orElse(Duration.ZERO).multipliedBy(openings);
    }

    private boolean isAttended(Instant moment) {
        List<Span> spans = shop.customs().attended();
        return spans.isEmpty()
                || spans.stream().anyMatch(span -> span.reaches(moment))
                || spans.stream().allMatch(span -> moment.isAfter(span.endExclusive()));
    }
}
