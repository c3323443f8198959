package bagclock.stock;

import bagclock.ledger.Item;
import bagclock.platform.CsvTable;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/** Puts a lot into words and into a table for other programs. */
final class LotPages {
    private final Words words;

    LotPages(Words words) {
        this.words = words;
    }

    LotPage page(String tag, MakersLot lot, Instant now) {
        return new LotPage(
                lot.number()
                        .map(number -> words.text("stock.lot.title", number))
                        .orElseGet(() -> words.text("stock.lot.title-of", lot.tag())),
                tag,
                words.text(
                        "stock.lot.lead",
                        lot.partType(),
                        lot.boards(),
                        lot.items().size()),
                lot.withoutBoard() == 0 ? "" : words.text("stock.lot.without-board", lot.withoutBoard()),
                lot.went().stream().map(this::went).toList(),
                lot.items().stream().map(this::held).toList(),
                words.text("stock.lot.as-of", words.texts().at(now)));
    }

    private LotPage.Went went(MakersLot.Went one) {
        return new LotPage.Went(
                one.board().isEmpty() ? words.text("stock.lot.no-board") : one.board(),
                one.location(),
                one.item(),
                one.workOrder(),
                words.texts().at(one.at()),
                words.text("stock.lot." + one.place().name()));
    }

    private LotPage.Held held(Item item) {
        return new LotPage.Held(item.tag(), item.parent().orElse(""), words.pieces(item.quantity()), words.where(item));
    }

    /** Both lists in one: a line for each use, then one for each item. */
    String table(MakersLot lot) {
        List<String> names = List.of(
                "kind",
                "board_serial",
                "location",
                "item",
                "part_type",
                "lot",
                "quantity_left",
                "whereabouts",
                "work_order",
                "at");
        return CsvTable.of(
                names,
                Stream.concat(
                                lot.went().stream().map(one -> cells(lot, one)),
                                lot.items().stream().map(item -> cells(lot, item)))
                        .toList());
    }

    private static List<String> cells(MakersLot lot, MakersLot.Went one) {
        return defused(
                one.board().isEmpty() ? "use" : "board",
                one.board(),
                one.location(),
                one.item(),
                lot.partType(),
                lot.number().orElse(""),
                "",
                one.place().name(),
                one.workOrder(),
                one.at().toString());
    }

    private static List<String> cells(MakersLot lot, Item item) {
        return defused(
                "item",
                item.board().orElse(""),
                item.location().orElse(""),
                item.tag(),
                item.partType(),
                lot.number().orElse(""),
                Long.toString(item.quantity()),
                item.where().name(),
                "",
                item.changedAt().toString());
    }

    private static List<String> defused(String... cells) {
        return Stream.of(cells).map(CsvTable::defused).toList();
    }
}
