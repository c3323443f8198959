package bagclock.climate;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.logfile.Channel.Kind;
import bagclock.logfile.LogFile;
import bagclock.logfile.SampleTaker;
import bagclock.readings.LoggerProfile.BelowZero;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Makes readings of a room from the samples of a file: temperature with humidity, or with a dew or frost point in its
 * place. A file that writes changes only holds a value until the next of its sensor, or until it says that there is none, for
 * an hour at most.
 */
final class RoomSamples implements SampleTaker {
    /** A sensor that was silent for longer may be dead. */
    static final Duration LONGEST_HOLD = Duration.ofHours(1);

    private static final double LOST = Double.NEGATIVE_INFINITY;

    private final Channels channels;
    private final HumidityOf humidityOf;
    private final boolean changesOnly;
    private final Taker taker;
    private final List<Change> changes = new ArrayList<>();
    private long incomplete;
    private long belowZero;

    /** Takes the readings, as they come. */
    interface Taker {
        void take(long line, Reading reading);
    }

    /** Which values of a sample count; the second kind is humidity, dew point or frost point. */
    record Channels(int temperature, int humidity, Kind humidityKind) {}

    private record Change(long line, long atMs, double celsius, double second) {
        /** Whether a sensor has no value from here on. */
        boolean isLoss() {
            return celsius == LOST || second == LOST;
        }
    }

    RoomSamples(LogFile file, Channels channels, BelowZero below, Taker taker) {
        this.channels = channels;
        this.humidityOf = HumidityOf.of(channels.humidityKind(), below);
        this.changesOnly = file.layout().table().isOneValueALine();
        this.taker = taker;
    }

    /** The channels that were named, else the first of each kind; empty if one is missing. */
    static Optional<Channels> channels(LogFile file) {
        int temperature = first(file, file.answers().names().temperature(), Kind.TEMPERATURE);
        for (Kind kind : List.of(Kind.HUMIDITY, Kind.DEW_POINT, Kind.FROST_POINT)) {
            int second = first(file, file.answers().names().humidity(), kind);
            if (temperature >= 0 && second >= 0) {
                return Optional.of(new Channels(temperature, second, kind));
            }
        }
        return Optional.empty();
    }

    private static int first(LogFile file, Optional<String> name, Kind kind) {
        var all = file.layout().channels();
        for (int i = 0; i < all.size(); i++) {
            boolean isMeant = name.map(all.get(i).name()::equals).orElse(true);
            if (isMeant && file.kind(all.get(i)).filter(kind::equals).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    /** Samples without one of both values. */
    long incomplete() {
        return incomplete;
    }

    /** Dew points below 0 C of which nobody said whether they are frost points. */
    long belowZero() {
        return belowZero;
    }

    @Override
    public void take(long line, long atMs, double[] values) {
        double celsius = values[channels.temperature()];
        double second = values[channels.humidity()];
        if (changesOnly) {
            changes.add(new Change(line, atMs, celsius, second));
        } else {
            pair(line, atMs, celsius, second);
        }
    }

    @Override
    public void lost(long atMs, int channel) {
        double celsius = channel == channels.temperature() ? LOST : Double.NaN;
        double second = channel == channels.humidity() ? LOST : Double.NaN;
        changes.add(new Change(0, atMs, celsius, second));
    }

    /** After the last sample. */
    void finish() {
        changes.sort(Comparator.comparingLong(Change::atMs));
        Change celsius = new Change(0, Long.MIN_VALUE / 2, Double.NaN, Double.NaN);
        Change second = celsius;
        for (Change change : changes) {
            celsius = Double.isNaN(change.celsius()) ? celsius : change;
            second = Double.isNaN(change.second()) ? second : change;
            long oldest = Math.min(celsius.atMs(), second.atMs());
            boolean holds = change.atMs() - oldest <= LONGEST_HOLD.toMillis() && !celsius.isLoss() && !second.isLoss();
            if (!change.isLoss()) {
                pair(change.line(), change.atMs(), holds ? celsius.celsius() : Double.NaN, second.second());
            }
        }
        changes.clear();
    }

    private void pair(long line, long atMs, double celsius, double second) {
        if (Double.isNaN(celsius) || Double.isNaN(second)) {
            incomplete++;
            return;
        }
        belowZero += humidityOf.isBelowZero(second) ? 1 : 0;
        Optional<RelativeHumidity> humidity = humidityOf.of(celsius, second);
        if (humidity.isPresent()) {
            Air air = new Air(new Celsius(celsius), humidity.get());
            taker.take(line, new Reading(Instant.ofEpochMilli(atMs), air));
        } else {
            incomplete++;
        }
    }
}
