package bagclock.scan;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Scans that were cut, doubled, or lost characters. The house knows every part, lot and level of the published samples:
 * whatever is read without asking is what the label says.
 */
class NoisyScanTest {
    private static final int EACH = Counts.of(150, 2_000);
    private static final List<Fact> IDENTITY = List.of(Fact.PART_NUMBER, Fact.LOT, Fact.LEVEL);

    private final House house = new House(Sample.all());

    /** What was received from the samples. */
    private record House(Map<String, Sample> parts) implements Known {
        House(List<Sample> samples) {
            this(new HashMap<>());
            samples.stream()
                    .filter(sample -> sample.facts().containsKey(Fact.PART_NUMBER))
                    .forEach(sample -> parts.putIfAbsent(sample.facts().get(Fact.PART_NUMBER), sample));
        }

        @Override
        public boolean isPart(String partNumber) {
            return parts.containsKey(partNumber);
        }

        @Override
        public boolean isLot(String partNumber, String lot) {
            return lot.equals(parts.get(partNumber).facts().get(Fact.LOT));
        }

        @Override
        public Optional<String> level(String partNumber) {
            return Optional.ofNullable(parts.get(partNumber).facts().get(Fact.LEVEL));
        }

        @Override
        public boolean isPeak(String partNumber, String peak) {
            return parts.get(partNumber).facts().getOrDefault(Fact.PEAK, "").contains(peak);
        }

        @Override
        public boolean isPackage(String partNumber, String number) {
            return false;
        }
    }

    @Test
    void noiseIsNeverTakenForAnotherPartLotOrLevel() {
        Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
        SplittableRandom random = new SplittableRandom(6);
        for (Sample sample : Sample.all()) {
            for (int i = 0; i < EACH; i++) {
                String noisy = noisy(sample.scan(), random);
                Reading reading = Decoder.read(noisy).against(house);
                counts.merge(reading.standing(), 1, Integer::sum);
                if (reading.standing() == Standing.READ) {
                    check(sample, noisy, reading);
                }
            }
        }
        assertThat(counts.get(Standing.READ)).isPositive();
        assertThat(counts.get(Standing.REFUSED)).isPositive();
        assertThat(counts.getOrDefault(Standing.ASK, 0)).isGreaterThan(counts.get(Standing.READ));
    }

    private static void check(Sample sample, String noisy, Reading reading) {
        for (Fact fact : IDENTITY) {
            String read = String.join("+", reading.all(fact));
            if (!read.isEmpty()) {
                assertThat(read)
                        .as("%s of %s in %s", fact, sample, noisy)
                        .isEqualTo(sample.facts().get(fact));
            }
        }
    }

    private static String noisy(String scan, SplittableRandom random) {
        int at = random.nextInt(1, scan.length());
        return switch (random.nextInt(6)) {
            case 0 -> scan.substring(0, at);
            case 1 -> scan.substring(at);
            case 2 -> scan + scan;
            case 3 -> scan + scan.substring(0, at);
            case 4 -> scan.substring(0, at - 1) + scan.substring(at);
            default -> without(scan, random);
        };
    }

    private static String without(String scan, SplittableRandom random) {
        StringBuilder left = new StringBuilder(scan);
        for (int lost = random.nextInt(2, 9); lost > 0 && left.length() > 1; lost--) {
            left.deleteCharAt(random.nextInt(left.length()));
        }
        return left.toString();
    }
}
