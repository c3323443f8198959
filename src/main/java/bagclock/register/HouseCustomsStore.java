package bagclock.register;

import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.Optional;

/** The versions of the site's customs. */
final class HouseCustomsStore {
    /** One version. */
    record Row(
            int version,
            Instant validFrom,
            Instant recordedAt,
            String who,
            String itemLabel,
            String bagLabel,
            String sheet,
            String labelCode,
            boolean wallShown) {
        Versioned<HouseCustoms> fact() {
            HouseCustoms usual = HouseCustoms.USUAL;
            HouseCustoms customs = new HouseCustoms(
                    PrintSize.parse(itemLabel, PrintSize.labels()).orElse(usual.item()),
                    PrintSize.parse(bagLabel, PrintSize.labels()).orElse(usual.bag()),
                    PrintSize.parse(sheet, PrintSize.sheets()).orElse(usual.sheet()),
                    LabelCode.parse(labelCode).orElse(usual.code()),
                    wallShown);
            return new Versioned<>(customs, new Version(version, validFrom, recordedAt, who));
        }
    }

    void add(Transaction tx, HouseCustoms customs, Version version) {
        int newest = tx.handle()
                .createQuery("select coalesce(max(version), 0) from house_customs_fact")
                .mapTo(Integer.class)
                .one();
        if (newest != version.number() - 1) {
            throw new ChangedMeanwhile("the site's customs are at version " + newest);
        }
        try {
            tx.handle()
                    .createUpdate("""
                            insert into house_customs_fact (version, valid_from, recorded_at, who, item_label, bag_label,
                                sheet, label_code, wall_shown)
                            values (:version, :validFrom, :recordedAt, :who, :item, :bag, :sheet, :code, :wall)
                            """)
                    .bind("version", version.number())
                    .bind("validFrom", version.validFrom())
                    .bind("recordedAt", version.recordedAt())
                    .bind("who", version.who())
                    .bind("item", customs.item().name())
                    .bind("bag", customs.bag().name())
                    .bind("sheet", customs.sheet().name())
                    .bind("code", customs.code().name())
                    .bind("wall", customs.wallShown())
                    .execute();
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                throw new ChangedMeanwhile("the site's customs got version " + version.number() + " meanwhile");
            }
            throw failure;
        }
    }

    Optional<Row> at(Transaction tx, Instant moment) {
        return tx.handle()
                .createQuery("""
                        select version, valid_from, recorded_at, who, item_label, bag_label, sheet, label_code, wall_shown
                        from house_customs_fact where valid_from <= :moment
                        order by valid_from desc, version desc limit 1
                        """)
                .bind("moment", moment)
                .mapTo(Row.class)
                .findFirst();
    }
}
