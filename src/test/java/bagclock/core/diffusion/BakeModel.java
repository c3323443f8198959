package bagclock.core.diffusion;

import bagclock.core.quantity.Celsius;
import java.util.Map;

/**
 * The model against table 4-1: the sealed face dries to a level's own dryness (percent relative humidity, fitted to the
 * longer column), from saturated at 30 C / 85 %RH for more than 72 h over, from floor life and 72 h at 30/60 for the
 * other. The depth is fitted for up to 1.4 mm and to 2.0 mm; above, it grows with the thickness, as Fick's law has it.
 */
final class BakeModel {
    private static final Map<String, Double> DRY_PERCENT =
            Map.of("2", 29.0, "2a", 22.0, "3", 13.0, "4", 8.0, "5", 5.5, "5a", 2.2);
    private static final Map<String, Double> DEPTH_MM =
            Map.of("<=1.4 mm", 0.61, ">1.4 to 2.0 mm", 1.10, ">2.0 to 4.5 mm", 1.10 * 4.5 / 2.0);
    private static final double SATURATED_PERCENT = 85;
    private static final double S_PER_HOUR = 3600;
    private static final double LONGEST_TAU = 200;

    private BakeModel() {}

    /** Hours of the longer column. */
    static double saturatedHours(String thickness, String level, double celsius) {
        double depth = DEPTH_MM.get(thickness);
        double fourier = FloorLifeFit.fourier(1 - DRY_PERCENT.get(level) / SATURATED_PERCENT);
        return fourier * depth * depth / Diffusivity.LOW.inOven(new Celsius(celsius)) / S_PER_HOUR;
    }

    /** Hours of the shorter column, after this many hours at 30 C / 60 %RH. */
    static double exposedHours(String thickness, String level, double celsius, double openHours) {
        double depth = DEPTH_MM.get(thickness);
        double perTau = 1 / (depth * depth);
        double open = Diffusivity.LOW.inAir(new Celsius(30)) * openHours * S_PER_HOUR;
        double inOven = Diffusivity.LOW.inOven(new Celsius(celsius));
        double low = 0;
        double high = LONGEST_TAU;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            double left = 60 * (Response.FACE.at((open + middle) * perTau) - Response.FACE.at(middle * perTau));
            boolean dry = left <= DRY_PERCENT.get(level) && middle > 0.1 * depth * depth;
            if (dry) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high / inOven / S_PER_HOUR;
    }
}
