package bagclock.core.heat;

import bagclock.core.exposure.Event;
import bagclock.core.heat.BakeOffer.Bar;
import bagclock.core.heat.BakeOffer.BarCode;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Status;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The bakes of a whole board: at a temperature that board and parts bear, for the longest time that any part in need
 * of one asks for there.
 */
final class BoardBakes {
    private final BoardQuestion.Board board;
    private final List<Need> needs;
    private final List<Location> onBoard;

    /** A part whose bake decides, with its own offers. */
    record Need(Location location, List<BakeOffer> offers) {}

    BoardBakes(BoardQuestion.Board board, List<Location> onBoard, List<Need> needs) {
        this.board = board;
        this.onBoard = onBoard;
        this.needs = needs;
    }

    /** From hot to cool; none for a coated board without a bake of its own. */
    List<BakeOffer> offers() {
        if (board.ownBake().isPresent()) {
            return own(board.ownBake().get()).stream().toList();
        } else if (board.coated().orElse(true) || needs.isEmpty()) {
            return List.of();
        }
        return needs.get(0).offers().stream()
                .map(BakeOffer::temperature)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .flatMap(temperature -> at(temperature, Duration.ZERO, BoardBakes::exactly).stream())
                .toList();
    }

    private Optional<BakeOffer> own(BoardQuestion.OwnBake bake) {
        if (needs.isEmpty()) {
            return Optional.of(new BakeOffer(
                    bake.temperature(), bake.time(), Optional.empty(), limits(bake.temperature()), cited()));
        }
        return at(bake.temperature(), bake.time(), BoardBakes::atOrBelow);
    }

    private Optional<BakeOffer> at(Celsius temperature, Duration atLeast, Finder finder) {
        Duration time = atLeast;
        List<Bar> bars = new ArrayList<>(limits(temperature));
        Optional<BakeOffer> cited = Optional.empty();
        for (Need need : needs) {
            Optional<BakeOffer> offer = finder.find(need.offers(), temperature);
            if (offer.isEmpty()) {
                return Optional.empty();
            }
            time = offer.get().time().compareTo(time) > 0 ? offer.get().time() : time;
            bars(need, offer.get()).filter(bar -> !bars.contains(bar)).forEach(bars::add);
            cited = cited.filter(one -> one.maxHumidity().isPresent()).or(() -> offer);
        }
        BakeOffer first = cited.orElseThrow();
        return Optional.of(new BakeOffer(temperature, time, first.maxHumidity(), bars, first.citation()));
    }

    /** A part's own bake at a temperature of the board. */
    private interface Finder {
        Optional<BakeOffer> find(List<BakeOffer> offers, Celsius temperature);
    }

    private static Stream<Bar> bars(Need need, BakeOffer offer) {
        boolean off = need.location().offFirst();
        return offer.bars().stream()
                .filter(bar -> !off || (bar.code() != BarCode.PART_LIMIT && bar.code() != BarCode.PART_LIMIT_UNKNOWN));
    }

    private static Optional<BakeOffer> exactly(List<BakeOffer> offers, Celsius temperature) {
        return offers.stream()
                .filter(offer -> offer.temperature().equals(temperature))
                .min(Comparator.comparing(BakeOffer::time));
    }

    /** The highest of a part's bakes at or below a temperature: hotter dries faster. */
    private static Optional<BakeOffer> atOrBelow(List<BakeOffer> offers, Celsius temperature) {
        boolean tooHot = temperature.isAbove(BakeTimes.HOTTEST)
                && offers.stream().noneMatch(offer -> offer.temperature().isAbove(BakeTimes.HOTTEST));
        return tooHot
                ? Optional.empty()
                : offers.stream()
                        .filter(offer -> !offer.temperature().isAbove(temperature))
                        .max(Comparator.comparing(BakeOffer::temperature));
    }

    /** What the board bears, and what the parts bear that stay on it during the bake. */
    private List<Bar> limits(Celsius temperature) {
        List<Bar> bars = new ArrayList<>();
        board.maxBake().filter(temperature::isAbove).ifPresent(limit -> bars.add(new Bar(BarCode.CARRIER, limit)));
        List<Location> baked =
                onBoard.stream().filter(location -> !location.offFirst()).toList();
        baked.stream()
                .flatMap(location -> BakeMenu.partLimit(location.part()).stream())
                .filter(temperature::isAbove)
                .min(Comparator.naturalOrder())
                .ifPresent(limit -> bars.add(new Bar(BarCode.PART_LIMIT, limit)));
        boolean unknown = baked.stream()
                .anyMatch(location -> BakeMenu.partLimit(location.part()).isEmpty());
        if (unknown) {
            bars.add(new Bar(BarCode.PART_LIMIT_UNKNOWN, ""));
        }
        return bars;
    }

    private static Citation cited() {
        return new Citation("the board type's own bake", "", "", "", Status.SEEN, "");
    }

    /** Whether a bake of the board was as hot and as long as its type asks. */
    static boolean meets(BoardQuestion.OwnBake own, Event.BakeStarted run, Event.BakeEnded end) {
        return !own.temperature().isAbove(run.temperature())
                && end.atTemperature()
                        .filter(time -> time.compareTo(own.time()) >= 0)
                        .isPresent();
    }
}
