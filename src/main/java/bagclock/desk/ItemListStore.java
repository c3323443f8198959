package bagclock.desk;

import bagclock.core.exposure.ClockState;
import bagclock.ledger.Item;
import bagclock.platform.Transaction;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Lists of items, filtered, sorted and cut into pages by the database. */
final class ItemListStore {
    private static final String COLUMNS = """
            select i.tag, i.part_type, i.parent_tag, i.keeper_tag, i.received_at, i.quantity, i.whereabouts,
                i.place_code, i.board, i.board_location, i.ended, i.changed_at, c.level, c.state, c.total_h, c.used_h,
                c.ends_at
            """;
    private static final String FROM = " from item i left join item_clock c on c.tag = i.tag and c.counting ";

    private static final Map<ItemQuery.Sort, String> ORDERS = Map.of(
            ItemQuery.Sort.TAG, "i.sort_key",
            ItemQuery.Sort.PART_TYPE, "i.part_type",
            ItemQuery.Sort.PLACE, "i.place_code",
            ItemQuery.Sort.ENDS_AT, "c.ends_at",
            ItemQuery.Sort.CHANGED_AT, "i.changed_at");

    /** One line. */
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
            @Nullable Instant endsAt) {
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
                    Optional.ofNullable(endsAt));
        }
    }

    ItemPage page(Transaction tx, ItemQuery query, Instant moment) {
        Map<String, Object> values = new HashMap<>();
        String where = where(query, moment, values);
        String down = query.descending() ? " desc" : "";
        String order = " order by " + ORDERS.get(query.sort()) + down + " nulls last, i.sort_key, i.tag";
        List<ItemRow> rows = tx.handle()
                .createQuery(COLUMNS + FROM + where + order + " limit :size offset :skip")
                .bindMap(values)
                .bind("size", query.pageSize())
                .bind("skip", (long) query.page() * query.pageSize())
                .mapTo(Row.class)
                .map(Row::itemRow)
                .list();
        long total = tx.handle()
                .createQuery("select count(*)" + FROM + where)
                .bindMap(values)
                .mapTo(Long.class)
                .one();
        return new ItemPage(rows, total);
    }

    private static String where(ItemQuery query, Instant moment, Map<String, Object> values) {
        StringBuilder where = new StringBuilder("where 1 = 1");
        if (query.where().isEmpty()) {
            where.append(" and not i.ended");
        } else {
            List<String> kinds = Arrays.stream(Item.Where.values())
                    .filter(query.where()::contains)
                    .map(kind -> "'" + kind.name() + "'")
                    .toList();
            where.append(" and i.whereabouts in (")
                    .append(String.join(", ", kinds))
                    .append(")");
        }
        query.placeCode().ifPresent(code -> {
            where.append(" and i.place_code = :place");
            values.put("place", code);
        });
        query.within().ifPresent(time -> {
            where.append(" and c.ends_at < :limit");
            values.put("limit", moment.plus(time));
        });
        if (!query.text().isBlank()) {
            where.append(" and (lower(i.tag) like :text escape '!' or lower(i.part_type) like :text escape '!')");
            values.put("text", "%" + escaped(query.text().strip().toLowerCase(Locale.ROOT)) + "%");
        }
        return where.toString();
    }

    private static String escaped(String text) {
        return text.replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }

    List<String> children(Transaction tx, String tag) {
        return tx.handle()
                .createQuery("select tag from item where parent_tag = :tag order by sort_key, tag")
                .bind("tag", tag)
                .mapTo(String.class)
                .list();
    }
}
