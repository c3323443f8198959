package bagclock.core.oven;

import java.util.List;

/** When each lot could be out if it had the ovens for itself: what is late even so is late in every plan. */
public final class Alone {
    private final Problem problem;
    private final Decoder decoder;

    /** For one problem. */
    public Alone(Problem problem) {
        this.problem = problem;
        this.decoder = new Decoder(problem);
    }

    /** The first minute at which the lot could be out; {@link Problem#NEVER} if no oven can take it. */
    public int firstOut(int lot) {
        int first = Problem.NEVER;
        for (int oven = 0; oven < problem.ovens().length; oven++) {
            first = Math.min(first, firstOut(lot, oven));
        }
        return first;
    }

    /** The same in one oven. */
    public int firstOut(int lot, int oven) {
        int first = Problem.NEVER;
        for (int temperature = 0; temperature < problem.temperatures(); temperature++) {
            if (problem.can(lot, oven, temperature)
                    && decoder.place(oven, List.of(Batch.of(problem, oven, temperature, lot)))) {
                first = Math.min(first, decoder.outAt(lot));
            }
        }
        return first;
    }

    /** Lateness that no plan avoids. */
    public Bounds bounds() {
        if (!problem.aim().isStaged()) {
            return Bounds.NONE;
        }
        long least = 0;
        for (int lot = 0; lot < problem.lots().length; lot++) {
            least += problem.lateness(lot, firstOut(lot));
        }
        return Bounds.ofLateness(least);
    }
}
