package bagclock.core.diffusion;

import java.util.Arrays;

/**
 * The second method: the same slab on a grid of 200 cells by Crank and Nicolson, steps growing within each phase and
 * the first four of a phase fully implicit, because the face jumps there. Proc. Camb. Phil. Soc. 43 (1947); the
 * implicit start after Rannacher (1984), common practice.
 */
final class CrankNicolson {
    private static final int CELLS = 200;
    private static final int IMPLICIT = 4;
    private static final int STEPS = 1000;
    private static final double GROWTH = 1.007;

    private final double cellMm;
    private final double[] content = new double[CELLS + 1];

    CrankNicolson(double depthMm) {
        this.cellMm = depthMm / CELLS;
    }

    /** A phase of this much D t (mm2) with this level at the open face. */
    CrankNicolson phase(double tau, double level) {
        double first = tau * (GROWTH - 1) / (Math.pow(GROWTH, STEPS) - 1);
        for (int i = 0; i < STEPS; i++) {
            step(first * Math.pow(GROWTH, i), level, i < IMPLICIT ? 1 : 0.5);
        }
        return this;
    }

    private void step(double tau, double level, double implicit) {
        double r = tau / (cellMm * cellMm);
        double[] right = new double[CELLS + 1];
        right[0] = level;
        for (int i = 1; i <= CELLS; i++) {
            double beyond = i < CELLS ? content[i + 1] : content[CELLS - 1];
            right[i] = content[i] + (1 - implicit) * r * (content[i - 1] - 2 * content[i] + beyond);
        }
        solve(right, implicit * r);
    }

    /** Thomas's elimination; the open face is given, the sealed one mirrors its neighbour. */
    private void solve(double[] right, double r) {
        double[] factor = new double[CELLS + 1];
        for (int i = 1; i <= CELLS; i++) {
            double below = i < CELLS ? -r : -2 * r;
            double pivot = 1 + 2 * r - below * factor[i - 1];
            factor[i] = i < CELLS ? -r / pivot : 0;
            right[i] = (right[i] - below * right[i - 1]) / pivot;
        }
        content[CELLS] = right[CELLS];
        for (int i = CELLS - 1; i >= 0; i--) {
            content[i] = right[i] - (i == 0 ? 0 : factor[i] * content[i + 1]);
        }
    }

    double sealedFace() {
        return content[CELLS];
    }

    double halfDepth() {
        return content[CELLS / 2];
    }

    double mean() {
        return (Arrays.stream(content).sum() - (content[0] + content[CELLS]) / 2) / CELLS;
    }
}
