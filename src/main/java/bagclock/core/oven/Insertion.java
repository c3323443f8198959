package bagclock.core.oven;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts one lot where it costs least, and leaves all others together and in order. */
public final class Insertion {
    private final Problem problem;
    private final Decoder decoder;

    /** For one problem. */
    public Insertion(Problem problem) {
        this.problem = problem;
        this.decoder = new Decoder(problem);
    }

    /** One way to take it in. */
    private record Way(int oven, List<Batch> batches, double cost) {}

    /** The sketch with the lot in it; empty when no oven has a time for it. */
    public Optional<Sketch> insert(Sketch sketch, int lot) {
        Way best = null;
        for (int oven = 0; oven < problem.ovens().length; oven++) {
            List<Batch> batches = sketch.ovens().get(oven);
            if (!decoder.place(oven, batches)) {
                continue;
            }
            double before = cost(batches.size());
            for (List<Batch> changed : ways(oven, batches, lot)) {
                if (decoder.place(oven, changed)) {
                    double cost = cost(changed.size()) - before;
                    best = best == null || cost < best.cost() ? new Way(oven, changed, cost) : best;
                }
            }
        }
        return Optional.ofNullable(best).map(way -> sketch.with(way.oven(), way.batches()));
    }

    private double cost(int runs) {
        return Prices.of(decoder, runs);
    }

    private List<List<Batch>> ways(int oven, List<Batch> batches, int lot) {
        List<List<Batch>> ways = new ArrayList<>();
        for (int at = 0; at < batches.size(); at++) {
            Batch batch = batches.get(at);
            if (!problem.can(lot, oven, batch.temperature())) {
                continue;
            }
            Batch joined = batch.with(problem, oven, lot);
            if (joined.isSound(problem, oven)) {
                List<Batch> changed = new ArrayList<>(batches);
                changed.set(at, joined);
                ways.add(changed);
            }
        }
        for (int temperature = 0; temperature < problem.temperatures(); temperature++) {
            for (int at = 0; problem.can(lot, oven, temperature) && at <= batches.size(); at++) {
                List<Batch> changed = new ArrayList<>(batches);
                changed.add(at, Batch.of(problem, oven, temperature, lot));
                ways.add(changed);
            }
        }
        return ways;
    }
}
