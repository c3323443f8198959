package bagclock.core.heat;

import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Tally;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.core.standard.SiteLimits;
import bagclock.core.standard.Standard;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The one answer: part, history, climate, rules and a heat plan in, verdict with reasons out. Pure: the same inputs
 * give the same answer at any time.
 */
public final class Assess {
    private final SiteLimits limits;
    private final Question question;
    private final Optional<HeatPlan> heat;
    private final CountingRating counting;
    private final FoldedHistory folded;
    private final Tally tally;
    private final BakeMenu menu;
    private final List<BakeOffer> offers;

    private Assess(Standard standard, Question question) {
        this.limits = standard.limits();
        PartHistory history = question.history();
        this.question = question;
        this.heat = question.heat();
        this.counting = CountingRating.of(standard, history.part(), heat.flatMap(HeatPlan::peakBody));
        this.folded = FoldedHistory.of(standard, history, counting.rating());
        Tally alone = Tally.of(history.part(), history.timeline(), history.moment());
        this.tally = question.heldBy().map(alone::carriedBy).orElse(alone);
        this.menu = new BakeMenu(standard, history.part(), tally);
        this.offers = menu.offers(counting.rating().level(), folded.reading().column());
    }

    /** Answers a question by the tables of a standard. */
    public static Answer of(Standard standard, Question question) {
        return prepare(standard, question).answer();
    }

    static Assess prepare(Standard standard, Question question) {
        return new Assess(standard, question);
    }

    /** Whether the bake that ended at this moment dried the part. */
    boolean wasDriedAt(Instant bakeEnd) {
        return folded.reading().driedAt().contains(bakeEnd);
    }

    Answer answer() {
        List<Finding> findings = new ArrayList<>(bars());
        findings.addAll(moisture());
        Verdict verdict =
                findings.stream().map(finding -> finding.code().brings()).reduce(Verdict.CLEAR, Verdict::stricterOf);
        if (verdict == Verdict.CLEAR) {
            findings.add(0, clearBecause());
        }
        findings.addAll(Notices.of(question.history(), folded, counting));
        findings.addAll(bySite());
        findings.sort(Finding.STRICTEST_FIRST);
        List<Assumption> assumed = Assumptions.of(question, counting);
        return new Answer(
                verdict,
                until(verdict, findings),
                floorLife(),
                folded.reading().state(),
                menu.column(counting.rating().level(), folded.reading().column()),
                offers,
                findings,
                Steps.of(verdict, findings, offers),
                assumed,
                folded.reading().trail());
    }

    /** What bars a heat whatever the moisture. */
    private List<Finding> bars() {
        List<Finding> bars = new ArrayList<>();
        boolean closed = folded.whereabouts().place() instanceof Place.Bag;
        if (closed && level() != Level.L1) {
            bars.add(Finding.of(FindingCode.BAG_SEALED));
        }
        if (!scrapped()) {
            bars.addAll(barsOfPart());
        }
        return bars;
    }

    private List<Finding> barsOfPart() {
        List<Finding> bars = new ArrayList<>();
        if (counting.rating().level().isEmpty()) {
            bars.add(Finding.of(FindingCode.LEVEL_UNKNOWN));
        }
        if (!counting.reached()) {
            bars.add(Finding.of(FindingCode.PEAK_ABOVE_RATING, plannedPeak(), highestRating())
                    .citing(Optional.of(counting.peak().citation())));
        }
        int limit = question.history().part().maker().maxReflowPasses();
        if (Tally.isPass(Optional.of(plannedPeak())) && tally.passes() >= limit) {
            bars.add(Finding.of(FindingCode.PASSES_USED_UP, tally.passes(), limit));
        }
        return bars;
    }

    private Celsius plannedPeak() {
        return heat.flatMap(HeatPlan::peakBody).orElse(counting.peak().value());
    }

    private Celsius highestRating() {
        return question.history().part().ratings().stream()
                .flatMap(rating -> rating.peak().stream())
                .max(Comparator.naturalOrder())
                .orElse(counting.peak().value());
    }

    /** The level for what holds without a known one: an unknown level is treated apart. */
    private Level level() {
        return counting.rating().level().orElse(Level.L6);
    }

    private boolean spared() {
        return heat.filter(plan -> plan.sparesThePart(limits.harmlessPeak())).isPresent();
    }

    /** Where the site's stricter limit decides, and the standard's would not, that is said. */
    private List<Finding> bySite() {
        List<Finding> named = new ArrayList<>();
        boolean byPeak = !spared()
                && !scrapped()
                && heat.filter(plan -> plan.sparesThePart(SiteLimits.HARMLESS_PEAK))
                        .isPresent();
        if (byPeak) {
            named.add(Finding.of(FindingCode.SITE_PEAK_LIMIT, limits.harmlessPeak()));
        }
        boolean byHours = offers.stream()
                .flatMap(offer -> offer.bars().stream())
                .anyMatch(bar -> bar.code() == BakeOffer.BarCode.SITE_HOURS_ABOVE_90);
        if (byHours) {
            named.add(Finding.of(FindingCode.SITE_BAKE_LIMIT, limits.mostAbove90()));
        }
        return named;
    }

    private boolean scrapped() {
        return heat.filter(HeatPlan::scrapsThePart).isPresent();
    }

    private List<Finding> moisture() {
        Moisture moisture = new Moisture(question, folded, tally, counting, offers);
        if (spared() || scrapped() || counting.rating().level().isEmpty()) {
            return moisture.inOvenOnly();
        }
        return moisture.findings();
    }

    private Finding clearBecause() {
        if (scrapped()) {
            return Finding.of(FindingCode.PART_IS_SCRAPPED);
        } else if (spared()) {
            return Finding.of(FindingCode.BODY_STAYS_AT_200);
        } else if (level() == Level.L1) {
            return Finding.of(FindingCode.NO_FLOOR_LIFE);
        }
        FindingCode code = level() == Level.L6 ? FindingCode.INSIDE_LABEL_TIME : FindingCode.INSIDE_FLOOR_LIFE;
        return Finding.of(
                        code,
                        folded.reading()
                                .total()
                                .map(life -> (Object) Finding.time(life.value()))
                                .orElse(""))
                .citing(folded.reading().citation());
    }

    private Optional<Instant> until(Verdict verdict, List<Finding> findings) {
        if (verdict == Verdict.CLEAR) {
            boolean noBar = spared() || scrapped();
            return noBar
                    ? Optional.empty()
                    : earliest(folded.endsAt(), folded.reading().timerEnd());
        }
        return verdict == Verdict.WAIT ? mendsAt(findings) : Optional.empty();
    }

    private Optional<Instant> mendsAt(List<Finding> findings) {
        boolean rest = findings.stream().anyMatch(finding -> finding.code() == FindingCode.DRY_REST);
        return rest ? folded.reading().restEnd() : folded.reading().run().flatMap(run -> run.readyAt());
    }

    private static Optional<Instant> earliest(Optional<Instant> one, Optional<Instant> other) {
        return Stream.of(one, other).flatMap(Optional::stream).min(Comparator.naturalOrder());
    }

    private Answer.FloorLife floorLife() {
        var reading = folded.reading();
        var used = reading.total()
                .map(total -> reading.used().hoursOf(total.value()))
                .orElse(BigDecimal.ZERO);
        return new Answer.FloorLife(reading.total(), used, folded.endsAt());
    }

    /** Length of the planned heat; none without a plan. */
    static Duration lengthOf(Optional<HeatPlan> heat) {
        return heat.map(HeatPlan::length).orElse(Duration.ZERO);
    }
}
