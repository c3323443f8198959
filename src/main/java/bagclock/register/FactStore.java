package bagclock.register;

import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;

/**
 * The versions of one kind of fact in one table; its columns are the components of the row record.
 *
 * @param <R> row
 */
final class FactStore<R extends Record> {
    private final String table;
    private final String key;
    private final Class<R> type;
    private final String columns;

    FactStore(String table, String key, Class<R> type) {
        this.table = table;
        this.key = key;
        this.type = type;
        this.columns = String.join(", ", columns(type).keySet());
    }

    private static Map<String, RecordComponent> columns(Class<?> type) {
        Map<String, RecordComponent> columns = new LinkedHashMap<>();
        for (RecordComponent component : type.getRecordComponents()) {
            columns.put(columnOf(component.getName()), component);
        }
        return columns;
    }

    private static @Nullable Object value(RecordComponent component, Record row) {
        try {
            return component.getAccessor().invoke(row);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("can't read " + component, failure);
        }
    }

    private static String columnOf(String component) {
        return component.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    /** Adds a version; refused with {@link ChangedMeanwhile} if the version before it is not the newest. */
    void add(Transaction tx, R row, String id, int number) {
        int newest = newest(tx, id);
        if (newest != number - 1) {
            throw new ChangedMeanwhile(table + " " + id + " is at version " + newest + ", not " + (number - 1));
        }
        Map<String, RecordComponent> components = columns(type);
        String sql =
                "insert into " + table + " (" + columns + ") values (:" + String.join(", :", components.keySet()) + ")";
        try {
            Update insert = tx.handle().createUpdate(sql);
            components.forEach((column, component) ->
                    insert.bindByType(column, value(component, row), component.getGenericType()));
            insert.execute();
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                throw new ChangedMeanwhile(table + " " + id + " got version " + number + " meanwhile");
            }
            throw failure;
        }
    }

    private int newest(Transaction tx, String id) {
        return tx.handle()
                .createQuery("select coalesce(max(version), 0) from " + table + " where " + key + " = :id")
                .bind("id", id)
                .mapTo(Integer.class)
                .one();
    }

    /** Every version of one fact, newest first. */
    List<R> versions(Transaction tx, String id) {
        return tx.handle()
                .createQuery("select " + columns + " from " + table + " where " + key + " = :id order by version desc")
                .bind("id", id)
                .mapTo(type)
                .list();
    }

    /** The version that holds at a moment: of the latest start, of these the newest. */
    Optional<R> at(Transaction tx, String id, Instant moment) {
        return tx.handle()
                .createQuery("select " + columns + " from " + table + " where " + key
                        + " = :id and valid_from <= :moment order by valid_from desc, version desc limit 1")
                .bind("id", id)
                .bind("moment", moment)
                .mapTo(type)
                .findFirst();
    }

    /** Of every fact the version that holds at a moment, in the order of the sort key. */
    List<R> allAt(Transaction tx, Instant moment) {
        String sql = "select " + columns + " from " + table + " f where valid_from <= :moment and not exists (select 1"
                + " from " + table + " g where g." + key + " = f." + key
                + " and g.valid_from <= :moment and (g.valid_from > f.valid_from"
                + " or (g.valid_from = f.valid_from and g.version > f.version))) order by sort_key, " + key;
        return tx.handle().createQuery(sql).bind("moment", moment).mapTo(type).list();
    }
}
