package bagclock.core.heat;

import bagclock.core.Outcome;
import bagclock.core.Refusal;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Timeline;
import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.CarrierLimit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns the locations of a board into questions about parts: the board's bakes and limit become the part's. */
public final class BoardLocations {
    private BoardLocations() {}

    /** The part's history with the board's bakes in it, or why the two cannot both be true. */
    public static Outcome<Timeline> timeline(BoardQuestion.Board board, Location location) {
        return Timeline.of(location.fate().isOnBoard() ? withBakes(board, location) : location.events());
    }

    /** The board's bakes belong to a part from its mounting on; without a mounting from its first event on. */
    private static List<Event> withBakes(BoardQuestion.Board board, Location location) {
        Instant from = location.events().stream()
                .filter(Event.Mounted.class::isInstance)
                .map(Event::at)
                .reduce((first, last) -> last)
                .or(() -> location.events().stream().map(Event::at).findFirst())
                .orElse(Instant.MIN);
        List<Event> merged = new ArrayList<>(location.events());
        boolean begun = false;
        for (Event event : board.bakes()) {
            begun = event instanceof Event.BakeStarted ? !event.at().isBefore(from) : begun;
            if (begun) {
                merged.add(event);
            }
        }
        merged.sort(Comparator.comparing(Event::at));
        return merged;
    }

    static Question question(BoardQuestion asked, Location location) {
        Timeline timeline = timeline(asked.board(), location).fold(t -> t, BoardLocations::refused);
        PartHistory history = new PartHistory(location.part(), timeline, asked.climate(), asked.rules(), asked.at());
        Optional<HeatPlan> heat = asked.heat()
                .map(planned -> heatAt(planned, location))
                .or(() ->
                        location.fate() == Fate.REMOVED_SCRAP ? Optional.of(scrap(asked, location)) : Optional.empty());
        return new Question(history, heat, heldBy(asked, location));
    }

    private static Timeline refused(List<Refusal> refusals) {
        throw new IllegalArgumentException("not a history: " + refusals);
    }

    private static Optional<CarrierLimit> heldBy(BoardQuestion asked, Location location) {
        if (!location.fate().isOnBoard()) {
            return Optional.empty();
        }
        return Optional.of(
                asked.board().maxBake().<CarrierLimit>map(CarrierLimit.Of::new).orElse(new CarrierLimit.Unknown()));
    }

    private static HeatPlan heatAt(HeatPlan heat, Location location) {
        boolean local = heat.isLocal();
        return new HeatPlan(
                heat.at(),
                heat.length(),
                location.peakBody(),
                Optional.of(purpose(heat, location.fate())),
                Optional.of(local));
    }

    private static HeatPlan scrap(BoardQuestion asked, Location location) {
        return new HeatPlan(
                asked.at(), Duration.ZERO, location.peakBody(), Optional.of(Purpose.REMOVAL_SCRAP), Optional.of(true));
    }

    /** A part to be scrapped does not count in any heat; every other counts in a heat of the whole board. */
    private static Purpose purpose(HeatPlan heat, Fate fate) {
        boolean whole = heat.purpose().filter(p -> p == Purpose.WHOLE_BOARD).isPresent();
        if (fate == Fate.REMOVED_SCRAP) {
            return Purpose.REMOVAL_SCRAP;
        } else if (whole) {
            return Purpose.WHOLE_BOARD;
        }
        return fate == Fate.REMOVED_REUSE ? Purpose.REMOVAL_REUSE : Purpose.PLACEMENT;
    }

    /**
     * It will pass 200 C: by its measured peak, by an unknown peak, or because the whole board is heated.
     *
     * @param harmless 200 C, or a site's lower limit
     */
    static boolean counts(BoardQuestion asked, Location location, Celsius harmless) {
        return asked.heat()
                .filter(heat -> heatAt(heat, location).sparesThePart(harmless))
                .isEmpty();
    }
}
