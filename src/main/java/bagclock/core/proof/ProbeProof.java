package bagclock.core.proof;

import bagclock.core.proof.Trace.Sample;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What one probe shows.
 *
 * @param inBand spells between two samples in band that follow each other without a gap, ascending
 * @param excursions ascending
 * @param gaps times without samples that are too long to count
 */
public record ProbeProof(Trace trace, List<Spell> inBand, List<Excursion> excursions, List<Spell> gaps) {
    /** A longer time between two samples never counts: twice the five minutes that a chart should take at most. */
    public static final Duration LONGEST_STEP = Duration.ofMinutes(10);

    static ProbeProof of(Trace trace, Band band, Excursion.Kind above) {
        List<Spell> inBand = new ArrayList<>();
        List<Spell> gaps = new ArrayList<>();
        List<Sample> samples = trace.samples();
        for (int i = 1; i < samples.size(); i++) {
            Spell step = new Spell(samples.get(i - 1).at(), samples.get(i).at());
            if (step.length().compareTo(LONGEST_STEP) > 0) {
                gaps.add(step);
            } else if (band.holds(samples.get(i - 1).value())
                    && band.holds(samples.get(i).value())) {
                add(inBand, step);
            }
        }
        return new ProbeProof(trace, inBand, excursions(trace, band, above), gaps);
    }

    /** Two spells that touch are one. */
    private static void add(List<Spell> spells, Spell next) {
        int last = spells.size() - 1;
        if (last >= 0 && spells.get(last).to().equals(next.from())) {
            spells.set(last, new Spell(spells.get(last).from(), next.to()));
        } else {
            spells.add(next);
        }
    }

    private static List<Excursion> excursions(Trace trace, Band band, Excursion.Kind above) {
        List<Sample> samples = trace.samples();
        List<Excursion> found = new ArrayList<>();
        boolean wasInBand = false;
        int at = 0;
        while (at < samples.size()) {
            double value = samples.get(at).value();
            if (band.holds(value)) {
                wasInBand = true;
                at++;
                continue;
            }
            int end = endOfSide(samples, band, at);
            boolean isBelow = value < band.least();
            boolean isBack = end < samples.size();
            if (!isBelow || (wasInBand && isBack)) {
                found.add(excursion(trace, isBelow ? Excursion.Kind.BELOW : above, at, end));
            }
            at = end;
        }
        return found;
    }

    private static int endOfSide(List<Sample> samples, Band band, int start) {
        boolean isBelow = samples.get(start).value() < band.least();
        int end = start;
        while (end < samples.size()
                && !band.holds(samples.get(end).value())
                && samples.get(end).value() < band.least() == isBelow) {
            end++;
        }
        return end;
    }

    private static Excursion excursion(Trace trace, Excursion.Kind kind, int start, int end) {
        List<Sample> samples = trace.samples();
        Sample last = samples.get(Math.min(end, samples.size() - 1));
        var values = samples.subList(start, end).stream().mapToDouble(Sample::value);
        double extreme = (kind == Excursion.Kind.BELOW ? values.min() : values.max()).orElseThrow();
        return new Excursion(trace.name(), kind, new Spell(samples.get(start).at(), last.at()), extreme);
    }

    /** Time in band. */
    public Duration time() {
        return Spell.total(inBand);
    }

    /** The lowest value; empty without samples. */
    public OptionalDouble lowest() {
        return trace.samples().stream().mapToDouble(Sample::value).min();
    }

    /** The highest value; empty without samples. */
    public OptionalDouble highest() {
        return trace.samples().stream().mapToDouble(Sample::value).max();
    }
}
