package bagclock.core.diffusion;

import bagclock.core.quantity.Celsius;

/**
 * How fast moisture moves: D = D0 exp(-Ea/kT). The true one lies between the two; both are run and the worse is shown.
 * In an oven both rise from their value at 30 C by the energy of baking.
 */
public enum Diffusivity {
    LOW(Constant.LOW_D0),
    HIGH(Constant.HIGH_D0);

    private static final double ZERO_C_IN_K = 273.15;
    private static final double REFERENCE_K = ZERO_C_IN_K + 30;

    private final Constant d0;

    Diffusivity(Constant d0) {
        this.d0 = d0;
    }

    /** In mm2/s, in air of this temperature. */
    double inAir(Celsius temperature) {
        return d0.value() * Math.exp(-perK(Constant.ABSORPTION) / kelvin(temperature));
    }

    /** In mm2/s, in an oven of this temperature. */
    double inOven(Celsius temperature) {
        return d0.value()
                * Math.exp(-perK(Constant.ABSORPTION) / REFERENCE_K)
                * Math.exp(perK(Constant.DESORPTION) * (1 / REFERENCE_K - 1 / kelvin(temperature)));
    }

    /** How many times as fast as the low one, at every temperature. */
    double timesLow() {
        return d0.value() / Constant.LOW_D0.value();
    }

    /** What a level at 30 C becomes at another temperature: exp(-Es/k (1/T - 1/303.15)). */
    static double surface(double energyEv, Celsius temperature) {
        return Math.exp(-energyEv / Constant.BOLTZMANN.value() * (1 / kelvin(temperature) - 1 / REFERENCE_K));
    }

    private static double perK(Constant energy) {
        return energy.value() / Constant.BOLTZMANN.value();
    }

    private static double kelvin(Celsius temperature) {
        return temperature.degrees() + ZERO_C_IN_K;
    }
}
