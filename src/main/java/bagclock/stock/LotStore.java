package bagclock.stock;

import bagclock.core.exposure.Event;
import bagclock.ledger.Act;
import bagclock.ledger.History;
import bagclock.ledger.Item;
import bagclock.ledger.Ledger;
import bagclock.ledger.Notes;
import bagclock.ledger.Told;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import bagclock.stock.MakersLot.Place;
import bagclock.stock.MakersLot.Went;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Follows the parts of a lot: over splits and joins, onto boards and off them again. */
final class LotStore {
    private final Database database;
    private final Ledger ledger = new Ledger();

    LotStore(Database database) {
        this.database = database;
    }

    /** The lot that an item belongs to; without a lot number all that came in with it. */
    Optional<MakersLot> of(String tag) {
        return database.read(tx -> ledger.item(tx, tag).map(item -> lot(tx, root(tx, item))));
    }

    private Item root(Transaction tx, Item item) {
        return item.parent()
                .flatMap(parent -> ledger.item(tx, parent))
                .map(parent -> root(tx, parent))
                .orElse(item);
    }

    private MakersLot lot(Transaction tx, Item root) {
        Optional<String> number = number(tx, root.tag());
        Set<String> tags = new TreeSet<>(ledger.touchedBy(tx, root.tag()));
        number.ifPresent(lot -> ledger.ofLot(tx, lot).stream()
                .filter(other -> number(tx, other).equals(number) && isSameType(tx, other, root))
                .forEach(other -> tags.addAll(ledger.touchedBy(tx, other))));
        List<Item> items =
                tags.stream().flatMap(one -> ledger.item(tx, one).stream()).toList();
        List<Went> went = items.stream()
                .flatMap(item -> went(item, ledger.history(tx, item.tag())).stream())
                .sorted(Comparator.comparing(Went::board).thenComparing(Went::at))
                .toList();
        return new MakersLot(root.tag(), root.partType(), number, items, went);
    }

    private boolean isSameType(Transaction tx, String tag, Item root) {
        return ledger.item(tx, tag)
                .filter(item -> item.partType().equals(root.partType()))
                .isPresent();
    }

    private Optional<String> number(Transaction tx, String tag) {
        return ledger.history(tx, tag)
                .birth()
                .map(Told::act)
                .filter(Act.Received.class::isInstance)
                .flatMap(act -> Optional.ofNullable(((Act.Received) act).notes().get(Notes.LOT)));
    }

    /** Where its own entries say that parts went; a child's own are its own. */
    private static List<Went> went(Item item, History history) {
        List<Went> went = new ArrayList<>();
        for (Told told : history.told()) {
            if (told.act() instanceof Act.UsedUp used) {
                List<String> boards = used.boards().isEmpty() ? List.of("") : used.boards();
                boards.forEach(
                        board -> went.add(new Went(board, "", item.tag(), used.workOrder(), told.at(), Place.USED)));
            } else if (told.act() instanceof Act.Happened happened && happened.event() instanceof Event.Mounted) {
                went.add(mounted(item, told, happened.notes(), isOff(history, told)));
            }
        }
        return went;
    }

    private static Went mounted(Item item, Told told, Map<String, String> notes, boolean off) {
        return new Went(
                notes.getOrDefault(Notes.BOARD, ""),
                notes.getOrDefault(Notes.LOCATION, ""),
                item.tag(),
                "",
                told.at(),
                off ? Place.TAKEN_OFF : Place.MOUNTED);
    }

    private static boolean isOff(History history, Told mounted) {
        return history.told().stream()
                .anyMatch(told -> !told.at().isBefore(mounted.at())
                        && told.events().stream().anyMatch(Event.Removed.class::isInstance));
    }
}
