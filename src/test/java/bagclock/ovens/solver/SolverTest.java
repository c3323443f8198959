package bagclock.ovens.solver;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import bagclock.core.oven.Bounds;
import bagclock.core.oven.Budget;
import bagclock.core.oven.Decoder;
import bagclock.core.oven.Enumerated;
import bagclock.core.oven.Found;
import bagclock.core.oven.Plan;
import bagclock.core.oven.PlanCheck;
import bagclock.core.oven.PriceSearch;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Reach;
import bagclock.core.oven.Replan;
import bagclock.core.oven.Score;
import bagclock.core.oven.Shop;
import bagclock.core.oven.ShopDraws;
import bagclock.core.oven.Sketch;
import bagclock.ovens.solver.Solver.Answer;
import bagclock.ovens.solver.Solver.Ending;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The solver against every grouping and order of small shops; and what is left when its process fails. */
class SolverTest {
    private static final Solver USUAL = Solver.usual(2);

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    static LongStream seeds() {
        // 348: a run after a frozen one, in an oven that was at another temperature before; 969: waits for unattended
        // hours.
        return LongStream.concat(Counts.seeds(40, 1_000), LongStream.of(348, 969))
                .distinct();
    }

    private static Shop large() {
        return new ShopDraws(3).workshop(40, 3, 3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void itsBoundsHoldAndItsPlansAreTheBest(long seed) {
        Shop shop = new ShopDraws(seed).small(5);
        Replan replan = new Replan(shop);
        Problem problem = replan.minutes().problem();
        Sketch start = replan.fresh().sketch();
        Wire.Task task = new Wire.Task(problem, Wire.rows(start), 10_000, 1, 1);

        Found found = new ProofSearch(problem, start, task, met -> {}).run();

        Score best = Enumerated.best(shop);
        assertThat(PlanCheck.faults(shop, replan.minutes().plan(found.sketch())))
                .isEmpty();
        assertThat(found.bounds().late().orElse(0)).isLessThanOrEqualTo(best.late());
        if (found.bounds().word(found.score()) == Bounds.Word.PROVED_BEST) {
            assertThat(List.of(
                            found.score().late(),
                            found.score().ovenMinutes(),
                            found.score().runs()))
                    .isEqualTo(List.of(best.late(), best.ovenMinutes(), best.runs()));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatBoundsSomeLotsBoundsAll(long seed) {
        Shop shop = new ShopDraws(seed).small(5);
        Replan replan = new Replan(shop);
        Problem problem = replan.minutes().problem();
        CriticalLots lots = new CriticalLots(problem, replan.fresh().sketch());
        long best = Enumerated.best(shop).late();

        assertThat(CriticalLots.areEasier(problem)).isTrue();
        for (int count = 1; count < problem.lots().length; count++) {
            ProofModel some = new ProofModel(lots.first(count));
            some.seek(0, Integer.MAX_VALUE, 0);
            CpSolver solver = new CpSolver();
            solver.getParameters().setNumWorkers(1);
            assertThat(solver.solve(some.model())).isEqualTo(CpSolverStatus.OPTIMAL);
            assertThat(Math.round(solver.objectiveValue())).isLessThanOrEqualTo(best);
        }
    }

    /** With only what is in reach of the best plan by the prices, the solver finds a plan as good. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatPricesLeaveOutIsNotInEveryBestPlan(long seed) {
        Shop shop = new ShopDraws(seed).small(5);
        Replan replan = new Replan(shop);
        Problem problem = replan.minutes().problem();
        if (problem.lots().length == 0) {
            return;
        }
        long best = Enumerated.best(shop).late();
        PriceSearch prices = PriceSearch.of(problem, replan.fresh().sketch(), Budget.of(40, 1));

        ProofModel reached = new ProofModel(problem, Optional.of(Reach.of(prices, best)));
        reached.seek(0, best, 0);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);

        assertThat(solver.solve(reached.model())).isEqualTo(CpSolverStatus.OPTIMAL);
        Found found =
                new Found(reached.sketch(solver), new Decoder(problem).score(reached.sketch(solver)), Bounds.NONE);
        assertThat(prices.bound()).isLessThanOrEqualTo(best);
        assertThat(Math.round(solver.objectiveValue())).isLessThanOrEqualTo(best);
        assertThat(found.score().late()).isGreaterThanOrEqualTo(best);
    }

    @Test
    void aTaskCrossesTheProcessUnchanged() throws JsonProcessingException {
        Replan replan = new Replan(large());
        Sketch sketch = replan.fresh().sketch();
        Wire.Task task = new Wire.Task(replan.minutes().problem(), Wire.rows(sketch), 1, 2, 3);

        String line = Wire.JSON.writeValueAsString(task);

        assertThat(Wire.JSON.writeValueAsString(Wire.JSON.readValue(line, Wire.Task.class)))
                .isEqualTo(line);
        assertThat(line).doesNotContain("\n");
    }

    @Test
    void whatTheChildUnpacksGoesWithIt(@TempDir Path told) throws IOException {
        Path file = told.resolve("options");
        String script = "o=\"${JAVA_TOOL_OPTIONS##*=}\"; d=\"${o%?}\"; mkdir -p \"$d/library\"; echo \"$d\" >" + file;
        Replan replan = new Replan(large());

        new Solver(List.of("sh", "-c", script + "; kill -9 $$"), 1, process -> {})
                .improve(replan.minutes().problem(), replan.fresh().sketch(), Budget.of(Duration.ofSeconds(5), 1));

        Path folder = Path.of(Files.readString(file).strip());
        assertThat(folder.getParent()).isEqualTo(Path.of(System.getProperty("java.io.tmpdir")));
        assertThat(folder).doesNotExist();
    }

    @Test
    void theChildMakesAPlanBetterAndLawful() {
        Shop shop = large();
        Replan replan = new Replan(shop);
        Found start = replan.fresh();

        Answer answer = USUAL.search(
                replan.minutes().problem(), start.sketch(), Budget.of(Duration.ofSeconds(4), 1), found -> {});

        assertThat(answer.ending()).isEqualTo(Ending.DONE);
        assertThat(answer.found().score().compareTo(start.score())).isLessThanOrEqualTo(0);
        assertThat(answer.found().bounds().late()).isPresent();
        assertThat(answer.found().bounds().late().orElse(0))
                .isLessThanOrEqualTo(answer.found().score().late());
        Plan plan = replan.minutes().plan(answer.found().sketch());
        assertThat(PlanCheck.faults(shop, plan)).isEmpty();
    }

    @Test
    void aChildKilledInMidSearchCostsOnlyTheProof() {
        Shop shop = large();
        Replan replan = new Replan(shop);
        Found start = replan.fresh();
        Solver solver = new Solver(USUAL.command(), 2, process -> {
            Thread killer = new Thread(() -> {
                sleep();
                process.destroyForcibly();
            });
            killer.start();
        });

        Answer answer = solver.search(
                replan.minutes().problem(), start.sketch(), Budget.of(Duration.ofSeconds(60), 1), found -> {});

        assertThat(answer.ending()).isEqualTo(Ending.BROKEN_OFF);
        assertThat(answer.found().score().compareTo(start.score())).isLessThanOrEqualTo(0);
        Plan plan = replan.minutes().plan(answer.found().sketch());
        assertThat(PlanCheck.faults(shop, plan)).isEmpty();
    }

    @Test
    void withoutItsLibraryTheChildFindsWhatPricesFind() {
        String withoutLibrary = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !entry.contains("ortools-linux"))
                .collect(Collectors.joining(File.pathSeparator));
        List<String> command = USUAL.command().stream()
                .map(word -> word.equals(System.getProperty("java.class.path")) ? withoutLibrary : word)
                .toList();
        Shop shop = new ShopDraws(4).workshop(40, 3, 3);
        Replan replan = new Replan(shop);
        Found start = replan.fresh();

        Answer answer = new Solver(command, 2, process -> {})
                .search(replan.minutes().problem(), start.sketch(), Budget.of(Duration.ofSeconds(3), 1), found -> {});

        assertThat(answer.ending()).isEqualTo(Ending.NO_LIBRARY);
        assertThat(answer.found().score().compareTo(start.score())).isLessThan(0);
        assertThat(answer.found().bounds().late().orElse(0))
                .isBetween(1L, answer.found().score().late());
        assertThat(PlanCheck.faults(shop, replan.minutes().plan(answer.found().sketch())))
                .isEmpty();
    }

    private static void sleep() {
        try {
            Thread.sleep(1_500);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void aChildThatIsNoSolverCostsOnlyTheProof() {
        Replan replan = new Replan(large());
        Found start = replan.fresh();
        Problem problem = replan.minutes().problem();
        Budget budget = Budget.of(Duration.ofSeconds(5), 1);

        Answer none = new Solver(List.of("/no/such/program"), 1, process -> {})
                .search(problem, start.sketch(), budget, found -> {});
        Answer silent =
                new Solver(List.of("false"), 1, process -> {}).search(problem, start.sketch(), budget, found -> {});
        Answer missing = new Solver(List.of("sh", "-c", "exit 3"), 1, process -> {})
                .search(problem, start.sketch(), budget, found -> {});

        assertThat(none.ending()).isEqualTo(Ending.BROKEN_OFF);
        assertThat(silent.ending()).isEqualTo(Ending.BROKEN_OFF);
        assertThat(missing.ending()).isEqualTo(Ending.NO_LIBRARY);
        assertThat(missing.found().sketch()).isEqualTo(start.sketch());
    }

    @Test
    void plansWithOpenedDoorsAreNotForTheSolver() {
        Shop shop = large();
        Shop open = new Shop(
                shop.now(),
                shop.ovens(),
                shop.lots(),
                shop.frozen(),
                new Shop.Customs(
                        List.of(),
                        Optional.of(Duration.ofMinutes(30)),
                        shop.customs().aim()));
        Replan replan = new Replan(open);

        Answer answer = USUAL.search(
                replan.minutes().problem(), replan.fresh().sketch(), Budget.of(Duration.ofSeconds(5), 1), found -> {});

        assertThat(answer.ending()).isEqualTo(Ending.NOT_FOR_OPENED_DOORS);
    }
}
