package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.BoardQuestion.Board;
import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of boards (the project's own; the safer answer is never lost). */
class BoardLawsTest {
    static LongStream seeds() {
        return Draws.seeds();
    }

    private static Board board(Draws draws) {
        return new Board(
                draws.chance(4) ? Optional.empty() : Optional.of(new Celsius(draws.pick(60.0, 100.0, 125.0))),
                draws.chance(4)
                        ? Optional.of(new BoardQuestion.OwnBake(
                                new Celsius(draws.pick(90.0, 105.0, 125.0)), Duration.ofHours(24)))
                        : Optional.empty(),
                draws.chance(6) ? Optional.empty() : Optional.of(draws.chance(4)),
                Optional.empty(),
                List.of(),
                Board.USUAL_REPLACEMENTS);
    }

    private static Location location(Draws draws, RandomCase of, Fate fate, double peak) {
        return new Location(
                "U" + draws.below(100),
                of.part(),
                of.events(),
                draws.chance(4) ? Optional.empty() : Optional.of(new Celsius(peak)),
                fate,
                draws.chance(5),
                draws.below(3));
    }

    static BoardQuestion draw(Draws draws) {
        RandomCase first = draws.draw();
        List<Location> locations = new ArrayList<>();
        for (int i = 1 + draws.below(3); i > 0; i--) {
            RandomCase other = draws.draw();
            locations.add(location(draws, other, draws.pick(Fate.values()), draws.pick(150.0, 200.0, 220.0)));
        }
        Instant moment = locations.stream()
                .flatMap(location -> location.events().stream())
                .map(event -> event.at())
                .reduce(first.moment(), (one, two) -> one.isAfter(two) ? one : two);
        HeatPlan plan = new HeatPlan(
                moment,
                Duration.ofMinutes(draws.below(30)),
                Optional.empty(),
                Optional.of(draws.pick(HeatPlan.Purpose.PLACEMENT, HeatPlan.Purpose.WHOLE_BOARD)),
                Optional.of(draws.chance(2)));
        return new BoardQuestion(board(draws), locations, first.climate(), first.rules(), Optional.of(plan), moment);
    }

    private static BoardQuestion with(BoardQuestion asked, List<Location> locations) {
        return new BoardQuestion(asked.board(), locations, asked.climate(), asked.rules(), asked.heat(), asked.at());
    }

    private static Verdict verdict(BoardQuestion asked) {
        return AssessBoard.of(Story.STANDARD, asked).whole().verdict();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void oneMorePartIsNeverMilder(long seed) {
        BoardQuestion all = draw(new Draws(seed));
        List<Location> fewer = all.locations().subList(0, all.locations().size() - 1);

        assertThat(verdict(all)).isGreaterThanOrEqualTo(verdict(with(all, fewer)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aHotterNeighbourIsNeverMilder(long seed) {
        Draws draws = new Draws(seed);
        BoardQuestion mild = draw(draws);
        double hotter = draws.pick(1.0, 30.0, 80.0);
        List<Location> locations = new ArrayList<>(mild.locations());
        int which = draws.below(locations.size());
        Location one = locations.get(which);
        locations.set(
                which,
                new Location(
                        one.name(),
                        one.part(),
                        one.events(),
                        one.peakBody().map(peak -> new Celsius(peak.degrees() + hotter)),
                        one.fate(),
                        one.offFirst(),
                        one.replacements()));

        assertThat(verdict(with(mild, locations))).isGreaterThanOrEqualTo(verdict(mild));
    }

    /** A board is never milder than any of its parts that will pass 200 C. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aBoardIsNeverMilderThanItsParts(long seed) {
        BoardAnswer answer = AssessBoard.of(Story.STANDARD, draw(new Draws(seed)));

        assertThat(answer.parts())
                .filteredOn(BoardAnswer.At::counts)
                .allSatisfy(at -> assertThat(answer.whole().verdict())
                        .isGreaterThanOrEqualTo(at.answer().verdict()));
    }
}
