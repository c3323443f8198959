package bagclock.register;

import bagclock.platform.Transaction;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Calibrations, by version. */
final class CalibrationStore {
    /** The newest version of one. */
    record Row(
            String kind, String name, int version, @Nullable LocalDate dueOn) {
        Calibration fact() {
            return new Calibration(Calibration.Kind.valueOf(kind), name, Optional.ofNullable(dueOn));
        }
    }

    List<Row> all(Transaction tx) {
        return tx.handle().createQuery("""
                        select c.kind, c.name, c.version, c.due_on from calibration_fact c
                        where c.version = (select max(n.version) from calibration_fact n
                            where n.kind = c.kind and n.name = c.name)
                        order by c.kind, c.name
                        """).mapTo(Row.class).list();
    }

    void add(Transaction tx, Calibration calibration, Change change) {
        int version = all(tx).stream()
                        .filter(row -> row.fact().kind() == calibration.kind()
                                && row.name().equals(calibration.name()))
                        .mapToInt(Row::version)
                        .findFirst()
                        .orElse(0)
                + 1;
        tx.handle()
                .createUpdate("""
                        insert into calibration_fact (kind, name, version, recorded_at, who, due_on)
                        values (:kind, :name, :version, :recordedAt, :who, :dueOn)
                        """)
                .bind("kind", calibration.kind().name())
                .bind("name", calibration.name())
                .bind("version", version)
                .bind("recordedAt", change.recordedAt())
                .bind("who", change.who())
                .bindByType("dueOn", calibration.dueOn().orElse(null), LocalDate.class)
                .execute();
    }
}
