package bagclock.ovens.solver;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Budget;
import bagclock.core.oven.Found;
import bagclock.core.oven.PricePlanner;
import bagclock.core.oven.Sketch;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.google.ortools.Loader;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * The child process: reads one task, reports what it finds, ends. Where the native library does not load it finds what
 * prices find. Not started by hand.
 */
public final class SolverChild {
    /** Exit status where the native library does not load. */
    static final int NO_LIBRARY = 3;

    private SolverChild() {}

    /** Reads a task from standard input and writes reports to standard output, one line each. */
    public static void main(String[] args) throws IOException {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        PrintWriter out = new PrintWriter(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        Wire.Task task = Wire.JSON.readValue(in.readLine(), Wire.Task.class);
        endWithParent(in);
        Sketch from = Wire.sketch(task.problem(), task.sketch());
        if (!isThere()) {
            Budget budget = Budget.of(Duration.ofMillis(task.millis()), task.seed());
            write(out, new PricePlanner().improve(task.problem(), from, budget), false);
            System.exit(NO_LIBRARY);
        }
        ProofSearch search = new ProofSearch(task.problem(), from, task, found -> write(out, found, false));
        write(out, search.run(), true);
        System.exit(0);
    }

    private static boolean isThere() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (RuntimeException | LinkageError missing) {
            return false;
        }
    }

    /** When the parent is gone, nobody waits for the rest. */
    private static void endWithParent(BufferedReader in) {
        Thread watch = new Thread(
                () -> {
                    try {
                        while (in.readLine() != null) {
                            Thread.onSpinWait();
                        }
                    } catch (IOException gone) {
                        System.exit(1);
                    }
                    System.exit(1);
                },
                "parent-watch");
        watch.setDaemon(true);
        watch.start();
    }

    private static void write(PrintWriter out, Found found, boolean isLast) {
        Bounds bounds = found.bounds();
        Wire.Report report = new Wire.Report(
                Wire.rows(found.sketch()),
                boxed(bounds.late()),
                boxed(bounds.ovenMinutes()),
                boxed(bounds.runs()),
                isLast);
        synchronized (out) {
            try {
                out.println(Wire.JSON.writeValueAsString(report));
            } catch (JsonProcessingException failure) {
                throw new UncheckedIOException(failure);
            }
        }
    }

    private static @Nullable Long boxed(OptionalLong bound) {
        return bound.isPresent() ? bound.getAsLong() : null;
    }
}
