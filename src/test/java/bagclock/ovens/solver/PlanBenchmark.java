package bagclock.ovens.solver;

import bagclock.core.oven.Anneal;
import bagclock.core.oven.BenchmarkFiles;
import bagclock.core.oven.Bounds;
import bagclock.core.oven.Budget;
import bagclock.core.oven.Found;
import bagclock.core.oven.PlanCheck;
import bagclock.core.oven.PricePlanner;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Replan;
import bagclock.core.oven.Shop;
import bagclock.core.oven.ShopDraws;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Measures the engines, one line for each instance, with the second of the solver's time in which it last met a plan that is
 * less late: {@code folder FILES-PATTERN ANNEAL-S PRICES-S SOLVER-S}, or {@code shop
 * LOTS OVENS SEEDS ANNEAL-S PRICES-S SOLVER-S} for shops of our own making in three degrees of tightness.
 */
public final class PlanBenchmark {
    private final Duration annealing;
    private final Duration pricing;
    private final Duration proving;
    private final Solver solver = Solver.usual(8);

    private PlanBenchmark(Duration annealing, Duration pricing, Duration proving) {
        this.annealing = annealing;
        this.pricing = pricing;
        this.proving = proving;
    }

    /** Prints a table. */
    public static void main(String[] args) throws IOException {
        boolean isShop = args[0].equals("shop");
        int at = isShop ? 4 : 2;
        PlanBenchmark benchmark = new PlanBenchmark(seconds(args[at]), seconds(args[at + 1]), seconds(args[at + 2]));
        System.out.println("| instance | dispatch | annealed | solver | bound | word | last better after | law |");
        if (isShop) {
            for (int tightness = 1; tightness <= 3; tightness++) {
                for (int seed = 1; seed <= Integer.parseInt(args[3]); seed++) {
                    Shop shop = new ShopDraws(seed)
                            .workshop(Integer.parseInt(args[1]), Integer.parseInt(args[2]), tightness);
                    benchmark.measure("seed " + seed + ", tightness " + tightness, shop, 60);
                }
            }
        } else {
            for (Path file : files(args[0], args[1])) {
                BenchmarkFiles.Instance instance = BenchmarkFiles.read(file);
                benchmark.measure(file.getFileName().toString(), instance.shop(), instance.constant());
            }
        }
    }

    private static List<Path> files(String folder, String pattern) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.filter(file -> file.getFileName().toString().matches(pattern))
                    .sorted()
                    .toList();
        }
    }

    private static Duration seconds(String text) {
        return Duration.ofMillis(Math.round(Double.parseDouble(text) * 1000));
    }

    private void measure(String name, Shop shop, long unit) {
        Replan replan = new Replan(shop);
        Problem problem = replan.minutes().problem();
        long from = System.nanoTime();
        Found dispatched = replan.fresh();
        long first = System.nanoTime() - from;
        Found annealed = new Anneal().improve(problem, dispatched.sketch(), Budget.of(annealing, 1));
        Found found = annealed;
        double lastBetter = 0;
        if (!pricing.isZero()) {
            found = new PricePlanner().improve(problem, annealed.sketch(), Budget.of(pricing, 1));
        }
        if (!proving.isZero()) {
            Met met = new Met(found);
            found = solver.search(problem, found.sketch(), Budget.of(proving, 1), met)
                    .found();
            lastBetter = met.seconds();
        }
        int faults = Stream.of(dispatched, annealed, found)
                .mapToInt(one -> PlanCheck.faults(shop, replan.minutes().plan(one.sketch()))
                        .size())
                .sum();
        long bound = found.bounds().late().orElse(0);
        Bounds.Word word = found.bounds().word(found.score());
        String told = !problem.aim().isStaged() && bound >= found.score().late() ? "PROVED_BEST" : word.name();
        System.out.printf(
                Locale.ROOT,
                "| %s | %.6f (%d ms) | %.6f | %.6f | %.6f | %s | %.0f s | %s |%n",
                name,
                (double) dispatched.score().late() / (double) unit,
                first / 1_000_000,
                (double) annealed.score().late() / (double) unit,
                (double) found.score().late() / (double) unit,
                (double) bound / (double) unit,
                told,
                lastBetter,
                faults == 0 ? "kept" : faults + " broken");
    }

    /** When the solver last met a plan that is less late. */
    private static final class Met implements Consumer<Found> {
        private final long fromNs = System.nanoTime();
        private long best;
        private double seconds;

        Met(Found from) {
            this.best = from.score().late();
        }

        @Override
        public synchronized void accept(Found found) {
            if (found.score().late() < best) {
                best = found.score().late();
                seconds = (System.nanoTime() - fromNs) / 1e9;
            }
        }

        synchronized double seconds() {
            return seconds;
        }
    }
}
