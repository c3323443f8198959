package bagclock.desk;

import bagclock.core.exposure.ClockState;
import bagclock.ledger.Item;
import bagclock.platform.Transaction;
import java.math.BigDecimal;
import java.math.RoundingMode;
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
                c.valid_until,
            """;

    /** Less than a thousandth of a millisecond: makes good what a sum was rounded. */
    private static final BigDecimal HAIR = new BigDecimal("0.000001");

    private static final long SECOND_MS = 1000;

    private static final Map<ItemQuery.Sort, String> ORDERS = Map.of(
            ItemQuery.Sort.TAG, "i.sort_key",
            ItemQuery.Sort.PART_TYPE, "i.part_type",
            ItemQuery.Sort.PLACE, "i.place_code",
            ItemQuery.Sort.ENDS_AT, "ends",
            ItemQuery.Sort.CHANGED_AT, "i.changed_at");

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
        long whole = ms.add(HAIR).setScale(0, RoundingMode.FLOOR).longValueExact();
        return Instant.ofEpochMilli(Math.floorDiv(whole, SECOND_MS) * SECOND_MS);
    }

    /** One question, with the values that its text names. */
    private record Question(String from, String where, String ends, Map<String, Object> values) {}

    ItemPage page(Transaction tx, ItemQuery query, Instant moment, List<ZoneSum> sums) {
        Question question = question(query, moment, sums);
        String down = query.descending() ? " desc" : "";
        String order = " order by " + ORDERS.get(query.sort()) + down + " nulls last, i.sort_key, i.tag";
        List<ItemRow> rows = tx.handle()
                .createQuery(COLUMNS + question.ends() + " as ends" + question.from() + question.where() + order
                        + " limit :size offset :skip")
                .bindMap(question.values())
                .bind("size", query.pageSize())
                .bind("skip", (long) query.page() * query.pageSize())
                .mapTo(Row.class)
                .map(Row::itemRow)
                .list();
        long total = tx.handle()
                .createQuery("select count(*)" + question.from() + question.where())
                .bindMap(question.values())
                .mapTo(Long.class)
                .one();
        return new ItemPage(rows, total);
    }

    private static Question question(ItemQuery query, Instant moment, List<ZoneSum> sums) {
        Map<String, Object> values = new HashMap<>();
        String from = " from item i left join item_clock c on c.tag = i.tag and c.counting ";
        String ends = "cast(c.ends_ms as numeric(60, 30))";
        if (!sums.isEmpty()) {
            long withinMs = query.within().map(time -> time.toMillis()).orElse(0L);
            from += "left join (values " + rows(sums, withinMs, values)
                    + ") z (zone, rate_key, sum_now, per_ms, sum_then) on z.zone = c.zone and z.rate_key = c.rate_key ";
            ends = "case when z.zone is null then " + ends + " else least(:nowMs + (c.end_sum - z.sum_now) / z.per_ms,"
                    + " coalesce(c.ends_ms, 9000000000000000)) end";
            values.put("nowMs", BigDecimal.valueOf(moment.toEpochMilli()));
        }
        return new Question(from, where(query, moment, !sums.isEmpty(), values), ends, values);
    }

    private static String rows(List<ZoneSum> sums, long withinMs, Map<String, Object> values) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < sums.size(); i++) {
            rows.append(i == 0 ? "" : ", ")
                    .append(("(cast(:zone# as varchar(40)), cast(:key# as varchar(16)), cast(:sum# as numeric(60, 30)),"
                                    + " cast(:rate# as numeric(60, 30)), cast(:then# as numeric(60, 30)))")
                            .replace("#", Integer.toString(i)));
            values.put("zone" + i, sums.get(i).zone());
            values.put("key" + i, sums.get(i).rateKey());
            values.put("sum" + i, sums.get(i).sum());
            values.put("rate" + i, sums.get(i).perMs());
            values.put("then" + i, sums.get(i).after(withinMs));
        }
        return rows.toString();
    }

    private static String where(ItemQuery query, Instant moment, boolean summed, Map<String, Object> values) {
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
            where.append(summed ? " and (c.ends_ms < :limit or c.end_sum < z.sum_then)" : " and c.ends_ms < :limit");
            values.put("limit", moment.plus(time).toEpochMilli());
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
