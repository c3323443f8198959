package bagclock.climate;

import bagclock.core.exposure.Zone;
import bagclock.desk.Desk;
import bagclock.platform.Texts;
import bagclock.platform.Transaction;
import bagclock.readings.FileEvent;
import bagclock.readings.FoundLines;
import bagclock.readings.LoggerFile;
import bagclock.readings.Progress;
import bagclock.readings.Source;
import java.time.Clock;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Runs imports one after the other beside the pages, and takes them back. */
final class Imports {
    private static final Logger LOG = LoggerFactory.getLogger(Imports.class);

    private final LogStore store;
    private final Desk desk;
    private final Texts texts;
    private final Clock clock;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "logger-import");
        thread.setDaemon(true);
        return thread;
    });

    Imports(LogStore store, Desk desk, Texts texts, Clock clock) {
        this.store = store;
        this.desk = desk;
        this.texts = texts;
        this.clock = clock;
    }

    /** A file that can be imported as it is, perhaps with its other half. */
    record Job(LoggerFile file, RoomLog log) {}

    /** Begins, unless it is running already; the events of the file tell how it ends. */
    void begin(Job job, String who) {
        String id = job.file().id();
        OptionalInt begun = store.begin(id, now(who), job.log().size().span());
        begun.ifPresent(seq -> {
            store.setProgress(id, new Progress(0, job.log().size().readings()));
            worker.execute(() -> run(job, seq, who));
        });
    }

    private void run(Job job, int begunSeq, String who) {
        String id = job.file().id();
        long all = job.log().size().readings();
        Source source = new Source(who, clock.instant(), Optional.of(id));
        Predicate<Transaction> goesOn = store.isRunning(id, begunSeq);
        Import run = new Import(
                readings -> desk.air().addWhile(goesOn, readings, source),
                new Zone(job.file().placeCode()),
                done -> store.setProgress(id, new Progress(done, all)));
        try {
            run.run(job.log())
                    .ifPresent(result -> store.end(
                            id, FileEvent.ended(begunSeq + 1, now(who), true, result.counts(), lines(result))));
        } catch (RuntimeException failure) {
            LOG.error("the import of file {} failed", id, failure);
            store.end(id, FileEvent.ended(begunSeq + 1, now(who), false, FileEvent.Counts.NONE, ""));
        }
    }

    private Source now(String who) {
        return new Source(who, clock.instant());
    }

    private String lines(Import.Result result) {
        Stream<String> found = new FoundWords(texts).of(result.found());
        Stream<String> faults = result.found().faults().stream()
                .map(fault -> fault.line() + "\t" + fault.column() + "\t" + FoundLines.fault(texts, fault));
        Stream<String> refused = result.refused().stream()
                .map(bad -> (bad.line() == 0 ? "" : bad.line()) + "\t" + bad.column() + "\t"
                        + texts.refusal(bad.refusal()));
        String all = Stream.of(found.map(words -> "\t\t" + words), faults, refused)
                .flatMap(lines -> lines)
                .collect(Collectors.joining("\n"));
        return all.length() <= FileEvent.LONGEST_REPORT
                ? all
                : all.substring(0, all.lastIndexOf('\n', FileEvent.LONGEST_REPORT));
    }

    /** Takes back what a file brought; a running import stops. Nothing if it was taken back before. */
    void takeBack(LoggerFile file, String who) {
        desk.air().takeBack(file, who, clock.instant());
    }
}
