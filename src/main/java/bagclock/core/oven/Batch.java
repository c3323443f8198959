package bagclock.core.oven;

/** Lots that go into an oven together, without a time. Immutable. */
public final class Batch {
    private final int temperature;
    private final int[] lots;
    private final boolean isOpened;
    private final int load;
    private final int least;
    private final int most;
    private final int release;

    private Batch(Problem problem, int oven, int temperature, int[] lots, boolean isOpened) {
        this.temperature = temperature;
        this.lots = lots;
        this.isOpened = isOpened;
        int sum = 0;
        int longest = 0;
        int shortest = Problem.NEVER;
        int latest = 0;
        for (int lot : lots) {
            Problem.Piece piece = problem.lots()[lot];
            sum += piece.positions();
            int needs = piece.least()[oven][temperature];
            longest = needs == Problem.NO ? Problem.NEVER : Math.max(longest, needs);
            shortest = Math.min(shortest, piece.most()[oven][temperature]);
            latest = Math.max(latest, piece.release());
        }
        this.load = sum;
        this.least = longest;
        this.most = shortest;
        this.release = latest;
    }

    /** Lots by index, at a temperature by index, in an oven by index. */
    public static Batch of(Problem problem, int oven, int temperature, int... lots) {
        return new Batch(problem, oven, temperature, lots.clone(), false);
    }

    /** Whether it may be so: all lots can, there is room, and none stays too long because of another. */
    boolean isSound(Problem problem, int oven) {
        return lots.length > 0
                && load <= problem.ovens()[oven].capacity()
                && least < Problem.NEVER
                && (isOpened || least <= most);
    }

    Batch with(Problem problem, int oven, int lot) {
        int[] more = new int[lots.length + 1];
        System.arraycopy(lots, 0, more, 0, lots.length);
        more[lots.length] = lot;
        return new Batch(problem, oven, temperature, more, isOpened);
    }

    Batch without(Problem problem, int oven, int lot) {
        int[] fewer = new int[lots.length - 1];
        int at = 0;
        for (int each : lots) {
            if (each != lot) {
                fewer[at++] = each;
            }
        }
        return new Batch(problem, oven, temperature, fewer, isOpened && fewer.length > 1);
    }

    /** The same lots elsewhere. */
    Batch moved(Problem problem, int oven, int toTemperature) {
        return new Batch(problem, oven, toTemperature, lots, isOpened);
    }

    /** With its door opened for lots that leave early or join late, or not any more. */
    Batch opened(Problem problem, int oven, boolean yes) {
        return new Batch(problem, oven, temperature, lots, yes);
    }

    /** Index of its temperature. */
    public int temperature() {
        return temperature;
    }

    /** Its lots by index. */
    public int[] lots() {
        return lots.clone();
    }

    int size() {
        return lots.length;
    }

    int lot(int at) {
        return lots[at];
    }

    boolean isOpened() {
        return isOpened;
    }

    int load() {
        return load;
    }

    /** Minutes at temperature that the longest of its lots needs. */
    int least() {
        return least;
    }

    /** Minutes at temperature that the weakest of its lots bears. */
    int most() {
        return most;
    }

    /** Minute from which all of its lots can go in. */
    int release() {
        return release;
    }
}
