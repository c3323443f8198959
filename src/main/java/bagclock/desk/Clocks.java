package bagclock.desk;

import bagclock.core.exposure.ClockReading;
import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Share;
import bagclock.core.exposure.UnknownHistory;
import bagclock.core.exposure.Whereabouts;
import bagclock.core.exposure.Zone;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Cited;
import bagclock.core.standard.Level;
import bagclock.core.standard.Life;
import bagclock.core.standard.Rating;
import bagclock.core.standard.Standard;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Works out the clock rows of an item: one for each of its ratings. */
final class Clocks {
    private static final int SCALE = 6;

    private final Standard standard;

    Clocks(Standard standard) {
        this.standard = standard;
    }

    List<ClockRow> rows(String tag, PartHistory history) {
        List<Rating> ratings = history.part().ratings();
        int counting = strictest(ratings);
        List<ClockRow> rows = new ArrayList<>();
        for (int i = 0; i < ratings.size(); i++) {
            FoldedHistory folded = FoldedHistory.of(standard, history, ratings.get(i));
            rows.add(row(tag, i, i == counting, ratings.get(i), folded, history.moment()));
        }
        return rows;
    }

    /** Unknown before known, then the highest level, then the lowest peak: as an answer without a heat takes it. */
    private static int strictest(List<Rating> ratings) {
        Rating strictest = ratings.stream()
                .max(Comparator.comparingInt((Rating rating) ->
                                rating.level().map(Level::ordinal).orElse(Integer.MAX_VALUE))
                        .thenComparing(
                                rating -> rating.peak().map(Celsius::degrees).orElse(0.0), Comparator.reverseOrder()))
                .orElseThrow();
        return ratings.indexOf(strictest);
    }

    private static ClockRow row(
            String tag, int index, boolean counting, Rating rating, FoldedHistory folded, Instant moment) {
        ClockReading reading = folded.reading();
        Share used = reading.used();
        return new ClockRow(
                tag,
                index,
                counting,
                rating.level().map(Level::code).orElse(""),
                rating.peak().map(Celsius::degrees).orElse(null),
                reading.state().name(),
                zone(folded.whereabouts()),
                used.numerator() + "/" + used.denominator(),
                total(reading),
                usedHours(reading),
                moment,
                endsAt(folded));
    }

    private static @Nullable String zone(Whereabouts where) {
        if (where.place() instanceof Place.Floor floor) {
            return name(floor.zone());
        } else if (where.place() instanceof Place.Cabinet cabinet) {
            return name(cabinet.log());
        }
        return where.place() instanceof Place.Bag bag && !bag.dryPack() ? name(bag.zone()) : null;
    }

    private static @Nullable String name(Optional<Zone> zone) {
        return zone.map(Zone::name).orElse(null);
    }

    private static @Nullable BigDecimal total(ClockReading reading) {
        return limited(reading)
                .map(life -> new BigDecimal(BigInteger.valueOf(life.numeratorMs()))
                        .divide(BigDecimal.valueOf(3_600_000L * life.denominator()), SCALE, RoundingMode.DOWN))
                .orElse(null);
    }

    private static @Nullable BigDecimal usedHours(ClockReading reading) {
        return limited(reading)
                .map(life -> reading.used()
                        .hoursOf(life)
                        .round(MathContext.DECIMAL64)
                        .setScale(SCALE, RoundingMode.UP))
                .orElse(null);
    }

    private static Optional<Life> limited(ClockReading reading) {
        return reading.total().map(Cited::value).filter(life -> !life.isUnlimited());
    }

    /** The first moment from which a heat is barred by time; with unknown history the moment it became so. */
    static @Nullable Instant endsAt(FoldedHistory folded) {
        ClockReading reading = folded.reading();
        return Stream.of(reading.unknown().map(UnknownHistory::at), folded.endsAt(), reading.timerEnd())
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }
}
