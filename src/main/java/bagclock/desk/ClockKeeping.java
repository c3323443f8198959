package bagclock.desk;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.ledger.Item;
import bagclock.ledger.Ledger;
import bagclock.platform.Transaction;
import bagclock.readings.AirTime;
import bagclock.readings.Readings;
import bagclock.readings.ZoneChange;
import bagclock.readings.ZoneReading;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/**
 * Keeps the clock rows in step. A reading rewrites the rows that rest on how the time just before it counted, and those
 * that no sum can follow; all others stay as they are.
 */
final class ClockKeeping {
    /** How far back the log of a zone is compared with its declared worst case, see rule 3. */
    private static final Duration LOOK_BACK = Duration.ofDays(90);

    private static final int STALE_AT_ONCE = 100;

    private final Standards standards;
    private final Register register;
    private final Readings readings;
    private final Ledger ledger;
    private final Gathering gathering;
    private final ClockRowStore rows = new ClockRowStore();

    ClockKeeping(Standards standards, Register register, Readings readings, Ledger ledger, Gathering gathering) {
        this.standards = standards;
        this.register = register;
        this.readings = readings;
        this.ledger = ledger;
        this.gathering = gathering;
    }

    /** For the items of one transaction at one moment. */
    final class Round {
        private final Transaction tx;
        private final Instant now;
        private final BiConsumer<Transaction, String> tell;
        private final Map<String, Optional<ZoneAir>> airs = new HashMap<>();

        Round(Transaction tx, Instant now, BiConsumer<Transaction, String> tell) {
            this.tx = tx;
            this.now = now;
            this.tell = tell;
        }

        /** Works out the rows of these items anew. */
        void refresh(Collection<String> tags) {
            Set<String> inOrder = new TreeSet<>(tags);
            lockZones(inOrder);
            for (String tag : inOrder) {
                Item item = ledger.refresh(tx, tag, now);
                if (item.ended()) {
                    rows.replace(tx, tag, List.of(), List.of());
                } else {
                    refreshRows(tag);
                }
                tell.accept(tx, "item/" + tag);
            }
        }

        /** Before any item, so that scans and readings take their locks in one order. */
        private void lockZones(Set<String> tags) {
            Set<String> zones = new TreeSet<>();
            for (String tag : tags) {
                ledger.timeline(tx, tag)
                        .fold(Stay::of, refusals -> List.<Stay>of())
                        .forEach(stay -> zones.add(stay.zone()));
            }
            zones.forEach(zone -> rows.lock(tx, zone));
        }

        private void refreshRows(String tag) {
            PartHistory history = gathering.of(tx, tag, now).history();
            List<ClockRow> fresh = new ArrayList<>();
            for (Clocks.Worked worked : new Clocks(standards.tables(tx, now), history, this::air).rows(tag)) {
                worked.lives().ifPresent(lives -> rows.keep(tx, lives));
                fresh.add(worked.row());
            }
            List<Stay> stays = Stay.of(history.timeline()).stream()
                    .filter(stay -> history.climate().zones().containsKey(new Zone(stay.zone())))
                    .toList();
            rows.replace(tx, tag, fresh, stays);
        }

        private Optional<ZoneAir> air(Zone zone) {
            return airs.computeIfAbsent(zone.name(), name -> zoneAir(tx, zone, now));
        }

        /** After readings came. */
        void readingsCame(List<ZoneChange> changes, Duration gap) {
            Set<String> touched = new LinkedHashSet<>();
            changes.forEach(change -> touched.addAll(touchedBy(change, gap)));
            refresh(touched);
            changes.forEach(change -> tell.accept(tx, "zone/" + change.zone().name()));
        }

        /** After readings were taken back. */
        void readingsWent(Zone zone) {
            worstHasMoved(zone);
            refresh(rows.everIn(tx, zone.name()));
            tell.accept(tx, "zone/" + zone.name());
        }

        private Set<String> touchedBy(ZoneChange change, Duration gap) {
            String zone = change.zone().name();
            Instant from = change.before().map(Reading::at).orElse(Instant.EPOCH);
            Set<String> touched = new LinkedHashSet<>();
            if (worstHasMoved(change.zone()) || leavesTable(change)) {
                touched.addAll(rows.everIn(tx, zone));
            }
            Instant to = change.after().map(Reading::at).orElse(now);
            touched.addAll(rows.leftBetween(tx, zone, from, to));
            touched.addAll(rows.anchoredSince(tx, zone, from));
            if (isQuietCabinet(change, gap)) {
                Instant until = change.before().orElseThrow().at().plus(gap);
                Instant last = change.added().get(change.added().size() - 1).at();
                rows.prolong(tx, zone, until, last.plus(gap));
            } else {
                touched.addAll(rows.following(tx, zone));
            }
            return touched;
        }

        /** What counts where no reading holds lies in another cell than before: remembers it. */
        private boolean worstHasMoved(Zone zone) {
            Optional<Air> before = rows.worst(tx, zone.name());
            Optional<Air> after = worstNow(tx, zone, now);
            after.ifPresent(air -> rows.setWorst(tx, zone.name(), air));
            return before.isPresent()
                    && after.isPresent()
                    && AirTime.counterOf(before.get()) != AirTime.counterOf(after.get());
        }

        /** Inside its class before and after, in the same column of the table: what follows is as it was foreseen. */
        private boolean isQuietCabinet(ZoneChange change, Duration gap) {
            Optional<Place.CabinetClass> limit = cabinetClass(change.zone());
            if (limit.isEmpty() || !change.continuesWithin(gap)) {
                return false;
            }
            List<Reading> all = change.all();
            return all.stream()
                            .noneMatch(reading ->
                                    reading.air().humidity().isAbove(limit.get().limit()))
                    && all.stream().map(ClockKeeping::column).distinct().count() == 1;
        }

        private Optional<Place.CabinetClass> cabinetClass(Zone zone) {
            return register.place(tx, zone.name(), now)
                    .filter(place -> place.fact() instanceof KnownPlace.DryCabinet)
                    .map(place -> ((KnownPlace.DryCabinet) place.fact()).limit());
        }

        /** Works out again what is no longer valid, some at a time. */
        void sweep() {
            refresh(new LinkedHashSet<>(rows.stale(tx, now, STALE_AT_ONCE)));
        }
    }

    /** The column of the table, as the cell of air without humidity. */
    private static int column(Reading reading) {
        return AirTime.counterOf(Air.of(reading.air().temperature().degrees(), 0));
    }

    private static boolean leavesTable(ZoneChange change) {
        return change.all().stream().anyMatch(reading -> AirTime.counterOf(reading.air()) == AirTime.OUTSIDE);
    }

    /** How a zone stands; empty for one without readings or without a worst case. */
    Optional<ZoneAir> zoneAir(Transaction tx, Zone zone, Instant now) {
        Duration gap = register.houseRules(tx, now).fact().rules().maxReadingGap();
        Optional<Reading> last = readings.latest(tx, zone);
        Optional<Air> worst = rows.worst(tx, zone.name()).or(() -> worstNow(tx, zone, now));
        return last.flatMap(reading ->
                worst.map(air -> new ZoneAir(readings.airTime(tx, zone, reading.at(), gap), reading, air, gap)));
    }

    private Optional<Air> worstNow(Transaction tx, Zone zone, Instant now) {
        HouseRules rules = register.houseRules(tx, now).fact();
        Optional<Air> declared = register.place(tx, zone.name(), now)
                .map(place -> place.fact())
                .flatMap(place -> place instanceof KnownPlace.FloorZone floor ? floor.worstCase() : Optional.empty())
                .or(rules::worstCase);
        return declared.map(air -> readings.harshest(tx, zone, now.minus(LOOK_BACK), now)
                .map(air::harsherOf)
                .orElse(air));
    }

    /** Forgets what counted where no reading held, and makes the blocks anew: the site's rules or a zone changed. */
    void rulesChanged(Transaction tx, Zone zone, Instant now) {
        worstNow(tx, zone, now).ifPresent(air -> rows.setWorst(tx, zone.name(), air));
        readings.rebuild(tx, zone, register.houseRules(tx, now).fact().rules().maxReadingGap());
    }

    /** Locks the zones of some readings. */
    void lock(Transaction tx, List<ZoneReading> fresh) {
        fresh.stream().map(reading -> reading.zone().name()).distinct().sorted().forEach(zone -> rows.lock(tx, zone));
    }

    /** Locks a zone. */
    void lock(Transaction tx, Zone zone) {
        rows.lock(tx, zone.name());
    }

    /** The running sum of every zone and rate in use, at a moment. */
    List<ZoneSum> sums(Transaction tx, Instant moment) {
        Map<String, Optional<ZoneAir>> airs = new HashMap<>();
        List<ZoneSum> sums = new ArrayList<>();
        for (ClockRowStore.Pair pair : rows.pairs(tx)) {
            CellLives lives = CellLives.parse(pair.lives());
            airs.computeIfAbsent(pair.zone(), zone -> zoneAir(tx, new Zone(zone), moment))
                    .flatMap(air -> ZoneSum.of(pair, air, lives, moment))
                    .ifPresent(sums::add);
        }
        return sums;
    }

    ClockRowStore rows() {
        return rows;
    }
}
