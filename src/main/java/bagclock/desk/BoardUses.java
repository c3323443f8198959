package bagclock.desk;

import bagclock.ledger.Act;
import bagclock.ledger.History;
import bagclock.ledger.Ledger;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;

/** Finds the items of which parts were used for a board. */
final class BoardUses {
    private final Ledger ledger;

    BoardUses(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Parts of an item were used for the board. */
    record Use(String tag, int seq, String partType, Instant at) {}

    /** Uses that stand, by time; a serial number is compared as it was told. */
    List<Use> of(Transaction tx, String serial) {
        return ledger.usedFor(tx, serial).stream()
                .flatMap(tag -> uses(tx, ledger.history(tx, tag), serial).stream())
                .toList();
    }

    private List<Use> uses(Transaction tx, History history, String serial) {
        String partType = ledger.item(tx, history.tag()).orElseThrow().partType();
        return history.told().stream()
                .filter(told ->
                        told.act() instanceof Act.UsedUp used && used.boards().contains(serial))
                .map(told -> new Use(history.tag(), told.seq(), partType, told.at()))
                .toList();
    }
}
