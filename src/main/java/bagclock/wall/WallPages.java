package bagclock.wall;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.desk.Desk;
import bagclock.desk.ItemQuery;
import bagclock.desk.ItemRow;
import bagclock.ledger.Item;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts the shop into a few sentences. */
final class WallPages {
    private static final int MOST_ITEMS = 6;
    private static final int MOST_IN_OVENS = 60;
    private static final Duration AHEAD = Duration.ofDays(30);

    private final Desk desk;
    private final WallStore store;
    private final Messages messages;
    private final Texts texts;

    WallPages(Desk desk, WallStore store, Texts texts) {
        this.desk = desk;
        this.store = store;
        this.messages = texts.messages();
        this.texts = texts;
    }

    WallPage page(Instant now) {
        List<KnownPlace> places = store.places(now);
        Map<String, String> names = places.stream().collect(Collectors.toMap(KnownPlace::code, KnownPlace::name));
        long past = desk.items(ItemQuery.expiringWithin(Duration.ZERO).page(0, 1), now)
                .total();
        return new WallPage(
                messages.text("wall.title"),
                texts.machine(now),
                texts.at(now, now),
                soon(past, now).map(row -> item(row, names, now)).toList(),
                past == 0 ? "" : messages.text(past == 1 ? "wall.past.one" : "wall.past", past),
                ovens(places, now),
                places.stream().flatMap(place -> air(place, now).stream()).toList());
    }

    /** Those that end first; the list begins with those that have ended. */
    private Stream<ItemRow> soon(long past, Instant now) {
        ItemQuery query = ItemQuery.expiringWithin(AHEAD);
        int first = (int) Math.min(past / MOST_ITEMS, Integer.MAX_VALUE - 1);
        return Stream.of(first, first + 1)
                .flatMap(page -> desk.items(query.page(page, MOST_ITEMS), now).rows().stream())
                .filter(row -> row.endsAt().isPresent() && !row.hasEndedBy(now))
                .limit(MOST_ITEMS);
    }

    private WallPage.Item item(ItemRow row, Map<String, String> names, Instant now) {
        Item item = row.item();
        String where = item.board()
                .map(board -> messages.text("wall.on-board", board))
                .or(() -> item.placeCode().map(code -> names.getOrDefault(code, code)))
                .orElse("");
        return new WallPage.Item(
                item.tag(), item.partType(), where, texts.at(row.endsAt().orElseThrow(), now));
    }

    private List<WallPage.Oven> ovens(List<KnownPlace> places, Instant now) {
        ItemQuery query = ItemQuery.OPEN.in(Item.Where.OVEN).page(0, MOST_IN_OVENS);
        Map<String, List<Item>> loads = desk.items(query, now).rows().stream()
                .map(ItemRow::item)
                .collect(Collectors.groupingBy(item -> item.placeCode().orElse("")));
        List<WallPage.Oven> ovens = new ArrayList<>();
        for (KnownPlace place : places) {
            List<Item> load = loads.getOrDefault(place.code(), List.of());
            if (!load.isEmpty()) {
                String tags = load.stream().map(Item::tag).collect(Collectors.joining(", "));
                ovens.add(new WallPage.Oven(place.name(), ready(load, now), tags));
            }
        }
        return ovens;
    }

    /** When the last of the load may come out. */
    private String ready(List<Item> load, Instant now) {
        List<Optional<Instant>> untils = load.stream()
                .map(item -> desk.mayHeat(item.tag(), Optional.empty(), now).until())
                .toList();
        Optional<Instant> latest = untils.stream().flatMap(Optional::stream).max(Comparator.naturalOrder());
        if (latest.isEmpty() || untils.stream().anyMatch(Optional::isEmpty)) {
            return messages.text("wall.oven.unknown");
        }
        String key = latest.get().isAfter(now) ? "wall.oven.ready" : "wall.oven.ready-since";
        return messages.text(key, texts.at(latest.get(), now));
    }

    private Optional<String> air(KnownPlace place, Instant now) {
        if (!place.logged()) {
            return Optional.empty();
        }
        return store.holding(place, now)
                .filter(reading -> isAboveLimit(place, reading.air()))
                .map(reading -> above(place, reading, now));
    }

    private String above(KnownPlace place, Reading reading, Instant now) {
        String key = place instanceof KnownPlace.DryCabinet ? "wall.air.cabinet" : "wall.air.zone";
        return messages.text(
                key,
                place.name(),
                texts.temperature(reading.air().temperature()),
                texts.humidity(reading.air().humidity()),
                texts.at(reading.at(), now));
    }

    private static boolean isAboveLimit(KnownPlace place, Air air) {
        if (place instanceof KnownPlace.DryCabinet cabinet) {
            return air.humidity().isAbove(cabinet.limit().limit());
        }
        Air limit = place instanceof KnownPlace.FloorZone zone
                ? zone.openBagsUpTo().orElse(Air.LIMIT_30_60)
                : Air.LIMIT_30_60;
        return air.isWarmerThan(limit) || air.isWetterThan(limit);
    }
}
