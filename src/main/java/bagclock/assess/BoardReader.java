package bagclock.assess;

import bagclock.assess.Fields.Range;
import bagclock.core.exposure.Event;
import bagclock.core.heat.BoardLocations;
import bagclock.core.heat.BoardQuestion;
import bagclock.core.heat.BoardQuestion.Board;
import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.heat.BoardQuestion.OwnBake;
import bagclock.core.heat.HeatPlan;
import bagclock.core.quantity.Celsius;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Reads the "board" of a request. */
final class BoardReader {
    private final RequestReader request;
    private final AssessRequest.Setting setting;
    private final Optional<HeatPlan> heat;
    private final Instant moment;

    BoardReader(RequestReader request, AssessRequest.Setting setting, Optional<HeatPlan> heat, Instant moment) {
        this.request = request;
        this.setting = setting;
        this.heat = heat;
        this.moment = moment;
    }

    BoardQuestion read(Fields fields) {
        List<Event> bakes = bakes(fields);
        Board board = new Board(
                PartReader.celsius(fields, "maxBakeC"),
                fields.object("ownBake").flatMap(BoardReader::ownBake),
                fields.flag("coated"),
                fields.hours("useWithinHours", Range.HOURS, RoundingMode.FLOOR),
                bakes,
                Board.USUAL_REPLACEMENTS);
        List<Location> locations =
                fields.list("parts").stream().map(this::location).toList();
        fields.done();
        for (Location location : locations) {
            request.check(BoardLocations.timeline(board, location), "board.parts " + location.name());
        }
        return new BoardQuestion(board, locations, setting.climate(), setting.rules(), heat, moment);
    }

    private List<Event> bakes(Fields fields) {
        List<Event> events = HistoryReader.read(fields.list("history"));
        boolean other = events.stream()
                .anyMatch(event -> !(event instanceof Event.BakeStarted) && !(event instanceof Event.BakeEnded));
        if (other) {
            fields.problem("history", "holds bakes of the board only");
        }
        request.timeline(events, "board.history", moment);
        return events;
    }

    private static Optional<OwnBake> ownBake(Fields fields) {
        Optional<Celsius> temperature =
                PartReader.required(fields, "temperatureC", PartReader.celsius(fields, "temperatureC"));
        Optional<Duration> hours =
                PartReader.required(fields, "hours", fields.hours("hours", Range.HOURS, RoundingMode.CEILING));
        fields.done();
        return temperature.flatMap(t -> hours.map(time -> new OwnBake(t, time)));
    }

    private Location location(Fields fields) {
        String name = fields.string("location").orElse("");
        var part = fields.object("part").map(PartReader::read).orElseGet(request::unknownPart);
        List<Event> events = HistoryReader.read(fields.list("history"));
        request.timeline(events, "board.parts " + name, moment);
        Location location = new Location(
                name,
                part,
                events,
                PartReader.celsius(fields, "peakBodyC"),
                fields.word("fate", Fate::parse).orElse(Fate.STAYS),
                fields.flag("offFirst").orElse(false),
                fields.count("replacements", Range.COUNT).orElse(0));
        fields.done();
        return location;
    }
}
