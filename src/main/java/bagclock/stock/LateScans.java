package bagclock.stock;

import bagclock.core.Refusal;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.register.KnownPlace;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Scans that a page made without the network and tells later, one by one in their order. */
final class LateScans {
    /** A page does not wait longer than this. */
    static final Duration LONGEST_WAIT = Duration.ofDays(7);

    private final Desk desk;
    private final StockStore store;
    private final ScanStore scans;
    private final Words words;

    LateScans(Desk desk, StockStore store, ScanStore scans, Words words) {
        this.desk = desk;
        this.store = store;
        this.scans = scans;
        this.words = words;
    }

    /**
     * One scan.
     *
     * @param pass of the page on which it was made; tells who made it
     * @param held the item that was scanned before it; empty for none
     * @param age between the scan and its arrival, by the page's own clock
     */
    record Late(String key, String pass, String code, String held, Duration age) {}

    /**
     * What became of one.
     *
     * @param held the item that waits for its place now; empty for none
     * @param refused why nothing was written; empty if it was taken
     */
    record Answer(String held, String refused) {}

    Answer take(Late late, Instant now) {
        Instant at = now.minus(late.age());
        Optional<String> who = scans.holder(late.pass(), now.minus(LONGEST_WAIT));
        if (who.isEmpty()
                || late.age().compareTo(LONGEST_WAIT) > 0
                || late.age().isNegative()) {
            return new Answer("", words.text("stock.late.too-old"));
        } else if (LabelScans.isLabel(late.code())) {
            return new Answer(late.held(), words.text("stock.late.by-hand"));
        } else if (desk.item(late.code(), now).isPresent()) {
            return new Answer(late.code(), "");
        }
        Optional<KnownPlace> place = store.place(late.code(), now);
        if (place.isEmpty() || place.get() instanceof KnownPlace.BakeOven) {
            return new Answer(late.held(), words.text("stock.late.by-hand"));
        } else if (late.held().isEmpty()) {
            return new Answer("", words.text("stock.scan.item-first", late.code()));
        }
        Command.Header header = new Command.Header(who.get(), at, late.key());
        return desk.handle(new Command.Move(header, late.held(), late.code()), now)
                .fold(receipt -> new Answer("", ""), refusals -> new Answer("", why(late.held(), refusals)));
    }

    private String why(String held, List<Refusal> refusals) {
        return words.text("stock.scan.not-moved", held) + " " + String.join(" ", words.refusals(refusals));
    }
}
