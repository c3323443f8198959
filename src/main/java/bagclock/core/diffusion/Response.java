package bagclock.core.diffusion;

/**
 * How a dry slab fills when its open face is brought to the level 1 and kept there, after a Fourier number
 * Fo = D t / h2, h the depth from the open face to the sealed one. Crank, The Mathematics of Diffusion, 1975, chapter 4:
 *
 * <p>mean = 1 - (8/pi2) SUM 1/(2n+1)2 exp(-(2n+1)2 pi2 Fo/4), at small Fo 2 sqrt(Fo/pi);
 *
 * <p>sealed face = 1 - (4/pi) SUM (-1)^n/(2n+1) exp(-(2n+1)2 pi2 Fo/4).
 *
 * <p>The series hold to 1e-9; the read-off values of {@link #FACE} and {@link #MEAN} to 1e-6.
 */
final class Response {
    /** Above this one term of the series is enough: the second is below 1e-40. */
    private static final double LONG = 5;

    /** Above this the slab is full to 1e-13. */
    static final double FULL = 12;

    /** Below this nothing has reached the sealed face: 2 erfc(15) is below 1e-99. */
    private static final double UNREACHED = 1e-3;

    /** Below this the far face does not change the mean by 1e-9. */
    private static final double SHORT = 0.05;

    private static final double LEAST_TERM = 1e-17;
    private static final int STEPS_PER_UNIT = 4096;

    static final Response FACE = new Response(true);
    static final Response MEAN = new Response(false);

    private final boolean face;
    private final double[] values = new double[(int) (LONG * STEPS_PER_UNIT) + 2];

    private Response(boolean face) {
        this.face = face;
        for (int i = 0; i < values.length; i++) {
            double fourier = (double) i / STEPS_PER_UNIT;
            values[i] = face ? sealedFace(fourier) : mean(fourier);
        }
    }

    /** Read off, for sums over very many phases. */
    double at(double fourier) {
        if (fourier >= LONG) {
            return full(fourier);
        } else if (!face && fourier < SHORT) {
            return mean(fourier);
        }
        double place = fourier * STEPS_PER_UNIT;
        int index = (int) place;
        return values[index] + (values[index + 1] - values[index]) * (place - index);
    }

    private double full(double fourier) {
        double first = fourier >= FULL ? 0 : Math.exp(-Math.PI * Math.PI * fourier / 4);
        return 1 - (face ? 4 / Math.PI : 8 / (Math.PI * Math.PI)) * first;
    }

    static double sealedFace(double fourier) {
        if (fourier < UNREACHED) {
            return 0;
        }
        double sum = 0;
        double term = 1;
        for (int n = 0; Math.abs(term) > LEAST_TERM; n++) {
            double odd = 2 * n + 1;
            term = (n % 2 == 0 ? 1 : -1) / odd * Math.exp(-odd * odd * Math.PI * Math.PI * fourier / 4);
            sum += term;
        }
        return 1 - 4 / Math.PI * sum;
    }

    static double mean(double fourier) {
        if (fourier < SHORT) {
            return 2 * Math.sqrt(fourier / Math.PI);
        }
        double sum = 0;
        double term = 1;
        for (int n = 0; term > LEAST_TERM; n++) {
            double odd = 2 * n + 1;
            term = Math.exp(-odd * odd * Math.PI * Math.PI * fourier / 4) / (odd * odd);
            sum += term;
        }
        return 1 - 8 / (Math.PI * Math.PI) * sum;
    }
}
