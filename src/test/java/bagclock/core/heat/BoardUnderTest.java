package bagclock.core.heat;

import bagclock.core.exposure.Event;
import bagclock.core.heat.BoardQuestion.Board;
import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.heat.BoardQuestion.OwnBake;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A board for tests. Unless told otherwise: it bears 125 C, is not coated, and stands in 25 C / 50 %RH. */
final class BoardUnderTest {
    private Optional<Celsius> maxBake = Optional.of(new Celsius(125));
    private Optional<OwnBake> ownBake = Optional.empty();
    private Optional<Boolean> coated = Optional.of(false);
    private Optional<Duration> useWithin = Optional.empty();
    private int mostReplacements = Board.USUAL_REPLACEMENTS;
    private final List<Event> bakes = new ArrayList<>();
    private final List<Location> locations = new ArrayList<>();

    BoardUnderTest bears(Optional<Double> celsius) {
        maxBake = celsius.map(Celsius::new);
        return this;
    }

    BoardUnderTest bears(double celsius) {
        return bears(Optional.of(celsius));
    }

    BoardUnderTest mostReplacements(int most) {
        mostReplacements = most;
        return this;
    }

    BoardUnderTest ownBake(double celsius, double hours) {
        ownBake = Optional.of(new OwnBake(new Celsius(celsius), Story.hours(hours)));
        return this;
    }

    BoardUnderTest coated(Optional<Boolean> is) {
        coated = is;
        return this;
    }

    BoardUnderTest useWithin(double hours) {
        useWithin = Optional.of(Story.hours(hours));
        return this;
    }

    BoardUnderTest bake(double from, double to, double celsius, double hours) {
        bakes.add(new Event.BakeStarted(Story.at(from), new Celsius(celsius), Optional.of(new RelativeHumidity(5))));
        bakes.add(new Event.BakeEnded(Story.at(to), Optional.of(Story.hours(hours))));
        return this;
    }

    /** A part that stays on the board, its peak not known. */
    BoardUnderTest with(String name, PartUnderTest part, Story story) {
        return with(name, part, story, Fate.STAYS, Optional.empty());
    }

    BoardUnderTest with(String name, PartUnderTest part, Story story, Fate fate, Optional<Double> peak) {
        return with(new Location(name, part.get(), story.events(), peak.map(Celsius::new), fate, false, 0));
    }

    BoardUnderTest with(Location location) {
        locations.add(location);
        return this;
    }

    /** A local heat of a placement. */
    BoardAnswer local(double hour) {
        return answer(hour, Purpose.PLACEMENT, true, 10);
    }

    BoardAnswer wholeBoard(double hour) {
        return answer(hour, Purpose.WHOLE_BOARD, false, 10);
    }

    BoardAnswer answer(double hour, Purpose purpose, boolean local, double minutes) {
        HeatPlan plan = new HeatPlan(
                Story.at(hour), Story.hours(minutes / 60), Optional.empty(), Optional.of(purpose), Optional.of(local));
        return AssessBoard.of(Story.STANDARD, question(hour, Optional.of(plan)));
    }

    BoardQuestion question(double hour, Optional<HeatPlan> plan) {
        Story air = Story.of(PartUnderTest.level("1"));
        Board board = new Board(maxBake, ownBake, coated, useWithin, bakes, mostReplacements);
        return new BoardQuestion(board, locations, air.climate(), air.rules(), plan, Story.at(hour));
    }
}
