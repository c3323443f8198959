package bagclock.stock;

import bagclock.platform.Database;
import bagclock.platform.Secret;
import bagclock.platform.Transaction;
import bagclock.register.Change;
import bagclock.register.LabelName;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is known of labels: the numbers they use, the lots that came in, and levels and peaks that differ. */
final class ScanStore {
    private final Database database;
    private final Register register = new Register();

    ScanStore(Database database) {
        this.database = database;
    }

    /**
     * A label whose level or peak is not the part type's.
     *
     * @param labelLevel empty if the level does not differ
     * @param raised whether the part type's levels were raised to the label's
     * @param labelPeak peaks that the part type does not name (C), separated by commas; empty if the peak does not differ
     * @param knownPeak the part type's peaks, in the same form
     * @param lowered whether the part type's peaks were lowered to the label's
     */
    record Difference(
            String tag,
            String labelNumber,
            String partNumber,
            String labelLevel,
            String knownLevel,
            boolean raised,
            String labelPeak,
            String knownPeak,
            boolean lowered,
            Instant recordedAt,
            String who,
            @Nullable Instant settledAt) {}

    /** The part type that a label's number means: the one that a person chose, else the one of that number. */
    Optional<Versioned<PartType>> type(String labelNumber, Instant moment) {
        return database.read(tx -> register.partType(
                tx,
                register.labelName(tx, labelNumber, moment)
                        .map(name -> name.fact().partNumber())
                        .orElse(labelNumber),
                moment));
    }

    Optional<Versioned<LabelName>> name(String labelNumber, Instant moment) {
        return database.read(tx -> register.labelName(tx, labelNumber, moment));
    }

    /** No clock rests on what a label calls a part. */
    void keep(LabelName name, Change change) {
        database.withTransaction(tx -> register.add(tx, name, change));
    }

    Optional<Versioned<PartType>> partType(String number, Instant moment) {
        return database.read(tx -> register.partType(tx, number, moment));
    }

    boolean isLot(String labelNumber, String lot) {
        return database.read(tx -> isLot(tx, labelNumber, lot));
    }

    private static boolean isLot(Transaction tx, String labelNumber, String lot) {
        return tx.handle()
                        .createQuery("select count(*) from label_lot where label_number = :number and lot = :lot")
                        .bind("number", labelNumber)
                        .bind("lot", lot)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    void keepLot(String labelNumber, String lot, Instant now) {
        database.withTransaction(tx -> {
            if (!isLot(tx, labelNumber, lot)) {
                tx.handle()
                        .createUpdate(
                                "insert into label_lot (label_number, lot, recorded_at) values (:number, :lot, :at)")
                        .bind("number", labelNumber)
                        .bind("lot", lot)
                        .bind("at", now)
                        .execute();
            }
        });
    }

    /** Tag of the item that came in as this package of a part. */
    Optional<String> ofPackage(String labelNumber, String number) {
        return database.read(tx -> ofPackage(tx, labelNumber, number));
    }

    private static Optional<String> ofPackage(Transaction tx, String labelNumber, String number) {
        return tx.handle()
                .createQuery("select tag from label_package where label_number = :number and package_number = :package")
                .bind("number", labelNumber)
                .bind("package", number)
                .mapTo(String.class)
                .findOne();
    }

    /** The first item keeps its package. */
    void keepPackage(String labelNumber, String number, String tag, Instant now) {
        database.withTransaction(tx -> {
            if (ofPackage(tx, labelNumber, number).isEmpty()) {
                tx.handle()
                        .createUpdate("""
                                insert into label_package (label_number, package_number, tag, recorded_at)
                                values (:number, :package, :tag, :at)
                                """)
                        .bind("number", labelNumber)
                        .bind("package", number)
                        .bind("tag", tag)
                        .bind("at", now)
                        .execute();
            }
        });
    }

    void keep(Difference difference) {
        database.withTransaction(tx -> tx.handle()
                .createUpdate("""
                        insert into level_difference (tag, label_number, part_number, label_level, known_level, raised,
                            label_peak, known_peak, lowered, recorded_at, who)
                        values (:tag, :labelNumber, :partNumber, :labelLevel, :knownLevel, :raised,
                            :labelPeak, :knownPeak, :lowered, :recordedAt, :who)
                        """)
                .bind("tag", difference.tag())
                .bind("labelNumber", difference.labelNumber())
                .bind("partNumber", difference.partNumber())
                .bind("labelLevel", difference.labelLevel())
                .bind("knownLevel", difference.knownLevel())
                .bind("raised", difference.raised())
                .bind("labelPeak", difference.labelPeak())
                .bind("knownPeak", difference.knownPeak())
                .bind("lowered", difference.lowered())
                .bind("recordedAt", difference.recordedAt())
                .bind("who", difference.who())
                .execute());
    }

    /** Open ones first, then the newest. */
    List<Difference> differences() {
        return database.read(
                tx -> tx.handle().createQuery("""
                        select tag, label_number, part_number, label_level, known_level, raised, label_peak, known_peak,
                            lowered, recorded_at, who, settled_at
                        from level_difference
                        order by case when settled_at is null then 0 else 1 end, recorded_at desc, tag limit 200
                        """).mapTo(Difference.class).list());
    }

    void settle(String tag, String who, Instant now) {
        database.withTransaction(tx -> tx.handle()
                .createUpdate("""
                        update level_difference set settled_at = :at, settled_by = :who
                        where tag = :tag and settled_at is null
                        """)
                .bind("tag", tag)
                .bind("who", who)
                .bind("at", now)
                .execute());
    }

    /** Lets scans of this page be told late in the name of this person. */
    void givePass(String pass, String who, Instant now) {
        try {
            insertPass(pass, who, now);
        } catch (RuntimeException failure) {
            if (!Database.isDuplicateKey(failure)) {
                throw failure;
            }
        }
    }

    private void insertPass(String pass, String who, Instant now) {
        database.withTransaction(tx -> {
            if (holder(tx, pass).isEmpty()) {
                tx.handle()
                        .createUpdate("insert into scan_pass (pass, who, given_at) values (:pass, :who, :at)")
                        .bind("pass", Secret.fingerprint(pass))
                        .bind("who", who)
                        .bind("at", now)
                        .execute();
            }
        });
    }

    /** Whose scans a pass tells; none if it was given earlier. */
    Optional<String> holder(String pass, Instant notBefore) {
        return database.read(tx -> tx.handle()
                .createQuery("select who from scan_pass where pass = :pass and given_at >= :notBefore")
                .bind("pass", Secret.fingerprint(pass))
                .bind("notBefore", notBefore)
                .mapTo(String.class)
                .findOne());
    }

    private static Optional<String> holder(Transaction tx, String pass) {
        return tx.handle()
                .createQuery("select who from scan_pass where pass = :pass")
                .bind("pass", Secret.fingerprint(pass))
                .mapTo(String.class)
                .findOne();
    }
}
