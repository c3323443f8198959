package bagclock.register;

import bagclock.core.standard.CellKey;
import bagclock.core.standard.Table;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** The comparisons of table cells with a copy of the standard. */
final class ComparedCellStore {
    private static final String SELECT = """
            select c.version, v.valid_from, v.recorded_at, v.who, c.sheet, c.row_name, c.column_name, c.cell_value,
                c.compared_by, c.compared_on, c.copy_of
            from compared_cell c join comparison_fact v on v.version = c.version
            """;

    /** One cell of one comparison. */
    record Row(
            int version,
            Instant validFrom,
            Instant recordedAt,
            String who,
            String sheet,
            String rowName,
            String columnName,
            @Nullable String cellValue,
            String comparedBy,
            String comparedOn,
            String copyOf) {
        Versioned<ComparedCell> fact() {
            ComparedCell cell = new ComparedCell(
                    new CellKey(Table.valueOf(sheet), rowName, columnName),
                    Optional.ofNullable(cellValue),
                    comparedBy,
                    LocalDate.parse(comparedOn),
                    copyOf);
            return new Versioned<>(cell, new Version(version, validFrom, recordedAt, who));
        }
    }

    /** The newest comparison at a moment; empty as long as there is none. */
    Optional<Version> versionAt(Transaction tx, Instant moment) {
        return tx.handle()
                .createQuery("""
                        select version as number, valid_from, recorded_at, who from comparison_fact
                        where valid_from <= :moment order by version desc limit 1
                        """)
                .bind("moment", moment)
                .mapTo(Version.class)
                .findFirst();
    }

    /** Of every cell that was ever compared the newest comparison up to this one. */
    List<Versioned<ComparedCell>> cells(Transaction tx, int version) {
        return tx.handle()
                .createQuery(SELECT + """
                        where c.version <= :version and not exists (select 1 from compared_cell d
                            where d.sheet = c.sheet and d.row_name = c.row_name and d.column_name = c.column_name
                                and d.version > c.version and d.version <= :version)
                        """)
                .bind("version", version)
                .mapTo(Row.class)
                .map(Row::fact)
                .list();
    }

    /** Every comparison of one cell, newest first. */
    List<Versioned<ComparedCell>> versions(Transaction tx, CellKey key) {
        return tx.handle()
                .createQuery(SELECT + """
                        where c.sheet = :sheet and c.row_name = :row and c.column_name = :column
                        order by c.version desc
                        """)
                .bind("sheet", key.table().name())
                .bind("row", key.row())
                .bind("column", key.column())
                .mapTo(Row.class)
                .map(Row::fact)
                .list();
    }

    void add(Transaction tx, List<ComparedCell> cells, Version version) {
        enter(tx, version);
        PreparedBatch batch = tx.handle().prepareBatch("""
                insert into compared_cell (version, sheet, row_name, column_name, cell_value, compared_by,
                    compared_on, copy_of)
                values (:version, :sheet, :row, :column, :value, :by, :on, :copy)
                """);
        for (ComparedCell cell : cells) {
            batch.bind("version", version.number())
                    .bind("sheet", cell.key().table().name())
                    .bind("row", cell.key().row())
                    .bind("column", cell.key().column())
                    .bind("value", cell.value().orElse(null))
                    .bind("by", cell.by())
                    .bind("on", cell.on().toString())
                    .bind("copy", cell.copy())
                    .add();
        }
        batch.execute();
    }

    private static void enter(Transaction tx, Version version) {
        int newest = tx.handle()
                .createQuery("select coalesce(max(version), 0) from comparison_fact")
                .mapTo(Integer.class)
                .one();
        if (newest != version.number() - 1) {
            throw new ChangedMeanwhile("the tables are at comparison " + newest);
        }
        try {
            tx.handle()
                    .createUpdate("""
                            insert into comparison_fact (version, valid_from, recorded_at, who)
                            values (:number, :validFrom, :recordedAt, :who)
                            """)
                    .bind("number", version.number())
                    .bind("validFrom", version.validFrom())
                    .bind("recordedAt", version.recordedAt())
                    .bind("who", version.who())
                    .execute();
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                throw new ChangedMeanwhile("the tables got comparison " + version.number() + " meanwhile");
            }
            throw failure;
        }
    }
}
