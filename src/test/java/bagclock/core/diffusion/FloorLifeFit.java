package bagclock.core.diffusion;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Cell;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Level;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import bagclock.core.standard.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The model against one row of table 7-1: one depth and one surface energy, fitted by least squares of the logarithm
 * over the cells from 20 %RH up. At or below 60 %RH limit and run both use the low diffusivity, above it both the high.
 */
record FloorLifeFit(String thickness, String level, double depthMm, double surfaceEv, List<Point> points) {
    static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    private static final Map<String, FloorLifeFit> FOUND = new ConcurrentHashMap<>();
    private static final double S_PER_DAY = 86_400;
    private static final double LEAST_TRIED_PERCENT = 20;
    private static final double LEAST_FOURIER = 0.02;

    /** One cell; no days where the table never ends. */
    record Point(double celsius, double percent, Optional<Double> tableDays, double modelDays, Status status) {
        boolean tried() {
            return percent >= LEAST_TRIED_PERCENT;
        }

        Optional<Double> ratio() {
            return tableDays.filter(days -> Double.isFinite(modelDays)).map(days -> modelDays / days);
        }
    }

    /** Searched once, since page and drawing show the same. */
    static FloorLifeFit of(String thickness, String level) {
        return FOUND.computeIfAbsent(thickness + level, row -> search(thickness, level));
    }

    private static FloorLifeFit search(String thickness, String level) {
        List<Cell> cells = cells(thickness, level);
        double best = Double.MAX_VALUE;
        FloorLifeFit found = at(cells, thickness, level, 0.2, 0);
        for (int h = 10; h <= 120 && reaches(h / 50.0, level); h++) {
            for (int es = -4; es <= 12; es++) {
                FloorLifeFit tried = at(cells, thickness, level, h / 50.0, es / 100.0);
                double squares = tried.squares();
                if (squares < best) {
                    best = squares;
                    found = tried;
                }
            }
        }
        return found;
    }

    /** A slab whose sealed face holds nothing worth reading off at the end of the life is too deep. */
    private static boolean reaches(double depth, String level) {
        return Diffusivity.LOW.inAir(new Celsius(30)) * lifeS(level) / (depth * depth) >= LEAST_FOURIER;
    }

    private static double lifeS(String level) {
        return STANDARD.floorLife(Level.parse(level).orElseThrow()).value().numeratorMs() / 1000.0;
    }

    private static List<Cell> cells(String thickness, String level) {
        return STANDARD.cells().stream()
                .filter(cell -> cell.table() == Table.DERATED_FLOOR_LIFE)
                .filter(cell -> cell.citation().row().equals(thickness + ", level " + level))
                .toList();
    }

    private static FloorLifeFit at(List<Cell> cells, String thickness, String level, double depth, double energy) {
        List<Point> points = new ArrayList<>();
        for (Cell cell : cells) {
            String[] column = cell.citation().column().split(" C, | %RH", -1);
            double celsius = Double.parseDouble(column[0]);
            double percent = Double.parseDouble(column[1]);
            Optional<Double> days =
                    cell.value().equals("unlimited") ? Optional.empty() : Optional.of(Double.parseDouble(cell.value()));
            double model = modelDays(depth, energy, lifeS(level), celsius, percent);
            points.add(new Point(celsius, percent, days, model, cell.citation().status()));
        }
        return new FloorLifeFit(thickness, level, depth, energy, points);
    }

    private static double modelDays(double depth, double energy, double lifeS, double celsius, double percent) {
        Diffusivity diffusivity = percent <= 60 ? Diffusivity.LOW : Diffusivity.HIGH;
        double limit = 60 * Response.FACE.at(diffusivity.inAir(new Celsius(30)) * lifeS / (depth * depth));
        double level = percent * Diffusivity.surface(energy, new Celsius(celsius));
        double fourier = fourier(limit / level);
        return fourier * depth * depth / diffusivity.inAir(new Celsius(celsius)) / S_PER_DAY;
    }

    /** When the sealed face reaches this share of the level outside; infinite if never. */
    static double fourier(double share) {
        if (share >= 1) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        double high = 14;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (Response.FACE.at(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** A cell that ends in only one of both counts as a factor of four. */
    private double squares() {
        double sum = 0;
        for (Point point : points) {
            boolean ends = Double.isFinite(point.modelDays());
            if (point.tried() && (ends || point.tableDays().isPresent())) {
                double off = point.ratio().map(Math::log).orElse(Math.log(4));
                sum += off * off;
            }
        }
        return sum;
    }

    /** Root of the mean square of the logarithm, over the tried cells that end in both. */
    double rms() {
        return Math.sqrt(points.stream()
                .filter(Point::tried)
                .flatMap(point -> point.ratio().stream())
                .mapToDouble(ratio -> Math.log(ratio) * Math.log(ratio))
                .average()
                .orElse(0));
    }

    /** How many cells were read in a public source. */
    long seen() {
        return points.stream().filter(point -> point.status() == Status.SEEN).count();
    }
}
