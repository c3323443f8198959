package bagclock.climate;

import bagclock.readings.HourBand;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Puts readings, or hours of readings, together into fewer bands of lowest and highest values. */
final class Bands {
    private Bands() {}

    /**
     * One band for each of so many equal pieces of a span, and another wherever a gap lies within a piece.
     *
     * @param bands ascending
     * @param holdsFor a longer time without readings is a gap
     */
    static List<HourBand> atMost(int pieces, List<HourBand> bands, Instant from, Instant to, Duration holdsFor) {
        if (bands.size() <= pieces) {
            return bands;
        }
        double pieceMs = Math.max(1, (double) Duration.between(from, to).toMillis() / pieces);
        return merge(bands, holdsFor, band ->
                (long) (Duration.between(from, band.firstAt()).toMillis() / pieceMs));
    }

    /** One band for each key; a gap begins another. */
    static <K> List<HourBand> merge(List<HourBand> bands, Duration holdsFor, Function<HourBand, K> key) {
        List<HourBand> merged = new ArrayList<>();
        for (HourBand band : bands) {
            HourBand last = merged.isEmpty() ? band : merged.get(merged.size() - 1);
            boolean together =
                    !merged.isEmpty() && key.apply(last).equals(key.apply(band)) && !isGap(last, band, holdsFor);
            if (together) {
                merged.set(merged.size() - 1, last.and(band));
            } else {
                merged.add(band);
            }
        }
        return merged;
    }

    static boolean isGap(HourBand one, HourBand next, Duration holdsFor) {
        return Duration.between(one.lastAt(), next.firstAt()).compareTo(holdsFor) > 0;
    }
}
