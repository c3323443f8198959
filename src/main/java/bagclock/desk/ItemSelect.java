package bagclock.desk;

import bagclock.ledger.Item;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The text of a query for a list of items. It first finds the tags of one page by indexes, and joins the clocks to those
 * alone: a list of 100,000 items costs no more than its page.
 */
final class ItemSelect {
    private static final Map<ItemQuery.Sort, String> ORDERS = Map.of(
            ItemQuery.Sort.TAG, "i.sort_key",
            ItemQuery.Sort.PART_TYPE, "i.part_type",
            ItemQuery.Sort.PLACE, "i.place_code",
            ItemQuery.Sort.ENDS_AT, "ends",
            ItemQuery.Sort.CHANGED_AT, "i.changed_at");

    private static final String CLOCKS = " left join item_clock c on c.tag = i.tag and c.counting ";
    private static final String STATIC_END = "cast(c.ends_ms as numeric(60, 30))";

    private final ItemQuery query;
    private final Instant moment;
    private final List<ZoneSum> sums;
    private final Map<String, Object> values = new HashMap<>();
    private final String filter;

    ItemSelect(ItemQuery query, Instant moment, List<ZoneSum> sums) {
        this.query = query;
        this.moment = moment;
        this.sums = sums;
        this.filter = filter();
    }

    Map<String, Object> values() {
        return values;
    }

    String count() {
        return "select count(*) from item i where " + filter;
    }

    /** The page; {@code columns} without the end, which is called {@code ends}. */
    String page(String columns) {
        String tags =
                "i.tag in (select p.tag from (select i.tag from item i where " + filter + order() + cut() + ") p)";
        return query.sort() == ItemQuery.Sort.ENDS_AT
                ? all(columns, filter) + order() + cut()
                : all(columns, tags) + order();
    }

    /** Whether {@link #firstToEnd} can stand in for the page. */
    boolean isPlainByEnd() {
        boolean unfiltered = query.text().isBlank()
                && query.where().isEmpty()
                && query.placeCode().isEmpty()
                && query.within().isEmpty();
        return unfiltered && query.sort() == ItemQuery.Sort.ENDS_AT && !query.descending();
    }

    /** The page out of the first of each sum and of all fixed ends; too short where more items have no end. */
    String firstToEnd(String columns) {
        List<String> firsts = new ArrayList<>();
        firsts.add("(select tag from item_clock where counting and ends_ms is not null order by ends_ms limit :top)");
        for (int i = 0; i < sums.size(); i++) {
            firsts.add("(select tag from item_clock where " + onSum(i) + " order by end_sum limit :top)");
        }
        values.put("top", (query.page() + 1L) * query.pageSize());
        return all(columns, "i.tag in (select p.tag from (" + String.join(" union ", firsts) + ") p)")
                + order()
                + cut();
    }

    private String onSum(int index) {
        values.put("zone" + index, sums.get(index).zone());
        values.put("key" + index, sums.get(index).rateKey());
        return "zone = :zone" + index + " and rate_key = :key" + index + " and counting";
    }

    private String all(String columns, String condition) {
        return columns + ends() + " as ends from item i" + CLOCKS + joinedSums() + " where " + condition;
    }

    private String ends() {
        return sums.isEmpty()
                ? STATIC_END
                : "case when z.zone is null then " + STATIC_END
                        + " else least(:nowMs + (c.end_sum - z.sum_now) / z.per_ms,"
                        + " coalesce(c.ends_ms, 9000000000000000)) end";
    }

    private String joinedSums() {
        if (sums.isEmpty()) {
            return "";
        }
        values.put("nowMs", BigDecimal.valueOf(moment.toEpochMilli()));
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < sums.size(); i++) {
            rows.add(("(cast(:zone# as varchar(40)), cast(:key# as varchar(16)), cast(:sum# as numeric(60, 30)),"
                            + " cast(:rate# as numeric(60, 30)))")
                    .replace("#", Integer.toString(i)));
            values.put("zone" + i, sums.get(i).zone());
            values.put("key" + i, sums.get(i).rateKey());
            values.put("sum" + i, sums.get(i).sum());
            values.put("rate" + i, sums.get(i).perMs());
        }
        return "left join (values " + String.join(", ", rows)
                + ") z (zone, rate_key, sum_now, per_ms) on z.zone = c.zone and z.rate_key = c.rate_key ";
    }

    private String order() {
        String down = query.descending() ? " desc" : "";
        return " order by " + ORDERS.get(query.sort()) + down + " nulls last, i.sort_key, i.tag";
    }

    private String cut() {
        values.put("size", query.pageSize());
        values.put("skip", (long) query.page() * query.pageSize());
        return " limit :size offset :skip";
    }

    private String filter() {
        List<String> conditions = new ArrayList<>();
        conditions.add(query.where().isEmpty() ? "i.ended = false" : "i.whereabouts in (" + kinds() + ")");
        query.placeCode().ifPresent(code -> {
            conditions.add("i.place_code = :place");
            values.put("place", code);
        });
        query.within().ifPresent(time -> conditions.add(endsWithin(time)));
        if (!query.text().isBlank()) {
            conditions.add("(lower(i.tag) like :text escape '!' or lower(i.part_type) like :text escape '!')");
            values.put("text", "%" + escaped(query.text().strip().toLowerCase(Locale.ROOT)) + "%");
        }
        return String.join(" and ", conditions);
    }

    private String kinds() {
        return String.join(
                ", ",
                Arrays.stream(Item.Where.values())
                        .filter(query.where()::contains)
                        .map(kind -> "'" + kind.name() + "'")
                        .toList());
    }

    /** In or before the second of the limit: what ends now has ended. */
    private String endsWithin(Duration time) {
        Instant limit = moment.plus(time).truncatedTo(ChronoUnit.SECONDS).plusSeconds(1);
        values.put("limit", limit.toEpochMilli());
        List<String> ends = new ArrayList<>();
        ends.add("select tag from item_clock where counting and ends_ms < :limit");
        for (int i = 0; i < sums.size(); i++) {
            values.put(
                    "then" + i,
                    sums.get(i).before(Duration.between(moment, limit).toMillis()));
            ends.add("select tag from item_clock where " + onSum(i) + " and end_sum < :then" + i);
        }
        return "i.tag in (" + String.join(" union ", ends) + ")";
    }

    private static String escaped(String text) {
        return text.replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }
}
