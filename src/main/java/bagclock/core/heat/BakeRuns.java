package bagclock.core.heat;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.Tally;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.Part;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** What the bakes of the past leave behind beside dryness: a run that was too hot holds the part. */
final class BakeRuns {
    /** The tolerance above a set-point (J-STD-033D, table 4-1: +10 C). */
    private static final int TOLERANCE_C = 10;

    private BakeRuns() {}

    static Stream<Finding> findings(Part part, Tally tally) {
        return tally.runs().stream().flatMap(run -> finding(part, run).stream());
    }

    private static Optional<Finding> finding(Part part, Event.BakeStarted run) {
        Celsius hottest = hottest(part);
        if (run.temperature().exceedsBy(hottest, TOLERANCE_C)) {
            return Optional.of(Finding.of(FindingCode.BAKED_TOO_HOT, run.temperature(), hottest));
        }
        Celsius limit = part.maxBake().orElseGet(() -> assumedLimit(part, hottest));
        return run.temperature().isAbove(limit)
                ? Optional.of(Finding.of(FindingCode.PART_LIMIT_PASSED_IN_BAKE, run.temperature(), limit))
                : Optional.empty();
    }

    private static Celsius hottest(Part part) {
        Stream<Celsius> maker = part.maker().bakes().stream().map(MakerBake::temperature);
        Stream<Celsius> table = part.maker().tableCounts() ? Stream.of(BakeTimes.HOTTEST) : Stream.empty();
        return Stream.concat(maker, table).max(Comparator.naturalOrder()).orElse(BakeTimes.HOTTEST);
    }

    /** A kind that does not bear the table's bakes, without a word of its maker, bears what an unmarked carrier does. */
    private static Celsius assumedLimit(Part part, Celsius hottest) {
        boolean known = part.body().kind().bears125() || !part.maker().bakes().isEmpty();
        return known ? new Celsius(hottest.degrees() + TOLERANCE_C) : CarrierLimit.UNMARKED;
    }
}
