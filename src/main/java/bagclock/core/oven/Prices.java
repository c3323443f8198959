package bagclock.core.oven;

/**
 * One number for an oven's runs while searching: lateness leads, minutes of ovens and runs count little, and what is as
 * good ends early. The stages are kept apart where plans are compared.
 */
final class Prices {
    private static final double OVEN_MINUTE = 0.02;
    private static final double RUN = 1;
    private static final double END = 1e-6;

    private Prices() {}

    /** Of the oven that the decoder placed last. */
    static double of(Decoder decoder, int runs) {
        return decoder.late() + OVEN_MINUTE * decoder.minutes() + RUN * runs + END * decoder.ends();
    }
}
