package bagclock.desk;

import bagclock.core.exposure.ClockReading;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.FloorRate;
import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Share;
import bagclock.core.exposure.UnknownHistory;
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
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Works out the clock rows of an item by replay: one for each of its ratings. */
final class Clocks {
    private static final int HOURS_SCALE = 6;

    private final Standard standard;
    private final PartHistory history;
    private final Function<Zone, Optional<ZoneAir>> zones;

    /**
     * For one item.
     *
     * @param zones how a zone stands at the moment; empty for one without readings or without a worst case
     */
    Clocks(Standard standard, PartHistory history, Function<Zone, Optional<ZoneAir>> zones) {
        this.standard = standard;
        this.history = history;
        this.zones = zones;
    }

    /** A row, and the lives that its key stands for. */
    record Worked(ClockRow row, Optional<CellLives> lives) {}

    List<Worked> rows(String tag) {
        List<Rating> ratings = history.part().ratings();
        int counting = strictest(ratings);
        List<Worked> rows = new ArrayList<>();
        for (int i = 0; i < ratings.size(); i++) {
            rows.add(row(tag, i, i == counting));
        }
        return rows;
    }

    /** The row of the strictest rating. */
    ClockRow counting() {
        return row("", strictest(history.part().ratings()), true).row();
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

    private Worked row(String tag, int index, boolean counting) {
        Rating rating = history.part().ratings().get(index);
        FoldedHistory folded = FoldedHistory.of(standard, history, rating);
        ClockReading reading = folded.reading();
        Optional<Zone> zone = Stay.zoneOf(folded.whereabouts());
        Optional<Summed> summed = summed(folded, rating, zone);
        Optional<Instant> ends = summed.isPresent() ? reading.timerEnd() : endsAt(folded);
        ClockRow row = new ClockRow(
                tag,
                index,
                counting,
                rating.level().map(Level::code).orElse(""),
                rating.peak().map(Celsius::degrees).orElse(null),
                reading.state().name(),
                zone.map(Zone::name).orElse(null),
                summed.isEmpty() && mayFollow(reading, rating, zone),
                reading.used().numerator() + "/" + reading.used().denominator(),
                total(reading),
                usedHours(reading),
                reading.spentAt().orElseGet(this::lastEvent),
                history.moment(),
                validUntil(folded, zone).orElse(null),
                ends.map(Instant::toEpochMilli).orElse(null),
                summed.map(s -> s.lives().key()).orElse(null),
                summed.map(Summed::endSum).orElse(null));
        return new Worked(row, summed.map(Summed::lives));
    }

    private record Summed(CellLives lives, BigDecimal endSum) {}

    /** Inside its life, on the floor of a logged zone, each moment counting by its own air alone. */
    private Optional<Summed> summed(FoldedHistory folded, Rating rating, Optional<Zone> zone) {
        ClockReading reading = folded.reading();
        boolean onFloor = !(folded.whereabouts().place() instanceof Place.Cabinet);
        boolean simple = onFloor && reading.inside() && reading.unknown().isEmpty();
        Optional<Level> level = rating.level().filter(Level::hasFloorLife);
        if (!simple
                || zone.isEmpty()
                || level.isEmpty()
                || !history.rules().excursion().isZero()) {
            return Optional.empty();
        }
        FloorRate rate = FloorRate.of(standard, history.part(), level.get(), history.rules());
        CellLives lives = CellLives.of(rate);
        return zones.apply(zone.get())
                .filter(air -> rate.isSteady() && air.isCovered(lives))
                .map(air -> new Summed(lives, endSum(reading.used(), air.sumAt(history.moment(), lives))));
    }

    private static BigDecimal endSum(Share used, BigDecimal sumNow) {
        BigInteger left = used.denominator().subtract(used.numerator());
        return sumNow.add(new BigDecimal(left)
                .divide(new BigDecimal(used.denominator()), CellLives.SCALE, RoundingMode.HALF_EVEN));
    }

    /** Unknown history, a life that is over, level 1 and unknown levels wait for no later reading. */
    private boolean mayFollow(ClockReading reading, Rating rating, Optional<Zone> zone) {
        boolean logged = zone.filter(history.climate().zones()::containsKey).isPresent();
        boolean runs = rating.level().filter(level -> level != Level.L1).isPresent();
        return logged
                && runs
                && reading.unknown().isEmpty()
                && reading.spentAt().isEmpty();
    }

    private Instant lastEvent() {
        List<Event> events = history.timeline().events();
        return events.isEmpty()
                ? history.moment()
                : events.get(events.size() - 1).at();
    }

    /** A rest ends; a logged cabinet's last reading ceases to hold. */
    private Optional<Instant> validUntil(FoldedHistory folded, Optional<Zone> zone) {
        Optional<Instant> held = folded.whereabouts().place() instanceof Place.Cabinet
                ? zone.flatMap(zones).map(air -> air.last().at().plus(air.gap()))
                : Optional.empty();
        return Stream.of(held, folded.reading().restEnd())
                .flatMap(Optional::stream)
                .filter(moment -> !moment.isBefore(history.moment()))
                .min(Comparator.naturalOrder());
    }

    private static @Nullable BigDecimal total(ClockReading reading) {
        return limited(reading)
                .map(life -> new BigDecimal(BigInteger.valueOf(life.numeratorMs()))
                        .divide(BigDecimal.valueOf(3_600_000L * life.denominator()), HOURS_SCALE, RoundingMode.DOWN))
                .orElse(null);
    }

    private static @Nullable BigDecimal usedHours(ClockReading reading) {
        return limited(reading)
                .map(life -> reading.used()
                        .hoursOf(life)
                        .round(MathContext.DECIMAL64)
                        .setScale(HOURS_SCALE, RoundingMode.UP))
                .orElse(null);
    }

    private static Optional<Life> limited(ClockReading reading) {
        return reading.total().map(Cited::value).filter(life -> !life.isUnlimited());
    }

    /**
     * The first moment from which a heat is barred by time; with unknown history the moment it became so. A bake under
     * way is not held against the life, as long as nobody knows whether it counts.
     */
    private static Optional<Instant> endsAt(FoldedHistory folded) {
        ClockReading reading = folded.reading();
        Optional<Instant> life = folded.endsAt();
        if (folded.whereabouts().place() instanceof Place.Oven oven) {
            life = reading.spentAt().filter(spent -> !spent.isAfter(oven.bake().at()));
        }
        return Stream.of(reading.unknown().map(UnknownHistory::at), life, reading.timerEnd())
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder());
    }
}
