package bagclock.ovens;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.Place;
import bagclock.core.heat.Answer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.FindingCode;
import bagclock.core.heat.Verdict;
import bagclock.desk.Desk;
import bagclock.desk.ItemQuery;
import bagclock.desk.ItemRow;
import bagclock.desk.ItemView;
import bagclock.ledger.Item;
import bagclock.platform.NotThere;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What is in the ovens, and what waits for one. */
final class Ovens {
    private static final int MOST = 200;

    private final Desk desk;
    private final OvenStore store;

    Ovens(Desk desk, OvenStore store) {
        this.desk = desk;
        this.store = store;
    }

    Desk desk() {
        return desk;
    }

    OvenStore store() {
        return store;
    }

    /** Everything that is in an oven. */
    Inside inside(Instant now) {
        return new Inside(loads(now), BoardIn.now(desk.boards(), now));
    }

    /** The items that are in an oven, by the time they went in. */
    List<Load> loads(Instant now) {
        List<BakeOven> ovens = store.ovens(now);
        Map<String, List<ItemView>> together = new TreeMap<>();
        for (ItemRow row : desk.items(ItemQuery.OPEN.in(Item.Where.OVEN).page(0, MOST), now)
                .rows()) {
            desk.item(row.item().tag(), now)
                    .filter(view -> bake(view).isPresent())
                    .ifPresent(view -> together.computeIfAbsent(key(view), key -> new ArrayList<>())
                            .add(view));
        }
        List<Load> loads = new ArrayList<>();
        for (List<ItemView> views : together.values()) {
            String code = views.get(0).item().placeCode().orElse("");
            ovens.stream()
                    .filter(oven -> oven.code().equals(code))
                    .findFirst()
                    .ifPresent(oven -> loads.add(load(oven, views)));
        }
        loads.sort(Comparator.comparing(Load::loadedAt));
        return loads;
    }

    private static String key(ItemView view) {
        Event.BakeStarted bake = bake(view).orElseThrow();
        return view.item().placeCode().orElse("") + "/" + bake.at().toEpochMilli() + "/" + bake.temperature();
    }

    private static Optional<Event.BakeStarted> bake(ItemView view) {
        return view.timeline().whereabouts().place() instanceof Place.Oven oven
                ? Optional.of(oven.bake())
                : Optional.empty();
    }

    private Load load(BakeOven oven, List<ItemView> views) {
        Event.BakeStarted bake = bake(views.get(0)).orElseThrow();
        return new Load(
                oven,
                bake.at(),
                bake.temperature(),
                bake.maxHumidity(),
                store.atTemperature(oven.code(), bake.at()),
                store.interruptions(oven.code(), bake.at()),
                views.stream()
                        .map(view -> new Load.Loaded(view, needed(view.answer(), bake.at()), Optional.empty()))
                        .toList());
    }

    /** The answer names when the run will have done its work, without the time that the oven takes to get hot. */
    static Optional<Duration> needed(Answer answer, Instant startedAt) {
        return answer.reasons().stream()
                .filter(finding ->
                        finding.code() == FindingCode.IN_OVEN || finding.code() == FindingCode.BAKE_END_NOT_RECORDED)
                .map(Finding::parts)
                .flatMap(List::stream)
                .filter(Instant.class::isInstance)
                .map(ready -> Duration.between(startedAt, (Instant) ready))
                .findFirst();
    }

    /** The load that went into an oven at a moment. */
    Load load(String oven, long loadedAtMs, Instant now) {
        return loads(now).stream()
                .filter(load -> load.oven().code().equals(oven))
                .filter(load -> load.loadedAt().toEpochMilli() == loadedAtMs)
                .findFirst()
                .orElseThrow(() -> new NotThere("nothing went into " + oven + " at " + loadedAtMs));
    }

    /**
     * An item that a bake would mend.
     *
     * @param neededBy as the planner set it
     * @param weight how much an hour late counts, as the planner set it
     * @param endedAt when its life ended; empty for a level that is baked before each use
     */
    record Waiting(ItemView view, Optional<Instant> neededBy, int weight, Optional<Instant> endedAt) {
        boolean canBeBaked() {
            return view.answer().verdict() == Verdict.BAKE;
        }
    }

    /** What waits for a bake: first what is needed first, then what has waited longest. */
    List<Waiting> queue(Instant now) {
        Map<String, OvenStore.Need> needs = store.needs();
        List<Waiting> waiting = new ArrayList<>();
        for (String tag : candidates(now)) {
            desk.item(tag, now)
                    .filter(view -> isForThePlanner(view.answer()))
                    .map(view -> new Waiting(
                            view,
                            Optional.ofNullable(needs.get(tag)).flatMap(OvenStore.Need::by),
                            Optional.ofNullable(needs.get(tag))
                                    .map(OvenStore.Need::weight)
                                    .orElse(1),
                            view.answer().floorLife().endsAt()))
                    .ifPresent(waiting::add);
        }
        Comparator<Waiting> byNeed = Comparator.comparing(w -> w.neededBy().orElse(Instant.MAX));
        waiting.sort(byNeed.thenComparing(w -> w.endedAt().orElse(Instant.MAX)));
        return waiting;
    }

    /** Out of bags and ovens, with its life at an end, or of the level that has none. */
    private Set<String> candidates(Instant now) {
        ItemQuery ended = ItemQuery.expiringWithin(Duration.ZERO)
                .in(Item.Where.FLOOR, Item.Where.CABINET, Item.Where.BOARD)
                .page(0, MOST);
        Set<String> tags = new LinkedHashSet<>();
        desk.items(ended, now).rows().forEach(row -> tags.add(row.item().tag()));
        tags.addAll(store.levelSix(MOST));
        return tags;
    }

    private static boolean isForThePlanner(Answer answer) {
        return answer.verdict() == Verdict.BAKE
                || (answer.verdict() == Verdict.HOLD
                        && (answer.has(FindingCode.NO_BAKE_ALLOWED)
                                || answer.has(FindingCode.BODY_NOT_MEASURED)
                                || answer.has(FindingCode.BODY_WITHOUT_BAKE_ROW)
                                || answer.has(FindingCode.BOARD_LIMIT_UNKNOWN)));
    }
}
