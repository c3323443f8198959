package bagclock.core.heat;

import bagclock.core.exposure.Event;
import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.standard.Standard;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The answer for a board: its worst part's, over those that will pass 200 C or the site's lower limit, with the bakes that the board bears. */
public final class AssessBoard {
    private static final BigDecimal UNLIMITED_HOURS = BigDecimal.valueOf(Long.MAX_VALUE);

    private final Standard standard;
    private final BoardQuestion asked;

    private AssessBoard(Standard standard, BoardQuestion asked) {
        this.standard = standard;
        this.asked = asked;
    }

    /** One location with its answer. */
    private record Judged(Location location, Assess assess, Answer answer, boolean counts) {
        boolean isOnBoard() {
            return location.fate().isOnBoard();
        }

        boolean needsBake() {
            return answer.reasons().stream().anyMatch(finding -> finding.code().brings() == Verdict.BAKE);
        }
    }

    /**
     * Answers a question by the tables of a standard.
     *
     * @throws IllegalArgumentException if a location's history is not possible, see {@link BoardLocations#timeline}
     */
    public static BoardAnswer of(Standard standard, BoardQuestion asked) {
        return new AssessBoard(standard, asked).answer();
    }

    private BoardAnswer answer() {
        List<Judged> judged = asked.locations().stream().map(this::judge).toList();
        List<BakeOffer> bakes = bakes(judged);
        List<Finding> own = ownFindings(judged, bakes);
        Answer whole = whole(judged, bakes, own);
        return new BoardAnswer(
                whole,
                judged.stream()
                        .map(one -> new BoardAnswer.At(one.location().name(), one.answer(), one.counts()))
                        .toList());
    }

    private Judged judge(Location location) {
        Assess assess = Assess.prepare(standard, BoardLocations.question(asked, location));
        Answer answer = withReplacements(assess.answer(), location);
        return new Judged(
                location,
                assess,
                answer,
                BoardLocations.counts(asked, location, standard.limits().harmlessPeak()));
    }

    private Answer withReplacements(Answer answer, Location location) {
        int most = asked.board().mostReplacements();
        boolean placed = location.fate() == Fate.PLACED;
        if (!placed || location.replacements() < most - 1) {
            return answer;
        }
        boolean tooMany = location.replacements() >= most;
        FindingCode code = tooMany ? FindingCode.LOCATION_REPLACED_TWICE : FindingCode.LOCATION_REPLACED;
        return answer.and(Finding.of(code, location.name(), location.replacements(), most));
    }

    private List<BakeOffer> bakes(List<Judged> judged) {
        List<Judged> mounted = judged.stream()
                .filter(one -> one.counts() && one.isOnBoard())
                .filter(one -> one.location().fate() != Fate.REMOVED_SCRAP)
                .toList();
        List<Judged> inNeed = mounted.stream().filter(Judged::needsBake).toList();
        List<Judged> withBakes =
                mounted.stream().filter(one -> !one.answer().bakes().isEmpty()).toList();
        List<BoardBakes.Need> needs = (inNeed.isEmpty() ? withBakes : inNeed)
                .stream()
                        .map(one ->
                                new BoardBakes.Need(one.location(), one.answer().bakes()))
                        .toList();
        List<Location> onBoard =
                judged.stream().filter(Judged::isOnBoard).map(Judged::location).toList();
        return new BoardBakes(asked.board(), onBoard, needs).offers();
    }

    /** What the board as a whole adds to its parts' answers. */
    private List<Finding> ownFindings(List<Judged> judged, List<BakeOffer> bakes) {
        List<Finding> findings = new ArrayList<>();
        boolean late = timerEnd(judged).filter(end -> end.isBefore(heatEnds())).isPresent();
        if (late) {
            findings.add(Finding.of(
                    FindingCode.BOARD_USE_WITHIN_PASSED, timerEnd(judged).orElseThrow()));
        }
        boolean needsBake = late || needsBoardBake(judged);
        boolean coated =
                asked.board().coated().orElse(true) && asked.board().ownBake().isEmpty();
        if (needsBake && coated) {
            findings.add(Finding.of(FindingCode.BOARD_COATED));
        } else if (needsBake && bakes.stream().noneMatch(BakeOffer::isAllowed)) {
            findings.add(Finding.of(FindingCode.NO_BAKE_ALLOWED));
        }
        return findings;
    }

    private static boolean needsBoardBake(List<Judged> judged) {
        return judged.stream()
                .filter(one -> one.counts() && one.isOnBoard())
                .anyMatch(one -> one.answer().verdict() != Verdict.WAIT && one.needsBake());
    }

    private Instant heatEnds() {
        return asked.at().plus(Assess.lengthOf(asked.heat()));
    }

    /** The board's own time after its last bake that counted. */
    private Optional<Instant> timerEnd(List<Judged> judged) {
        return asked.board().useWithin().flatMap(within -> lastBake(judged).map(end -> end.plus(within)));
    }

    private Optional<Instant> lastBake(List<Judged> judged) {
        Optional<Instant> last = Optional.empty();
        Optional<Event.BakeStarted> run = Optional.empty();
        for (Event event : asked.board().bakes()) {
            if (event instanceof Event.BakeStarted started) {
                run = Optional.of(started);
            } else if (event instanceof Event.BakeEnded ended && run.isPresent()) {
                boolean own = asked.board().ownBake().isEmpty()
                        || BoardBakes.meets(asked.board().ownBake().get(), run.get(), ended);
                last = own && driedAPart(judged, ended) ? Optional.of(ended.at()) : last;
            }
        }
        return last;
    }

    private static boolean driedAPart(List<Judged> judged, Event.BakeEnded ended) {
        return judged.stream().anyMatch(one -> one.isOnBoard() && one.assess().wasDriedAt(ended.at()));
    }

    private Answer whole(List<Judged> judged, List<BakeOffer> bakes, List<Finding> own) {
        List<Judged> counting = judged.stream()
                .filter(one -> one.counts() || one.answer().verdict() != Verdict.CLEAR)
                .toList();
        Optional<Judged> worst = worst(counting.isEmpty() ? judged : counting);
        if (worst.isEmpty()) {
            return Answer.empty(bakes, own);
        }
        Set<Finding> reasons = new LinkedHashSet<>(own);
        reasons.addAll(worst.get().answer().reasons());
        counting.forEach(one -> reasons.addAll(one.answer().reasons()));
        Answer base = worst.get().answer();
        Verdict verdict = own.stream().map(f -> f.code().brings()).reduce(base.verdict(), Verdict::stricterOf);
        List<Finding> sorted = reasons.stream().sorted(Finding.STRICTEST_FIRST).toList();
        return new Answer(
                verdict,
                until(verdict, counting, judged),
                base.floorLife(),
                base.clock(),
                base.bakeColumn(),
                bakes,
                sorted,
                Steps.of(verdict, sorted, bakes),
                assumed(judged),
                base.trail());
    }

    /** The strictest; among equals the one with the least life left, then the first. */
    private static Optional<Judged> worst(List<Judged> judged) {
        Comparator<Judged> byVerdict = Comparator.comparing(one -> one.answer().verdict());
        Comparator<Judged> byLife = Comparator.comparing(
                one -> one.answer().floorLife().remainingHours().orElse(UNLIMITED_HOURS));
        return judged.stream().min(byVerdict.reversed().thenComparing(byLife));
    }

    private Optional<Instant> until(Verdict verdict, List<Judged> counting, List<Judged> judged) {
        var ends = counting.stream()
                .filter(one -> one.answer().verdict() == verdict)
                .flatMap(one -> one.answer().until().stream())
                .toList();
        if (verdict == Verdict.WAIT) {
            return ends.stream().max(Comparator.naturalOrder());
        } else if (verdict != Verdict.CLEAR) {
            return Optional.empty();
        }
        List<Instant> all = new ArrayList<>(ends);
        timerEnd(judged).ifPresent(all::add);
        return all.stream().min(Comparator.naturalOrder());
    }

    private List<Assumption> assumed(List<Judged> judged) {
        Set<Assumption> assumed = new LinkedHashSet<>();
        if (asked.board().coated().isEmpty()) {
            assumed.add(new Assumption(Assumption.Fact.COATED, "coated"));
        }
        judged.forEach(one -> assumed.addAll(one.answer().assumed()));
        return List.copyOf(assumed);
    }
}
