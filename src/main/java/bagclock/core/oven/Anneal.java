package bagclock.core.oven;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Simulated annealing: tries small changes, takes every better one and now and then a worse one, the less so the longer
 * it has run. Only the ovens that a change touches are decoded again. The same seed and number of steps find the same
 * plan.
 */
public final class Anneal implements Planner {
    private static final int SAMPLES = 200;
    private static final int BETWEEN_LOOKS = 64;
    private static final double LAST_SHARE = 1e-4;

    /** After each of these parts of the time it goes on from the best plan so far. */
    private static final int PARTS = 4;

    private static final double USUAL = 0.5;

    private final double warmth;

    /** From a plan that is to be changed a lot. */
    public Anneal() {
        this(USUAL);
    }

    /** From a plan that is to be kept, the more so the less warmth. */
    public Anneal(double warmth) {
        this.warmth = warmth;
    }

    @Override
    public Found improve(Problem problem, Sketch from, Budget budget) {
        Score before = new Decoder(problem).score(from);
        Bounds bounds = new Alone(problem).bounds();
        if (problem.lots().length == 0) {
            return new Found(from, before, bounds);
        }
        Search search = new Search(problem, from, budget);
        search.run(warmth);
        Found found = search.best();
        Found better = found.score().compareTo(before) < 0 ? found : new Found(from, before, bounds);
        return new Found(better.sketch(), better.score(), bounds);
    }

    /** One search; holds the plan that it walks on and the best that it met. */
    private static final class Search {
        private final Budget budget;
        private final SplittableRandom random;
        private final Decoder decoder;
        private final Moves moves;
        private final List<Track> tracks = new ArrayList<>();
        private final long startedNs = System.nanoTime();
        private double total;
        private Sketch best;
        private double bestTotal;
        private Score bestScore;

        Search(Problem problem, Sketch from, Budget budget) {
            this.budget = budget;
            this.random = new SplittableRandom(budget.seed());
            this.decoder = new Decoder(problem);
            this.moves = new Moves(problem, random);
            for (int oven = 0; oven < problem.ovens().length; oven++) {
                tracks.add(new Track(problem, decoder, oven));
            }
            this.best = from;
            this.bestScore = decoder.score(from);
            restart();
            this.bestTotal = total;
        }

        private void restart() {
            total = 0;
            for (int oven = 0; oven < tracks.size(); oven++) {
                tracks.get(oven).tryOut(best.ovens().get(oven), Double.MAX_VALUE);
                tracks.get(oven).take();
                total += tracks.get(oven).cost();
            }
        }

        Found best() {
            return new Found(best, bestScore, Bounds.NONE);
        }

        void run(double warmth) {
            double first = Math.max(1e-3, typicalWorsening() * warmth);
            double done = 0;
            int restarts = 1;
            for (long step = 0; step < budget.steps() && done < 1; step++) {
                if (step % BETWEEN_LOOKS == 0) {
                    done = done(step);
                    if (done * PARTS > restarts) {
                        restarts++;
                        restart();
                    }
                }
                double temperature = first * Math.pow(LAST_SHARE, done);
                step(-temperature * Math.log(1 - random.nextDouble()));
            }
        }

        private double done(long step) {
            double bySteps = (double) step / (double) budget.steps();
            double byTime = (double) (System.nanoTime() - startedNs)
                    / (double) Math.max(1, budget.time().toNanos());
            return budget.steps() == Long.MAX_VALUE ? byTime : Math.max(bySteps, byTime >= 1 ? 1 : 0);
        }

        /** How much worse changes make it where they do, by the middle of a sample. */
        private double typicalWorsening() {
            List<Double> worse = new ArrayList<>();
            for (int i = 0; i < SAMPLES; i++) {
                Move move = moves.draw(tracks);
                double change = move.isNone() ? 0 : change(move, Double.MAX_VALUE);
                if (change > 0 && change < Double.MAX_VALUE) {
                    worse.add(change);
                }
            }
            worse.sort(Double::compare);
            return worse.isEmpty() ? 1 : worse.get(worse.size() / 2);
        }

        private double change(Move move, double tolerated) {
            Track track = tracks.get(move.oven());
            if (move.second() == Problem.NO) {
                double tried = track.tryOut(move.batches(), track.cost() + tolerated);
                return tried == Double.MAX_VALUE ? tried : tried - track.cost();
            }
            Track second = tracks.get(move.second());
            double most = track.cost() + second.cost() + tolerated;
            double tried = track.tryOut(move.batches(), most);
            double other = second.tryOut(move.secondBatches(), most - tried);
            return other == Double.MAX_VALUE ? other : tried + other - track.cost() - second.cost();
        }

        private void step(double tolerated) {
            Move move = moves.draw(tracks);
            if (move.isNone()) {
                return;
            }
            double change = change(move, tolerated);
            if (change > tolerated) {
                return;
            }
            tracks.get(move.oven()).take();
            if (move.second() != Problem.NO) {
                tracks.get(move.second()).take();
            }
            total += change;
            if (total < bestTotal - 1e-9) {
                keep();
            }
        }

        private void keep() {
            bestTotal = total;
            Sketch sketch = new Sketch(tracks.stream().map(Track::batches).toList());
            Score score = decoder.score(sketch);
            if (score.compareTo(bestScore) < 0) {
                best = sketch;
                bestScore = score;
            }
        }
    }

    /** New runs of one oven, or of two. */
    record Move(int oven, List<Batch> batches, int second, List<Batch> secondBatches) {
        static final Move NONE = new Move(Problem.NO, List.of(), Problem.NO, List.of());

        boolean isNone() {
            return oven == Problem.NO;
        }

        static Move of(int oven, List<Batch> batches) {
            return new Move(oven, batches, Problem.NO, List.of());
        }
    }
}
