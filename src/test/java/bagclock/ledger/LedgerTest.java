package bagclock.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.Zone;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.CarrierLimit;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.OnBothDatabases;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class LedgerTest extends OnBothDatabases {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00.125Z");
    private static final Optional<Zone> BENCH = Optional.of(new Zone("Z-BENCH"));

    private final Ledger ledger = new Ledger();
    private int keys;

    private Stamp stamp() {
        keys++;
        return new Stamp("clerk", START.plusSeconds(keys), "key-" + keys);
    }

    private Entry append(Act act, double hours) {
        Instant at = START.plusMillis((long) (hours * 3_600_000));
        return database.inTransaction(tx -> ledger.append(tx, new Draft("R-1", at, act), stamp()));
    }

    private void receive() {
        database.withTransaction(tx -> ledger.enter(tx, "R-1", "PN", Optional.empty(), START));
        append(
                new Act.Received(
                        new Event.Sealed(START, OptionalInt.of(12)),
                        "PN",
                        5,
                        new CarrierLimit.None(),
                        Map.of("a", "b")),
                0);
    }

    private List<ChainFault> verify() {
        return database.read(tx -> ledger.verify(tx, "R-1"));
    }

    private void tamper(String sql) {
        database.withTransaction(tx -> tx.handle().execute(sql));
    }

    @Test
    void everyActComesBackAsItWasTold() {
        receive();
        Instant at = START.plusSeconds(60);
        List<Act> acts = List.of(
                new Act.Happened(
                        new Event.Opened(
                                at,
                                Optional.of(new HumidityCard(Map.of(5.0, false, 10.0, true))),
                                Optional.of(at),
                                Optional.of(true),
                                BENCH),
                        Map.of(Notes.PHOTO, "abc")),
                new Act.Happened(
                        new Event.Opened(at, Optional.empty(), Optional.empty(), Optional.empty(), BENCH), Map.of()),
                new Act.Happened(new Event.ToFloor(at, BENCH), Map.of()),
                new Act.Happened(new Event.UnknownExposure(at), Map.of()),
                new Act.Happened(new Event.ToDryStorage(at, Optional.of(new RelativeHumidity(5)), BENCH), Map.of()),
                new Act.Happened(new Event.Resealed(at, true, false), Map.of()),
                new Act.Happened(
                        new Event.BakeStarted(at, new Celsius(90.5), Optional.of(new RelativeHumidity(4.5))), Map.of()),
                new Act.Happened(new Event.BakeEnded(at, Optional.of(Duration.ofMinutes(7))), Map.of()),
                new Act.Happened(new Event.Heated(at, Optional.of(new Celsius(245.3))), Map.of()),
                new Act.Happened(new Event.Mounted(at, Optional.empty()), Map.of(Notes.BOARD, "B-1")),
                new Act.Happened(new Event.Removed(at, BENCH), Map.of()),
                new Act.Happened(new Event.Wetted(at), Map.of()),
                new Act.Happened(new Event.CarrierChanged(at, new CarrierLimit.Of(new Celsius(125))), Map.of()),
                new Act.Happened(new Event.CarrierChanged(at, new CarrierLimit.Unknown()), Map.of()),
                new Act.Happened(new Event.CarrierChanged(at, new CarrierLimit.None()), Map.of()),
                new Act.SplitOff("R-2", 3),
                new Act.SplitFrom("R-0", 4, 3),
                new Act.Joined(List.of(new Act.Joined.Other("R-3", 7)), 9),
                new Act.JoinedInto("R-9"),
                new Act.UsedUp(2, "WO-1", List.of("B-1", "B-2")),
                new Act.TakenBack());
        acts.forEach(act -> append(act, 1));

        List<Entry> entries = database.read(tx -> ledger.history(tx, "R-1")).entries();
        assertThat(entries.stream().skip(1).map(Entry::act)).containsExactlyElementsOf(acts);
        assertThat(verify()).isEmpty();
    }

    @Test
    void aChangedTextIsFound() {
        receive();
        append(new Act.Happened(new Event.Wetted(START.plusSeconds(5)), Map.of()), 1);
        tamper("update ledger_entry set payload = replace(payload, '\"quantity\":5', '\"quantity\":6') where seq = 1");

        assertThat(verify()).containsExactly(new ChainFault("R-1", 1, ChainFault.Kind.PAYLOAD_CHANGED));
    }

    @Test
    void aChangedColumnIsFound() {
        receive();
        tamper("update ledger_entry set who = 'somebody else'");

        assertThat(verify()).containsExactly(new ChainFault("R-1", 1, ChainFault.Kind.COLUMN_CHANGED));
    }

    @Test
    void aMissingEntryIsFound() {
        receive();
        append(new Act.Happened(new Event.Wetted(START.plusSeconds(5)), Map.of()), 1);
        append(new Act.Happened(new Event.Wetted(START.plusSeconds(6)), Map.of()), 2);
        tamper("delete from ledger_entry where seq = 2");

        assertThat(verify()).containsExactly(new ChainFault("R-1", 3, ChainFault.Kind.ENTRY_MISSING));
    }

    @Test
    void anEntryThatWasWrittenAnewIsFound() {
        receive();
        append(new Act.Happened(new Event.Wetted(START.plusSeconds(5)), Map.of()), 1);
        String payload = database.read(tx -> ledger.history(tx, "R-1"))
                .entries()
                .get(0)
                .payload()
                .replace("\"quantity\":5", "\"quantity\":6");
        database.withTransaction(tx -> tx.handle()
                .createUpdate("update ledger_entry set payload = :payload, hash = :hash where seq = 1")
                .bind("payload", payload)
                .bind("hash", Chain.hash(Chain.START, payload))
                .execute());

        assertThat(verify()).containsExactly(new ChainFault("R-1", 2, ChainFault.Kind.NOT_LINKED));
    }

    @Test
    void ofTwoWritersAtOnceTheSecondIsToldThatItChangedMeanwhile() throws Exception {
        receive();
        CyclicBarrier bothHaveRead = new CyclicBarrier(2);
        ExecutorService two = Executors.newFixedThreadPool(2);
        Callable<Boolean> writer = () -> {
            Entry mine = database.inTransaction(tx -> {
                List<Entry> before = ledger.history(tx, "R-1").entries();
                meet(bothHaveRead);
                Draft draft = new Draft(
                        "R-1",
                        START.plusSeconds(9),
                        new Act.Happened(new Event.Wetted(START.plusSeconds(9)), Map.of()));
                return ledger.appendAfter(
                        tx,
                        before,
                        draft,
                        new Stamp("w", START, "w-" + Thread.currentThread().getId()));
            });
            return mine.seq() == 2;
        };
        Future<Boolean> one = two.submit(writer);
        Future<Boolean> other = two.submit(writer);

        int refused = 0;
        for (Future<Boolean> each : List.of(one, other)) {
            try {
                assertThat(each.get(30, TimeUnit.SECONDS)).isTrue();
            } catch (java.util.concurrent.ExecutionException failure) {
                assertThat(failure).hasCauseInstanceOf(ChangedMeanwhile.class);
                refused++;
            }
        }
        two.shutdown();
        assertThat(refused).isEqualTo(1);
        assertThat(verify()).isEmpty();
    }

    private static void meet(CyclicBarrier barrier) {
        try {
            barrier.await(2, TimeUnit.SECONDS);
        } catch (Exception passed) {
            // a second try of the same work meets nobody
        }
    }

    @Test
    void aSecondItemOfOneTagIsRefused() {
        receive();

        assertThatThrownBy(() -> database.withTransaction(tx -> ledger.enter(tx, "R-1", "PN", Optional.empty(), START)))
                .isInstanceOf(ChangedMeanwhile.class);
    }
}
