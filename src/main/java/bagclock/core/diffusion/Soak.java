package bagclock.core.diffusion;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.Arrays;

/**
 * What the open face of a slab went through since it was dry, phase by phase, and what that left inside. By
 * superposition: the time of diffusion is tau = SUM D dt, and
 *
 * <p>content = SUM (s(i) - s(i-1)) F((tau - tau(i)) / h2)
 *
 * <p>with s(i) the level at the face in phase i and F the {@link Response}. Exact for one D at a time; no grid.
 */
public final class Soak {
    private final Slab slab;
    /** Start of each phase: milliseconds since the first, time of diffusion for the low D (mm2), level (percent). */
    private final long[] startMs;

    private final double[] startTau;
    private final double[] level;
    private final long endMs;
    private final double endTau;

    private Soak(Slab slab, long[] startMs, double[] startTau, double[] level, long endMs, double endTau) {
        this.slab = slab;
        this.startMs = startMs;
        this.startTau = startTau;
        this.level = level;
        this.endMs = endMs;
        this.endTau = endTau;
    }

    /** Collects phases in the order of time. Not for several threads. */
    public static final class Phases {
        private static final double MS_PER_S = 1000;
        private static final int USUAL_SIZE = 64;

        private final Slab slab;
        private long[] startMs;
        private double[] startTau;
        private double[] level;
        private int size;
        private long ms;
        private double tau;
        private double lastD;

        /** Nearby phases mostly have the same temperature, and exponentials are what costs. */
        private double sameDegrees = Double.NaN;

        private double sameD;
        private double sameSurface;

        /** A dry slab. */
        public Phases(Slab slab) {
            this(slab, USUAL_SIZE);
        }

        private Phases(Slab slab, int capacity) {
            this.slab = slab;
            this.startMs = new long[capacity];
            this.startTau = new double[capacity];
            this.level = new double[capacity];
        }

        /** In air: room, cabinet or bag. Refuses a negative time with {@link IllegalArgumentException}. */
        public Phases air(Duration length, Celsius temperature, RelativeHumidity humidity) {
            if (temperature.degrees() != sameDegrees) {
                sameDegrees = temperature.degrees();
                sameD = Diffusivity.LOW.inAir(temperature);
                sameSurface = Diffusivity.surface(slab.surfaceEnergyEv(), temperature);
            }
            return add(length.toMillis(), sameD, humidity.percent() * sameSurface);
        }

        /** In an oven. Refuses as {@link #air} does. */
        public Phases oven(Duration length, Celsius temperature, RelativeHumidity humidity) {
            double surface = Diffusivity.surface(slab.surfaceEnergyEv(), temperature);
            return add(length.toMillis(), Diffusivity.LOW.inOven(temperature), humidity.percent() * surface);
        }

        private Phases add(long lengthMs, double lowD, double percent) {
            if (lengthMs < 0) {
                throw new IllegalArgumentException("a phase can't last " + lengthMs + " ms");
            }
            if (size == 0 || level[size - 1] != percent || lastD != lowD) {
                put(ms, tau, percent);
                lastD = lowD;
            }
            ms += lengthMs;
            tau += lowD * lengthMs / MS_PER_S;
            return this;
        }

        private void put(long fromMs, double fromTau, double percent) {
            if (size == level.length) {
                startMs = Arrays.copyOf(startMs, 2 * size);
                startTau = Arrays.copyOf(startTau, 2 * size);
                level = Arrays.copyOf(level, 2 * size);
            }
            startMs[size] = fromMs;
            startTau[size] = fromTau;
            level[size] = percent;
            size++;
        }

        /** What was collected so far. */
        public Soak soak() {
            return new Soak(
                    slab,
                    Arrays.copyOf(startMs, size),
                    Arrays.copyOf(startTau, size),
                    Arrays.copyOf(level, size),
                    ms,
                    tau);
        }
    }

    /** A dry slab kept in this air. */
    public static Soak in(Slab slab, Duration length, Celsius temperature, RelativeHumidity humidity) {
        return new Phases(slab).air(length, temperature, humidity).soak();
    }

    /** This one with one more phase in air. */
    public Soak then(Duration length, Celsius temperature, RelativeHumidity humidity) {
        int size = level.length;
        Phases phases = new Phases(slab, size + 1);
        for (int i = 0; i < size; i++) {
            phases.put(startMs[i], startTau[i], level[i]);
        }
        phases.ms = endMs;
        phases.tau = endTau;
        return phases.air(length, temperature, humidity).soak();
    }

    /**
     * The same for drawings: neighbours that together last no longer than this are put together at their mean level,
     * weighed by time of diffusion, so that nothing is lost.
     */
    public Soak coarse(Duration longest) {
        Phases phases = new Phases(slab);
        int first = 0;
        while (first < level.length) {
            int next = first + 1;
            while (next < level.length && startMs(next + 1) - startMs[first] <= longest.toMillis()) {
                next++;
            }
            phases.put(startMs[first], startTau[first], meanLevel(first, next));
            first = next;
        }
        phases.ms = endMs;
        phases.tau = endTau;
        return phases.soak();
    }

    private double meanLevel(int first, int next) {
        double sum = 0;
        for (int i = first; i < next; i++) {
            sum += level[i] * (startTau(i + 1) - startTau[i]);
        }
        double tau = startTau(next) - startTau[first];
        return tau > 0 ? sum / tau : level[next - 1];
    }

    private long startMs(int index) {
        return index < startMs.length ? startMs[index] : endMs;
    }

    private double startTau(int index) {
        return index < startTau.length ? startTau[index] : endTau;
    }

    /** How long it lasted. */
    public Duration length() {
        return Duration.ofMillis(endMs);
    }

    /** What is in the slab at the end. */
    public Content content(Diffusivity diffusivity) {
        return content(diffusivity, level.length, endTau);
    }

    /**
     * What was in the slab so long after the beginning.
     *
     * @param since 0 to {@link #length}; beyond it counts as the end
     */
    public Content contentAfter(Duration since, Diffusivity diffusivity) {
        long atMs = Math.min(since.toMillis(), endMs);
        int found = Arrays.binarySearch(startMs, atMs);
        int phases = found >= 0 ? lastAt(found) + 1 : -found - 1;
        if (phases == 0) {
            return new Content(0, 0);
        }
        int last = phases - 1;
        long lengthMs = startMs(phases) - startMs[last];
        double share = lengthMs == 0 ? 0 : (double) (atMs - startMs[last]) / lengthMs;
        return content(diffusivity, phases, startTau[last] + (startTau(phases) - startTau[last]) * share);
    }

    /** Phases of no length begin at the same time: the last of them counts. */
    private int lastAt(int found) {
        int last = found;
        while (last + 1 < startMs.length && startMs[last + 1] == startMs[found]) {
            last++;
        }
        return last;
    }

    private Content content(Diffusivity diffusivity, int phases, double atTau) {
        double depth = slab.depth().value().doubleValue();
        double perTau = diffusivity.timesLow() / (depth * depth);
        double mean = 0;
        double face = 0;
        for (int i = phases - 1; i >= 0; i--) {
            double fourier = (atTau - startTau[i]) * perTau;
            if (fourier >= Response.FULL) {
                mean += level[i];
                face += level[i];
                break;
            }
            double step = i == 0 ? level[0] : level[i] - level[i - 1];
            mean += step * Response.MEAN.at(fourier);
            face += step * Response.FACE.at(fourier);
        }
        return new Content(Math.max(0, mean), Math.max(0, face));
    }
}
