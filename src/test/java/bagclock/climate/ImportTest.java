package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.desk.Desk;
import bagclock.logfile.LogReport.Span;
import bagclock.platform.OnBothDatabases;
import bagclock.readings.FileEvent;
import bagclock.readings.FileEvent.What;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerFiles;
import bagclock.readings.Source;
import java.io.ByteArrayInputStream;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ImportTest extends OnBothDatabases {
    private static final Instant START = Instant.parse("2026-03-01T00:00:00Z");
    private static final Zone BENCH = new Zone("BENCH");
    private static final int ROWS = 20_000;

    private LogStore store;
    private Desk desk;
    private LoggerFile file;

    @BeforeEach
    void upload() {
        store = new LogStore(database);
        desk = DemoShop.desk(database);
        file = store.add(
                new LoggerFiles.Upload("Top", BENCH.name(), "top.csv", new ByteArrayInputStream(new byte[] {1})),
                at(0));
    }

    private Source at(int second) {
        return new Source("clerk", START.plusSeconds(100_000L + second), Optional.of(file == null ? "" : file.id()));
    }

    private int begin() {
        return store.begin(file.id(), at(0), new Span(START, START.plusSeconds(2 * ROWS)))
                .orElseThrow();
    }

    private Import running(int begunSeq) {
        return new Import(
                readings -> desk.air().addWhile(store.isRunning(file.id(), begunSeq), readings, at(1)),
                BENCH,
                done -> {});
    }

    /** Twice as many readings as are kept at once; something happens in between. */
    private static RoomLog log(Runnable between) {
        return new RoomLog() {
            @Override
            public Found read(RoomSamples.Taker taker) {
                for (int second = 0; second < 2 * ROWS; second++) {
                    if (second == ROWS) {
                        between.run();
                    }
                    taker.take(second, new Reading(START.plusSeconds(second), Air.of(22, 40)));
                }
                return new Found(List.of(), List.of(), Optional.empty());
            }

            @Override
            public Size size() {
                return new Size(2 * ROWS, new Span(START, START.plusSeconds(2 * ROWS)));
            }
        };
    }

    private int readings() {
        return new ClimateStore(database)
                .between(BENCH, START, START.plusSeconds(2 * ROWS))
                .size();
    }

    @Test
    void aFileTakenBackWhileItIsImportedBringsNothing() {
        int seq = begin();
        assertThat(store.begin(file.id(), at(0), new Span(START, START))).isEmpty();
        Optional<Import.Result> result = running(seq).run(log(() -> {
            assertThat(readings()).isEqualTo(ROWS);
            desk.air().takeBack(file, "clerk", START.plusSeconds(100_002));
        }));

        assertThat(result).isEmpty();
        assertThat(readings()).isZero();
        store.end(file.id(), FileEvent.ended(seq + 1, at(3), false, FileEvent.Counts.NONE, ""));
        assertThat(store.events(file.id())).extracting(FileEvent::what).containsExactly(What.BEGUN, What.TAKEN_BACK);
        assertThat(store.events(file.id()).get(1).added()).isEqualTo(ROWS);

        desk.air().takeBack(file, "clerk", START.plusSeconds(100_004));
        assertThat(store.events(file.id())).hasSize(2);
        assertThat(running(begin()).run(log(() -> {}))).isPresent();
        assertThat(readings()).isEqualTo(2 * ROWS);
    }
}
