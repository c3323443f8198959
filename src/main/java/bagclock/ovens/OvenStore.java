package bagclock.ovens;

import bagclock.core.proof.Spell;
import bagclock.platform.Database;
import bagclock.platform.NotThere;
import bagclock.platform.Transaction;
import bagclock.register.Calibration;
import bagclock.register.KnownPlace;
import bagclock.register.KnownPlace.BakeOven;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** What the oven pages read and note. */
final class OvenStore {
    private final Database database;
    private final BiConsumer<Transaction, String> tell;
    private final Register register = new Register();

    OvenStore(Database database, BiConsumer<Transaction, String> tell) {
        this.database = database;
        this.tell = tell;
    }

    /** An item and by when it is needed; an hour late counts weight times. */
    record Need(String tag, @Nullable Instant neededBy, int weight) {
        Optional<Instant> by() {
            return Optional.ofNullable(neededBy);
        }
    }

    List<BakeOven> ovens(Instant moment) {
        return database.read(tx -> register.places(tx, BakeOven.class, moment));
    }

    /** An oven with its version. */
    Versioned<KnownPlace> oven(String code, Instant moment) {
        return database.read(tx -> register.place(tx, code, moment))
                .filter(place -> place.fact() instanceof BakeOven)
                .orElseThrow(() -> new NotThere("no oven " + code));
    }

    /** The day by which an oven was to be calibrated, if it was over at a moment. */
    Optional<LocalDate> pastCalibration(String code, Instant moment) {
        return database.read(register::calibrations).stream()
                .filter(one -> one.isOf(Calibration.Kind.OVEN, code) && one.isPastDueAt(moment))
                .flatMap(one -> one.dueOn().stream())
                .findFirst();
    }

    /** Whether any place has this code. */
    boolean isTaken(String code, Instant moment) {
        return database.read(tx -> register.place(tx, code, moment)).isPresent();
    }

    /** Zones and cabinets, by name: where parts may go from an oven. */
    List<KnownPlace> otherPlaces(Instant moment) {
        return database.read(tx -> register.places(tx, moment)).stream()
                .map(Versioned::fact)
                .filter(place -> !(place instanceof BakeOven))
                .toList();
    }

    /** Tags of items of level 6 out of bags and ovens: they are baked before each use. */
    List<String> levelSix(int most) {
        return database.read(tx -> tx.handle()
                .createQuery("""
                        select i.tag from item i join item_clock c on c.tag = i.tag and c.counting
                        where not i.ended and i.whereabouts in ('FLOOR', 'CABINET', 'BOARD') and c.level = '6'
                        order by i.sort_key, i.tag limit :most
                        """)
                .bind("most", most)
                .mapTo(String.class)
                .list());
    }

    /** Of items that are still there, by tag. */
    Map<String, Need> needs() {
        List<Need> rows = database.read(
                tx -> tx.handle().createQuery("""
                        select n.tag, n.needed_by, n.weight from item_need n join item i on i.tag = n.tag
                        where not i.ended and not exists (select 1 from item_need m
                            where m.tag = n.tag and m.recorded_at > n.recorded_at)
                        """).mapTo(Need.class).list());
        Map<String, Need> needs = new HashMap<>();
        rows.forEach(row -> needs.put(row.tag(), row));
        return needs;
    }

    /** Of lines of which the newest counts: what is told in the same moment as the last is told after it. */
    static Instant later(Optional<Instant> last, Instant now) {
        return last.filter(moment -> !now.isAfter(moment))
                .map(moment -> moment.plusMillis(1))
                .orElse(now);
    }

    /** When a line about the need of an item is written. */
    static Instant needAt(Transaction tx, String tag, Instant now) {
        return later(
                tx.handle()
                        .createQuery("select recorded_at from item_need where tag = :tag"
                                + " order by recorded_at desc limit 1")
                        .bind("tag", tag)
                        .mapTo(Instant.class)
                        .findFirst(),
                now);
    }

    void noteNeed(Need need, String who, Instant now) {
        database.withTransaction(tx -> {
            tx.handle()
                    .createUpdate("insert into item_need (tag, needed_by, recorded_at, who, weight)"
                            + " values (:tag, :neededBy, :recordedAt, :who, :weight)")
                    .bind("tag", need.tag())
                    .bind("neededBy", need.neededBy())
                    .bind("weight", need.weight())
                    .bind("recordedAt", needAt(tx, need.tag(), now))
                    .bind("who", who)
                    .execute();
            tell.accept(tx, "ovens");
        });
    }

    /** When a load came to temperature, as noted last. */
    Optional<Instant> atTemperature(String oven, Instant loadedAt) {
        return database.read(tx -> tx.handle()
                .createQuery("""
                        select at_temperature_at from oven_mark where oven = :oven and loaded_at = :loadedAt
                        order by recorded_at desc limit 1
                        """)
                .bind("oven", oven)
                .bind("loadedAt", loadedAt)
                .mapTo(Instant.class)
                .findFirst());
    }

    /** An interruption as it is stored. */
    record Broken(int number, String kind, Instant fromAt, Instant toAt, boolean cold, int undoes) {
        Interruption interruption() {
            return new Interruption(number, Interruption.Kind.valueOf(kind), new Spell(fromAt, toAt), cold);
        }
    }

    /** Interruptions of a load that stand, in the order in which they were noted. */
    List<Interruption> interruptions(String oven, Instant loadedAt) {
        List<Broken> rows = database.read(tx -> tx.handle()
                .createQuery("""
                        select number, kind, from_at, to_at, cold, undoes from oven_interruption
                        where oven = :oven and loaded_at = :loadedAt order by number
                        """)
                .bind("oven", oven)
                .bind("loadedAt", loadedAt)
                .mapTo(Broken.class)
                .list());
        List<Integer> undone = rows.stream().map(Broken::undoes).toList();
        return rows.stream()
                .filter(row -> row.undoes() == 0 && !undone.contains(row.number()))
                .map(Broken::interruption)
                .toList();
    }

    /** Notes an interruption; or, where {@code undoes} is not 0, that the one with this number did not happen. */
    void note(Load load, Interruption one, int undoes, String who, Instant now) {
        database.withTransaction(tx -> {
            tx.handle()
                    .createUpdate("""
                            insert into oven_interruption (oven, loaded_at, number, kind, from_at, to_at, cold, undoes,
                                recorded_at, who)
                            values (:oven, :loadedAt, (select count(*) + 1 from oven_interruption
                                where oven = :oven and loaded_at = :loadedAt),
                                :kind, :fromAt, :toAt, :cold, :undoes, :recordedAt, :who)
                            """)
                    .bind("oven", load.oven().code())
                    .bind("loadedAt", load.loadedAt())
                    .bind("kind", one.kind().name())
                    .bind("fromAt", one.spell().from())
                    .bind("toAt", one.spell().to())
                    .bind("cold", one.cold())
                    .bind("undoes", undoes)
                    .bind("recordedAt", now)
                    .bind("who", who)
                    .execute();
            tell.accept(tx, "ovens");
        });
    }

    void noteAtTemperature(Load load, Instant at, String who, Instant now) {
        database.withTransaction(tx -> {
            Optional<Instant> last = tx.handle()
                    .createQuery("select recorded_at from oven_mark where oven = :oven and loaded_at = :loadedAt"
                            + " order by recorded_at desc limit 1")
                    .bind("oven", load.oven().code())
                    .bind("loadedAt", load.loadedAt())
                    .mapTo(Instant.class)
                    .findFirst();
            tx.handle()
                    .createUpdate("insert into oven_mark (oven, loaded_at, at_temperature_at, recorded_at, who)"
                            + " values (:oven, :loadedAt, :at, :recordedAt, :who)")
                    .bind("oven", load.oven().code())
                    .bind("loadedAt", load.loadedAt())
                    .bind("at", at.truncatedTo(ChronoUnit.MILLIS))
                    .bind("recordedAt", later(last, now))
                    .bind("who", who)
                    .execute();
            tell.accept(tx, "ovens");
        });
    }
}
