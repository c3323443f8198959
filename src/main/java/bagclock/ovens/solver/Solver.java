package bagclock.ovens.solver;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Budget;
import bagclock.core.oven.Decoder;
import bagclock.core.oven.Found;
import bagclock.core.oven.Planner;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Score;
import bagclock.core.oven.Sketch;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The engine that proves: starts the child process, takes what it reports, and ends it when its time is over. Whatever
 * the child says of a plan is decoded again here; only its bounds are believed. Where the child fails, the plan that went
 * in comes out.
 */
public final class Solver implements Planner, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Solver.class);
    /** A busy computer starts a process late. */
    private static final Duration GRACE = Duration.ofSeconds(30);

    private static final String FOLDER = "bagclock-solver";
    /** Read by every Java at its start: a library unpacks itself before a program could name another folder. */
    private static final String OPTIONS = "JAVA_TOOL_OPTIONS";

    private static final String HEAP = "-Xmx512m";

    private final List<String> command;
    private final int workers;
    private final Consumer<Process> onStart;
    private final Set<Process> running = ConcurrentHashMap.newKeySet();

    /** How a search ended. */
    public enum Ending {
        /** It said all that it can say in its time. */
        DONE,
        /** The process ended before its time; what it had found is kept. */
        BROKEN_OFF,
        /** The native library is missing on this computer: the plan and its bound are what prices gave. */
        NO_LIBRARY,
        /** Not tried: a site that opens doors during a run has plans that the solver does not know. */
        NOT_FOR_OPENED_DOORS
    }

    /** What was found, and how the search ended. */
    public record Answer(Found found, Ending ending) {}

    /** The usual child: the program that runs now, with the solver's own entry. */
    public static Solver usual(int workers) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new Solver(
                List.of(java, HEAP, "-cp", System.getProperty("java.class.path"), SolverChild.class.getName()),
                workers,
                process -> {});
    }

    /** A child by its command; tests look at the process. */
    Solver(List<String> command, int workers, Consumer<Process> onStart) {
        this.command = List.copyOf(command);
        this.workers = workers;
        this.onStart = onStart;
    }

    /** The command of the child. */
    List<String> command() {
        return command;
    }

    @Override
    public Found improve(Problem problem, Sketch from, Budget budget) {
        return search(problem, from, budget, found -> {}).found();
    }

    /** As {@link #improve}, tells what is found on the way, and how it ended. */
    public Answer search(Problem problem, Sketch from, Budget budget, Consumer<Found> tell) {
        Found start = new Found(from, new Decoder(problem).score(from), Bounds.NONE);
        if (problem.recovery() != Problem.NO) {
            return new Answer(start, Ending.NOT_FOR_OPENED_DOORS);
        }
        if (problem.lots().length == 0) {
            return new Answer(start, Ending.DONE);
        }
        Wire.Task task =
                new Wire.Task(problem, Wire.rows(from), budget.time().toMillis(), workers, (int) budget.seed());
        try {
            return run(start, task, tell);
        } catch (IOException failure) {
            LOG.warn("the solver's process could not be used", failure);
            return new Answer(start, Ending.BROKEN_OFF);
        }
    }

    /** The child unpacks its library, some 70 MB, and would leave it: so it gets a folder that goes when it has ended. */
    private Answer run(Found start, Wire.Task task, Consumer<Found> tell) throws IOException {
        Path folder = Files.createTempDirectory(FOLDER);
        try {
            return run(folder, start, task, tell);
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException | UncheckedIOException failure) {
            LOG.warn("the solver's folder {} could not be deleted", folder, failure);
        }
    }

    private Answer run(Path folder, Found start, Wire.Task task, Consumer<Found> tell) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().merge(OPTIONS, "\"-Djava.io.tmpdir=" + folder + "\"", (given, own) -> given + " " + own);
        Process process = builder.start();
        Timer timer = new Timer("solver-end", true);
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        process.destroyForcibly();
                    }
                },
                Duration.ofMillis(task.millis()).plus(GRACE).toMillis());
        try {
            running.add(process);
            onStart.accept(process);
            return read(process, start, task, tell);
        } finally {
            timer.cancel();
            process.destroyForcibly().onExit().join();
            running.remove(process);
        }
    }

    /** Ends what runs; what it had found is kept. */
    @Override
    public void close() {
        running.forEach(Process::destroyForcibly);
    }

    private Answer read(Process process, Found start, Wire.Task task, Consumer<Found> tell) throws IOException {
        Found best = start;
        boolean isOver = false;
        try (OutputStream out = process.getOutputStream();
                BufferedReader in = process.inputReader(StandardCharsets.UTF_8)) {
            out.write((Wire.JSON.writeValueAsString(task) + "\n").getBytes(StandardCharsets.UTF_8));
            out.flush();
            String line = in.readLine();
            while (line != null && !isOver) {
                if (line.startsWith("{")) {
                    Wire.Report report = Wire.JSON.readValue(line, Wire.Report.class);
                    best = better(task.problem(), best, report);
                    tell.accept(best);
                    isOver = report.isLast();
                }
                line = isOver ? null : in.readLine();
            }
        } catch (IOException broken) {
            LOG.info("the solver's process ended early: {}", broken.getMessage());
        }
        return new Answer(best, isOver ? Ending.DONE : ending(process));
    }

    private static Ending ending(Process process) {
        try {
            return process.waitFor() == SolverChild.NO_LIBRARY ? Ending.NO_LIBRARY : Ending.BROKEN_OFF;
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return Ending.BROKEN_OFF;
        }
    }

    private static Found better(Problem problem, Found best, Wire.Report report) {
        Bounds bounds = new Bounds(optional(report.late()), optional(report.ovenMinutes()), optional(report.runs()));
        Sketch sketch = Wire.sketch(problem, report.sketch());
        Decoder decoder = new Decoder(problem);
        if (decoder.fits(sketch)) {
            Score score = decoder.score(sketch);
            if (score.compareTo(best.score()) < 0) {
                return new Found(sketch, score, bounds);
            }
        }
        return new Found(best.sketch(), best.score(), bounds);
    }

    private static OptionalLong optional(@Nullable Long bound) {
        return bound == null ? OptionalLong.empty() : OptionalLong.of(bound);
    }
}
