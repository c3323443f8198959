package bagclock.core.proof;

import bagclock.core.proof.Trace.Sample;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the chart of an oven proves of a run. Time counts while every probe is in band at both ends of each step between
 * samples, so the coldest spot decides; a step longer than {@link ProbeProof#LONGEST_STEP} never counts. A load that fell
 * back near room temperature starts again, and so does one that nobody watched for more than an hour: then the longest
 * stretch counts, for hours of two bakes never add. Where dryness is asked and the chart holds humidity, only dry time
 * counts.
 *
 * @param probes what each probe shows, in the order of the chart
 * @param humidity what the humidity shows where it is asked; empty if it is not, or not in the chart
 * @param warm spells of every probe in band whatever the humidity, ascending
 * @param counted spells that count, ascending; each lies in one of {@code warm}
 */
public record ChartProof(
        Asked asked, List<ProbeProof> probes, Optional<ProbeProof> humidity, List<Spell> warm, List<Spell> counted) {
    /** At or below this a load is back near room temperature (C). */
    public static final double NEAR_ROOM_C = 30;

    /** Without samples for longer a load may have fallen back to room temperature. */
    public static final Duration UNWATCHED = Duration.ofHours(1);

    /** Keeps its own copy. */
    public ChartProof {
        probes = List.copyOf(probes);
        warm = List.copyOf(warm);
        counted = List.copyOf(counted);
    }

    /** When a run went in and when it came out. */
    public record Stay(Instant from, Instant to) {}

    /** Weighs a chart; what lies outside the stay is left out. */
    public static ChartProof of(Chart chart, Asked asked, Stay stay) {
        List<ProbeProof> probes = chart.temperatures().stream()
                .map(trace -> trace.within(stay.from(), stay.to()))
                .map(trace -> ProbeProof.of(trace, asked.temperature(), Excursion.Kind.ABOVE))
                .toList();
        Optional<ProbeProof> humidity = asked.maxHumidity()
                .flatMap(most -> chart.humidity()
                        .map(trace -> trace.within(stay.from(), stay.to()))
                        .map(trace -> ProbeProof.of(trace, new Band(0, most.percent()), Excursion.Kind.HUMID)));
        List<Spell> warm =
                probes.stream().map(ProbeProof::inBand).reduce(Spell::both).orElse(List.of());
        List<Spell> counted =
                humidity.map(dry -> Spell.both(warm, dry.inBand())).orElse(warm);
        List<Spell> pieces = pieces(probes, stay);
        return new ChartProof(asked, probes, humidity, longest(warm, pieces), longest(counted, pieces));
    }

    private static List<Spell> longest(List<Spell> spells, List<Spell> pieces) {
        return pieces.stream()
                .map(piece -> Spell.between(spells, piece.from(), piece.to()))
                .max(Comparator.comparing(Spell::total))
                .orElse(List.of());
    }

    /** Time in band whatever the humidity. */
    public Duration warmTime() {
        return Spell.total(warm);
    }

    /** Time in band that counts. */
    public Duration time() {
        return Spell.total(counted);
    }

    /** The stay, cut where the load was near room temperature or may have been. */
    private static List<Spell> pieces(List<ProbeProof> probes, Stay stay) {
        List<Instant> cuts = new ArrayList<>();
        for (ProbeProof probe : probes) {
            probe.trace().samples().stream()
                    .filter(sample -> sample.value() <= NEAR_ROOM_C)
                    .map(Sample::at)
                    .forEach(cuts::add);
            probe.gaps().stream()
                    .filter(gap -> gap.length().compareTo(UNWATCHED) > 0)
                    .map(Spell::from)
                    .forEach(cuts::add);
        }
        cuts.add(stay.to());
        cuts.sort(Comparator.naturalOrder());
        List<Spell> pieces = new ArrayList<>();
        Instant from = stay.from();
        for (Instant cut : cuts) {
            pieces.add(new Spell(from, cut));
            from = cut;
        }
        return pieces;
    }

    /** The probe with the least time in band; empty without probes. */
    public Optional<ProbeProof> coldest() {
        return probes.stream().min(Comparator.comparing(ProbeProof::time));
    }

    /** What it says of a part that needs so much time at temperature. */
    public Proven verdict(Duration needed) {
        if (isTooHot()) {
            return Proven.TOO_HOT;
        } else if (probes.isEmpty() || warmTime().compareTo(needed) < 0) {
            return Proven.SHORT;
        }
        boolean isDry = asked.maxHumidity().isEmpty() || (humidity.isEmpty() && asked.humidityKnown());
        boolean isShown = humidity.isPresent() && time().compareTo(needed) >= 0;
        return isDry || isShown ? Proven.PROVEN : Proven.HUMIDITY_NOT_SHOWN;
    }

    /** Whether a probe was above the band. */
    public boolean isTooHot() {
        return probes.stream()
                .flatMap(probe -> probe.excursions().stream())
                .anyMatch(one -> one.kind() == Excursion.Kind.ABOVE);
    }

    /** What is missing of the time needed; empty if nothing is. */
    public Optional<Duration> missing(Duration needed) {
        return Optional.of(needed.minus(time())).filter(rest -> !rest.isNegative() && !rest.isZero());
    }

    /** Every spell outside in order of time; humid ones only where the load was warm, for a cold oven holds damp air. */
    public List<Excursion> excursions() {
        List<Excursion> all = new ArrayList<>();
        probes.forEach(probe -> all.addAll(probe.excursions()));
        humidity.map(ProbeProof::excursions).orElse(List.of()).stream()
                .filter(one -> warm.stream().anyMatch(spell -> spell.overlaps(one.spell())))
                .forEach(all::add);
        all.sort(Comparator.comparing(one -> one.spell().from()));
        return all;
    }
}
