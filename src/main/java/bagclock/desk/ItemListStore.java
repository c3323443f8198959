package bagclock.desk;

import bagclock.core.exposure.ClockState;
import bagclock.ledger.Item;
import bagclock.platform.Transaction;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Lists of items, filtered, sorted and cut into pages by the database. */
final class ItemListStore {
    private static final String COLUMNS = """
            select i.tag, i.part_type, i.parent_tag, i.keeper_tag, i.received_at, i.quantity, i.whereabouts,
                i.place_code, i.board, i.board_location, i.ended, i.changed_at, c.level, c.state, c.total_h, c.used_h,
                c.valid_until,
            """;

    private static final long SECOND_MS = 1000;

    /** One line; ends in milliseconds since 1970. */
    record Row(
            String tag,
            String partType,
            @Nullable String parentTag,
            @Nullable String keeperTag,
            Instant receivedAt,
            long quantity,
            String whereabouts,
            @Nullable String placeCode,
            @Nullable String board,
            @Nullable String boardLocation,
            boolean ended,
            Instant changedAt,
            @Nullable String level,
            @Nullable String state,
            @Nullable BigDecimal totalH,
            @Nullable BigDecimal usedH,
            @Nullable Instant validUntil,
            @Nullable BigDecimal ends) {
        ItemRow itemRow() {
            Item item = new Item(
                    tag,
                    partType,
                    Optional.ofNullable(parentTag),
                    Optional.ofNullable(keeperTag),
                    receivedAt,
                    quantity,
                    Item.Where.valueOf(whereabouts),
                    Optional.ofNullable(placeCode),
                    Optional.ofNullable(board),
                    Optional.ofNullable(boardLocation),
                    ended,
                    changedAt);
            return new ItemRow(
                    item,
                    level == null ? "" : level,
                    state == null ? ClockState.NONE : ClockState.valueOf(state),
                    Optional.ofNullable(totalH),
                    Optional.ofNullable(usedH),
                    Optional.ofNullable(ends).map(ItemListStore::toSecond),
                    Optional.ofNullable(validUntil));
        }
    }

    private static Instant toSecond(BigDecimal ms) {
        long whole = ms.add(ZoneSum.HAIR_MS).setScale(0, RoundingMode.FLOOR).longValueExact();
        return Instant.ofEpochMilli(Math.floorDiv(whole, SECOND_MS) * SECOND_MS);
    }

    ItemPage page(Transaction tx, ItemQuery query, Instant moment, List<ZoneSum> sums) {
        ItemSelect select = new ItemSelect(query, moment, sums);
        long total = tx.handle()
                .createQuery(select.count())
                .bindMap(select.values())
                .mapTo(Long.class)
                .one();
        List<ItemRow> rows = List.of();
        if (select.isPlainByEnd()) {
            rows = rows(tx, select.firstToEnd(COLUMNS), select);
        }
        boolean isShort = rows.size() < Math.min(query.pageSize(), total - (long) query.page() * query.pageSize());
        return new ItemPage(isShort ? rows(tx, select.page(COLUMNS), select) : rows, total);
    }

    private static List<ItemRow> rows(Transaction tx, String sql, ItemSelect select) {
        return tx.handle()
                .createQuery(sql)
                .bindMap(select.values())
                .mapTo(Row.class)
                .map(Row::itemRow)
                .list();
    }

    List<String> children(Transaction tx, String tag) {
        return tx.handle()
                .createQuery("select tag from item where parent_tag = :tag order by sort_key, tag")
                .bind("tag", tag)
                .mapTo(String.class)
                .list();
    }
}
