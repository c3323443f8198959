package bagclock.climate;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One quantity over time, out of one file.
 *
 * @param samples ascending, one for each time
 * @param apart how far two that follow each other may be apart so that what lies between them is known
 */
record Series(List<Sample> samples, Duration apart) {
    /**
     * What was measured at a time, or around it.
     *
     * @param line of the file
     * @param lowest as highest but where several count
     */
    record Sample(long line, long atMs, double lowest, double highest) {
        Sample with(Sample other) {
            return new Sample(line, atMs, Math.min(lowest, other.lowest), Math.max(highest, other.highest));
        }
    }

    /** Keeps its own copy. */
    Series {
        samples = List.copyOf(samples);
    }

    /** Sorted; of several values at one time all count. */
    static Series of(List<Sample> unsorted, Duration apart) {
        List<Sample> sorted = new ArrayList<>(unsorted);
        sorted.sort(Comparator.comparingLong(Sample::atMs));
        List<Sample> each = new ArrayList<>(sorted.size());
        for (Sample sample : sorted) {
            int last = each.size() - 1;
            if (last >= 0 && each.get(last).atMs() == sample.atMs()) {
                each.set(last, each.get(last).with(sample));
            } else {
                each.add(sample);
            }
        }
        return new Series(each, apart);
    }

    /** When the sample of this number was taken; later than all times for a number behind the last. */
    long atMs(int number) {
        return number < samples.size() ? samples.get(number).atMs() : Long.MAX_VALUE;
    }

    /**
     * What is known for a time: the sample of that time, else the one before and the one after it together. Empty before
     * the first, after the last, and between two that are too far apart.
     *
     * @param next number of the first sample that is not earlier
     */
    Optional<Sample> around(int next, long atMs) {
        if (atMs(next) == atMs) {
            return Optional.of(samples.get(next));
        } else if (next == 0 || next >= samples.size()) {
            return Optional.empty();
        }
        Sample before = samples.get(next - 1);
        Sample after = samples.get(next);
        boolean isKnown = after.atMs() - before.atMs() <= apart.toMillis();
        return isKnown ? Optional.of(before.with(after)) : Optional.empty();
    }
}
