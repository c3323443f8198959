package bagclock.ovens;

import bagclock.core.exposure.Event;
import bagclock.core.oven.Fault;
import bagclock.core.oven.Held;
import bagclock.core.oven.Intake;
import bagclock.core.oven.Lot;
import bagclock.core.oven.Oven;
import bagclock.core.oven.Plan;
import bagclock.core.oven.Programme;
import bagclock.core.oven.Run;
import bagclock.core.oven.Shop;
import bagclock.core.oven.Span;
import bagclock.core.quantity.Celsius;
import bagclock.ovens.Ovens.Waiting;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The shop as a plan is made for it: ovens, what runs in them, what waits, what is published, and what is supposed.
 *
 * @param now cut to the minute before
 * @param ended runs that ended, the last ones
 */
record ShopNow(
        Instant now,
        ZoneId zone,
        PlanRules rules,
        List<BakeOven> ovens,
        List<Run> ended,
        Inside inside,
        List<Waiting> queue,
        List<PlanStore.Outage> outages,
        List<PlanChange> rushes,
        Optional<StoredPlan> published) {
    /**
     * What can be planned, what is supposed being so.
     *
     * @param patient tags of lots that nobody needs by a time: theirs is the site's
     * @param refused runs that can't be where somebody wants them
     * @param held what became of the published runs
     */
    record Supposed(Intake intake, Set<String> patient, Set<String> pinned, List<Held.LetGo> refused, Held held) {}

    /** Whether a run is in its oven, not only planned. */
    boolean isRunning(Run run) {
        return Stream.concat(
                        inside.loads().stream()
                                .flatMap(load -> load.items().stream())
                                .map(Load.Loaded::tag),
                        inside.boards().stream().map(BoardIn::serial))
                .anyMatch(run.lots()::contains);
    }

    /** Name of an oven; its code where there is none. */
    String nameOf(String code) {
        return ovens.stream()
                .filter(oven -> oven.code().equals(code))
                .map(BakeOven::name)
                .findFirst()
                .orElse(code);
    }

    /** The shop with nothing supposed. */
    Supposed asItIs() {
        return supposing(List.of());
    }

    /** The shop, some things supposed. */
    Supposed supposing(List<PlanChange> changes) {
        List<Lot> lots = new ArrayList<>();
        queue.stream()
                .filter(Waiting::canBeBaked)
                .map(waiting -> LotOf.waiting(waiting, now))
                .forEach(lots::add);
        rushes.stream()
                .filter(rush -> !isHere(rush.name()))
                .map(rush -> LotOf.rush(rush, now))
                .forEach(lots::add);
        changes.stream()
                .filter(change -> change.kind() == PlanChange.Kind.RUSH)
                .map(rush -> LotOf.rush(rush, now))
                .forEach(lots::add);
        lots.replaceAll(lot -> needed(lot, changes));
        List<Held.LetGo> refused = new ArrayList<>();
        List<Oven> planned = ovens.stream().map(oven -> oven(oven, changes)).toList();
        List<Run> running = Stream.concat(
                        inside.loads().stream().flatMap(load -> run(load).stream()),
                        inside.boards().stream().map(this::run))
                .toList();
        Shop.Customs customs = rules.customs(now, zone, reach(lots, planned, running));
        Set<String> pinned = pinned(changes);
        Shop bare = new Shop(now, planned, lots, running, customs);
        List<Run> frozen = new ArrayList<>(running);
        List<Run> moved = moved(bare, changes);
        for (Run run : moved) {
            List<Fault> faults = Held.against(bare, frozen, run);
            if (faults.isEmpty()) {
                frozen.add(run);
                pinned.addAll(run.lots());
            } else {
                refused.add(new Held.LetGo(run, run.lots(), faults));
            }
        }
        Held held = held(new Shop(now, planned, lots, frozen, customs), moved, pinned);
        frozen.addAll(held.kept());
        held.letGo().forEach(one -> one.lots().forEach(pinned::remove));
        return supposed(new Shop(now, planned, lots, frozen, customs), pinned, refused, held);
    }

    private Supposed supposed(Shop shop, Set<String> pinned, List<Held.LetGo> refused, Held held) {
        Intake intake = Intake.of(shop);
        Set<String> patient = shop.lots().stream()
                .filter(lot -> lot.wish().neededBy().isEmpty())
                .map(Lot::tag)
                .collect(Collectors.toSet());
        return new Supposed(rules.patience().map(intake::patientFor).orElse(intake), patient, pinned, refused, held);
    }

    /** When what runs is over, ovens are back and the longest bake may be done twice after that. */
    private Instant reach(List<Lot> lots, List<Oven> planned, List<Run> running) {
        Stream<Instant> known = Stream.concat(
                running.stream().map(Run::endAt),
                planned.stream()
                        .flatMap(oven -> oven.habits().outOfService().stream())
                        .map(Span::endExclusive));
        Duration longest = lots.stream()
                .flatMap(lot -> lot.programmes().stream())
                .map(Programme::most)
                .max(Duration::compareTo)
                .orElse(Duration.ZERO);
        return known.max(Instant::compareTo).filter(now::isBefore).orElse(now).plus(longest.multipliedBy(2));
    }

    private Set<String> pinned(List<PlanChange> changes) {
        Set<String> pinned = new TreeSet<>(published.map(StoredPlan::pinned).orElse(Set.of()));
        for (PlanChange change : changes) {
            Optional<List<String>> its =
                    published.flatMap(plan -> plan.plan().runOf(change.name())).map(Run::lots);
            if (change.kind() == PlanChange.Kind.PIN) {
                its.ifPresent(pinned::addAll);
            } else if (change.kind() == PlanChange.Kind.UNPIN) {
                its.ifPresent(pinned::removeAll);
            }
        }
        return pinned;
    }

    /** Whether a lot has this name already. */
    boolean knows(String name) {
        return rushes.stream().anyMatch(rush -> rush.name().equals(name)) || isHere(name);
    }

    /** Whether something of this name waits or is in an oven. */
    private boolean isHere(String name) {
        return queue.stream().anyMatch(waiting -> waiting.view().item().tag().equals(name))
                || inside.loads().stream()
                        .flatMap(load -> load.items().stream())
                        .anyMatch(item -> item.tag().equals(name));
    }

    /** Whether an oven is out of service already for some of a span. */
    boolean isOut(String oven, Span span) {
        return outages.stream()
                .anyMatch(out -> out.oven().equals(oven) && out.span().overlaps(span));
    }

    private static Lot needed(Lot lot, List<PlanChange> changes) {
        return changes.stream()
                .filter(change ->
                        change.kind() == PlanChange.Kind.NEED && change.name().equals(lot.tag()))
                .findFirst()
                .map(change -> lot.neededBy(Optional.ofNullable(change.fromAt())))
                .orElse(lot);
    }

    private Oven oven(BakeOven oven, List<PlanChange> changes) {
        List<Span> out = new ArrayList<>();
        outages.stream().filter(one -> one.oven().equals(oven.code())).forEach(one -> out.add(one.span()));
        changes.stream()
                .filter(change ->
                        change.kind() == PlanChange.Kind.CLOSE && change.name().equals(oven.code()))
                .filter(change -> change.fromAt() != null && change.toAt() != null)
                .forEach(change -> out.add(new Span(change.fromAt(), change.toAt())));
        return new Oven(
                oven.code(),
                oven.lowest(),
                oven.highest(),
                oven.positions(),
                oven.holds(),
                new Oven.Habits(
                        oven.heatUp(),
                        rules.coolDown(oven.pauses()),
                        rules.changes(oven.pauses()),
                        setPoint(oven.code()),
                        out));
    }

    private Optional<Celsius> setPoint(String oven) {
        return Stream.concat(
                        inside.loadsOf(oven).stream().map(Load::setPoint),
                        inside.boardsOf(oven).stream().map(BoardIn::setPoint))
                .findFirst();
    }

    /** A board in an oven: nobody said when it will be ready, so it holds the oven from now on. */
    private Run run(BoardIn board) {
        Run.Stay stay = new Run.Stay(board.serial(), board.loadedAt(), now.plus(1, ChronoUnit.MINUTES));
        return new Run(board.oven(), board.setPoint(), List.of(stay));
    }

    /** A load in an oven as a run: it holds the oven until it is ready and cool, and longer if nobody takes it out. */
    private Optional<Run> run(Load load) {
        Instant ready =
                load.readyAt().orElse(now).plus(rules.coolDown(load.oven().pauses()));
        Instant out = ready.isAfter(now) ? ready : now.plus(1, ChronoUnit.MINUTES);
        List<Run.Stay> stays = load.items().stream()
                .map(item -> new Run.Stay(item.tag(), load.loadedAt(), out))
                .toList();
        return stays.isEmpty()
                ? Optional.empty()
                : Optional.of(new Run(load.oven().code(), load.setPoint(), stays));
    }

    /** What is published and not moved: what is pinned or starts within the fence stays where it can. */
    private Held held(Shop shop, List<Run> moved, Set<String> pinned) {
        Instant fence = now.plus(rules.fence());
        List<Run> unmoved = published.stream()
                .flatMap(plan -> plan.plan().runs().stream()
                        .filter(run ->
                                moved.stream().noneMatch(other -> other.lots().containsAll(run.lots())))
                        .flatMap(run -> withoutBaked(run, plan.publishedAt().orElse(plan.madeAt())).stream()))
                .toList();
        return Held.of(
                shop,
                new Plan(unmoved),
                run -> run.startAt().isBefore(fence) || run.lots().stream().anyMatch(pinned::contains));
    }

    /** A run without lots that went into an oven since the plan counts, and wait for another bake. */
    private Optional<Run> withoutBaked(Run run, Instant since) {
        List<Run.Stay> left = run.stays().stream()
                .filter(stay -> queue.stream()
                        .filter(waiting -> waiting.view().item().tag().equals(stay.lot()))
                        .flatMap(waiting -> waiting.view().timeline().events().stream())
                        .noneMatch(event -> event instanceof Event.BakeStarted bake
                                && bake.at().isAfter(since)))
                .toList();
        return left.isEmpty() ? Optional.empty() : Optional.of(new Run(run.oven(), run.temperature(), left));
    }

    /** Runs of the published plan where somebody wants them. */
    private List<Run> moved(Shop bare, List<PlanChange> changes) {
        List<Run> moved = new ArrayList<>();
        for (PlanChange change : changes) {
            String oven = change.oven();
            Instant start = change.fromAt();
            if (change.kind() == PlanChange.Kind.MOVE && oven != null && start != null) {
                published
                        .flatMap(plan -> plan.plan().runOf(change.name()))
                        .flatMap(run -> moved(bare, run, oven, start))
                        .ifPresent(moved::add);
            }
        }
        return moved;
    }

    private static Optional<Run> moved(Shop bare, Run run, String code, Instant start) {
        Optional<Oven> oven =
                bare.ovens().stream().filter(one -> one.code().equals(code)).findFirst();
        Optional<Duration> least = bare.lots().stream()
                .filter(lot -> run.lots().contains(lot.tag()))
                .flatMap(lot -> shortest(lot, oven, run.temperature()).stream())
                .max(Duration::compareTo);
        return oven.map(one -> {
            Instant end = start.plus(one.doorShutFor(least.orElse(Duration.ofMinutes(1))));
            return new Run(
                    code,
                    run.temperature(),
                    run.lots().stream()
                            .map(tag -> new Run.Stay(tag, start, end))
                            .toList());
        });
    }

    private static Optional<Duration> shortest(Lot lot, Optional<Oven> oven, Celsius temperature) {
        return lot.programmes().stream()
                .filter(one -> one.temperature().equals(temperature))
                .filter(one -> oven.map(one::fits).orElse(false))
                .map(Programme::least)
                .min(Duration::compareTo);
    }
}
