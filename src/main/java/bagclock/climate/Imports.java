package bagclock.climate;

import bagclock.core.exposure.Zone;
import bagclock.desk.Desk;
import bagclock.logfile.LogReport;
import bagclock.platform.Texts;
import bagclock.readings.FileEvent;
import bagclock.readings.Kept;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerFiles;
import bagclock.readings.Progress;
import bagclock.readings.Source;
import bagclock.readings.TakenBack;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
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

    /** Begins; the events of the file tell how it ends. */
    void begin(Job job, String who) {
        String id = job.file().id();
        Instant now = clock.instant();
        int seq = store.events(id).size() + 1;
        store.setProgress(id, new Progress(0, job.log().size().readings()));
        LogReport.Span span = job.log().size().span();
        store.add(
                id,
                FileEvent.begun(
                        seq, new Source(who, now), span.first(), span.last().plusSeconds(1)));
        worker.execute(() -> run(job, seq + 1, who));
    }

    private void run(Job job, int seq, String who) {
        String id = job.file().id();
        long all = job.log().size().readings();
        Source source = new Source(who, clock.instant(), Optional.of(id));
        try {
            Import.Result result = new Import(
                            desk,
                            new Zone(job.file().placeCode()),
                            source,
                            done -> store.setProgress(id, new Progress(done, all)))
                    .run(job.log());
            store.add(id, FileEvent.ended(seq, now(who), true, result.kept(), lines(result)));
        } catch (RuntimeException failure) {
            LOG.error("the import of file {} failed", id, failure);
            store.add(id, FileEvent.ended(seq, now(who), false, new Kept(0, 0, List.of()), ""));
        }
    }

    private Source now(String who) {
        return new Source(who, clock.instant());
    }

    private String lines(Import.Result result) {
        Stream<String> alone = result.found().pairing().stream().flatMap(found -> new PairWords(texts).lines(found));
        Stream<String> faults = result.found().faults().stream()
                .map(fault ->
                        fault.line() + "\t" + fault.column() + "\t" + texts.part(fault.kind()) + " " + fault.text());
        Stream<String> refused = result.kept().refused().stream()
                .map(bad -> (bad.line() == 0 ? "" : bad.line()) + "\t" + bad.column() + "\t"
                        + texts.refusal(bad.refusal()));
        String all = Stream.of(alone.map(words -> "\t\t" + words), faults, refused)
                .flatMap(lines -> lines)
                .collect(Collectors.joining("\n"));
        return all.length() <= FileEvent.LONGEST_REPORT
                ? all
                : all.substring(0, all.lastIndexOf('\n', FileEvent.LONGEST_REPORT));
    }

    /** Takes back what a file brought; nothing if it is running or was taken back before. */
    void takeBack(LoggerFile file, String who) {
        List<FileEvent> events = store.events(file.id());
        if (events.isEmpty() || events.get(events.size() - 1).what() == FileEvent.What.TAKEN_BACK) {
            return;
        }
        int seq = events.size() + 1;
        Instant first = LoggerFiles.first(events).orElseThrow();
        Instant last = LoggerFiles.last(events).orElseThrow();
        Instant now = clock.instant();
        long count = desk.air().takeBack(new TakenBack(new Zone(file.placeCode()), file.id(), seq, first, last), now);
        store.add(file.id(), FileEvent.takenBack(seq, new Source(who, now), count));
    }
}
