package bagclock.parts;

import bagclock.core.standard.Level;
import bagclock.platform.Database;
import bagclock.platform.NotThere;
import bagclock.platform.Transaction;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the pages of part types read. */
final class PartsStore {
    static final int ITEMS_SHOWN = 20;

    private static final String CURRENT = """
            from part_type_fact f where f.valid_from <= :moment and not exists (select 1 from part_type_fact g
                where g.part_number = f.part_number and g.valid_from <= :moment
                    and (g.valid_from > f.valid_from or (g.valid_from = f.valid_from and g.version > f.version)))
            """;
    private static final Map<ListForm.Sort, String> ORDERS = Map.of(
            ListForm.Sort.NUMBER, "f.sort_key",
            ListForm.Sort.MAKER, "lower(f.maker)",
            ListForm.Sort.CHANGED, "f.recorded_at");

    private final Database database;
    private final Register register = new Register();

    PartsStore(Database database) {
        this.database = database;
    }

    /** One page of a list, and how many part types the whole list has. */
    record Found(List<Versioned<PartType>> types, long total) {}

    /** An item of a part type. */
    record ItemLine(
            String tag,
            long quantity,
            String whereabouts,
            @Nullable String placeCode,
            @Nullable String board) {}

    /** The open items of a part type, the first of them. */
    record Items(List<ItemLine> first, long total) {}

    Found list(ListForm asked, Instant moment) {
        Map<String, Object> values = new HashMap<>();
        values.put("moment", moment);
        String filter = filter(asked, values);
        String down = asked.descending() ? " desc" : "";
        String order = " order by " + ORDERS.get(asked.sort()) + down + ", f.sort_key, f.part_number";
        return database.read(tx -> {
            long total = tx.handle()
                    .createQuery("select count(*) " + CURRENT + filter)
                    .bindMap(values)
                    .mapTo(Long.class)
                    .one();
            List<String> numbers = tx.handle()
                    .createQuery("select f.part_number " + CURRENT + filter + order + " limit :size offset :skip")
                    .bindMap(values)
                    .bind("size", ListForm.PAGE_SIZE)
                    .bind("skip", (long) asked.page() * ListForm.PAGE_SIZE)
                    .mapTo(String.class)
                    .list();
            List<Versioned<PartType>> types = numbers.stream()
                    .flatMap(number -> register.partType(tx, number, moment).stream())
                    .toList();
            return new Found(types, total);
        });
    }

    /** Every part type of a list, by number; for the file. */
    List<PartType> all(ListForm asked, Instant moment) {
        Map<String, Object> values = new HashMap<>();
        values.put("moment", moment);
        String filter = filter(asked, values);
        return database.read(tx -> {
            List<String> numbers = tx.handle()
                    .createQuery("select f.part_number " + CURRENT + filter)
                    .bindMap(values)
                    .mapTo(String.class)
                    .list();
            Map<String, PartType> known = new LinkedHashMap<>();
            register.partTypes(tx, moment).forEach(type -> known.put(type.fact().number(), type.fact()));
            known.keySet().retainAll(new HashSet<>(numbers));
            return List.copyOf(known.values());
        });
    }

    private static String filter(ListForm asked, Map<String, Object> values) {
        StringBuilder filter = new StringBuilder();
        if (!asked.text().isEmpty()) {
            filter.append("""
                     and (lower(f.part_number) like :text escape '!' or lower(f.maker) like :text escape '!'
                        or lower(f.description) like :text escape '!')
                    """);
            values.put("text", "%" + escaped(asked.text().toLowerCase(Locale.ROOT)) + "%");
        }
        boolean unknown = asked.level().equals(ListForm.UNKNOWN);
        if (unknown || Level.parse(asked.level()).isPresent()) {
            String code = unknown ? "" : asked.level();
            filter.append(" and (f.ratings like :first or f.ratings like :later)");
            values.put("first", code + "@%");
            values.put("later", "% " + code + "@%");
        }
        return filter.toString();
    }

    private static String escaped(String text) {
        return text.replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }

    /** Every part type by number, with its version. */
    Map<String, Versioned<PartType>> known(Instant moment) {
        Map<String, Versioned<PartType>> known = new HashMap<>();
        database.read(tx -> register.partTypes(tx, moment))
                .forEach(type -> known.put(type.fact().number(), type));
        return known;
    }

    Optional<Versioned<PartType>> find(String number, Instant moment) {
        return database.read(tx -> register.partType(tx, number, moment));
    }

    Versioned<PartType> one(String number, Instant moment) {
        return find(number, moment).orElseThrow(() -> new NotThere("no part type " + number));
    }

    /** Newest first. */
    List<Versioned<PartType>> versions(String number) {
        return database.read(tx -> register.partTypeVersions(tx, number));
    }

    Items items(String number) {
        return database.read(tx -> new Items(first(tx, number), count(tx, number)));
    }

    private static List<ItemLine> first(Transaction tx, String number) {
        return tx.handle()
                .createQuery("""
                        select tag, quantity, whereabouts, place_code, board from item
                        where part_type = :number and ended = false order by sort_key, tag limit :most
                        """)
                .bind("number", number)
                .bind("most", ITEMS_SHOWN)
                .mapTo(ItemLine.class)
                .list();
    }

    private static long count(Transaction tx, String number) {
        return tx.handle()
                .createQuery("select count(*) from item where part_type = :number and ended = false")
                .bind("number", number)
                .mapTo(Long.class)
                .one();
    }
}
