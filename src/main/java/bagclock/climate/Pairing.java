package bagclock.climate;

import bagclock.climate.Series.Sample;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.core.quantity.Celsius;
import bagclock.logfile.Channel.Kind;
import bagclock.logfile.LogReport.Span;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts temperatures and humidities of two files together, by time. Each time of either file gives a reading: with the
 * value that the other file has for that time, else with the harsher of the values before and after it. Where those are
 * too far apart, or one is missing, the sample stays alone and gives no reading; but as long as the reading before it
 * holds, the next reading is no milder than it, so that no peak is lost.
 */
final class Pairing {
    private static final int MOST_SPELLS = 50;

    private final HumidityOf humidity;
    private final long holdMs;
    private final RoomSamples.Taker taker;
    private final List<Spell> spells = new ArrayList<>();
    private Optional<Pair> waiting = Optional.empty();
    private Optional<Spell> temperatures = Optional.empty();
    private Optional<Spell> seconds = Optional.empty();
    private double warmestAlone = Double.NEGATIVE_INFINITY;
    private double wettestAlone = Double.NEGATIVE_INFINITY;
    private long firstMs;
    private long paired;
    private long temperaturesAlone;
    private long humiditiesAlone;

    /**
     * Samples on end that stayed alone.
     *
     * @param kind what was measured
     */
    record Spell(Kind kind, Instant from, Instant to, long samples) {}

    /**
     * What came of it.
     *
     * @param spells the first of them
     * @param span of the readings; empty if there is none
     */
    record Found(long paired, long temperaturesAlone, long humiditiesAlone, List<Spell> spells, Optional<Span> span) {
        /** Keeps its own copy. */
        Found {
            spells = List.copyOf(spells);
        }
    }

    /** Both values of one time; the humidity as it was measured, and the temperature that it belongs to. */
    private record Pair(long line, long atMs, double warmest, double coldest, double measured) {}

    /** For how long a reading holds is a rule of the site. */
    Pairing(HumidityOf humidity, Duration hold, RoomSamples.Taker taker) {
        this.humidity = humidity;
        this.holdMs = hold.toMillis();
        this.taker = taker;
    }

    Found of(Series temperatures, Series seconds) {
        int temperature = 0;
        int second = 0;
        long atMs = Math.min(temperatures.atMs(0), seconds.atMs(0));
        while (atMs < Long.MAX_VALUE) {
            boolean hasTemperature = temperatures.atMs(temperature) == atMs;
            boolean hasSecond = seconds.atMs(second) == atMs;
            Optional<Sample> celsius = temperatures.around(temperature, atMs);
            Optional<Sample> measured = seconds.around(second, atMs);
            boolean areBoth = celsius.isPresent() && measured.isPresent();
            if (areBoth && isPossible(celsius.get(), measured.get())) {
                pair(hasTemperature ? celsius.get().line() : 0, atMs, celsius.get(), measured.get());
            } else {
                if (hasTemperature) {
                    temperatureAlone(celsius.orElseThrow());
                }
                if (hasSecond) {
                    secondAlone(measured.orElseThrow(), !areBoth);
                }
            }
            temperature += hasTemperature ? 1 : 0;
            second += hasSecond ? 1 : 0;
            atMs = Math.min(temperatures.atMs(temperature), seconds.atMs(second));
        }
        return end();
    }

    private boolean isPossible(Sample celsius, Sample measured) {
        return humidity.isPossible(celsius.highest(), measured.highest());
    }

    private void pair(long line, long atMs, Sample celsius, Sample measured) {
        firstMs = paired == 0 ? atMs : firstMs;
        paired++;
        endSpells();
        waiting.ifPresent(this::take);
        waiting = Optional.of(noMilder(new Pair(line, atMs, celsius.highest(), celsius.lowest(), measured.highest())));
    }

    private Pair noMilder(Pair pair) {
        Pair harsher = new Pair(
                pair.line(),
                pair.atMs(),
                Math.max(pair.warmest(), warmestAlone),
                pair.coldest(),
                Math.max(pair.measured(), wettestAlone));
        warmestAlone = Double.NEGATIVE_INFINITY;
        wettestAlone = Double.NEGATIVE_INFINITY;
        return harsher;
    }

    private void take(Pair pair) {
        Air air = new Air(new Celsius(pair.warmest()), humidity.at(pair.coldest(), pair.measured()));
        taker.take(pair.line(), new Reading(Instant.ofEpochMilli(pair.atMs()), air));
    }

    private boolean isHeld(Sample sample) {
        return waiting.filter(pair -> sample.atMs() - pair.atMs() <= holdMs).isPresent();
    }

    private void temperatureAlone(Sample sample) {
        temperatures = Optional.of(longer(temperatures, Kind.TEMPERATURE, sample));
        temperaturesAlone++;
        warmestAlone = isHeld(sample) ? Math.max(warmestAlone, sample.highest()) : warmestAlone;
    }

    /** A dew point above the temperature of its time is no value, so it makes nothing wetter. */
    private void secondAlone(Sample sample, boolean isValue) {
        seconds = Optional.of(longer(seconds, humidity.kind(), sample));
        humiditiesAlone++;
        wettestAlone = isValue && isHeld(sample) ? Math.max(wettestAlone, sample.highest()) : wettestAlone;
    }

    private static Spell longer(Optional<Spell> before, Kind kind, Sample sample) {
        Instant at = Instant.ofEpochMilli(sample.atMs());
        return before.map(spell -> new Spell(kind, spell.from(), at, spell.samples() + 1))
                .orElse(new Spell(kind, at, at, 1));
    }

    private void endSpells() {
        Stream.of(temperatures, seconds).flatMap(Optional::stream).forEach(spell -> {
            if (spells.size() < MOST_SPELLS) {
                spells.add(spell);
            }
        });
        temperatures = Optional.empty();
        seconds = Optional.empty();
    }

    private Found end() {
        endSpells();
        waiting.map(this::noMilder).ifPresent(this::take);
        Optional<Span> span =
                waiting.map(last -> new Span(Instant.ofEpochMilli(firstMs), Instant.ofEpochMilli(last.atMs())));
        return new Found(paired, temperaturesAlone, humiditiesAlone, spells, span);
    }
}
