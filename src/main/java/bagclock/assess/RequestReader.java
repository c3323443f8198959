package bagclock.assess;

import bagclock.assess.Fields.Range;
import bagclock.core.Outcome;
import bagclock.core.Refusal;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Timeline;
import bagclock.core.heat.Assumption;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.Question;
import bagclock.core.standard.Part;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads one request of the contract, or says everything that is wrong with it. */
final class RequestReader {
    private final List<String> problems = new ArrayList<>();
    private final Function<Refusal, String> words;

    private RequestReader(Function<Refusal, String> words) {
        this.words = words;
    }

    /**
     * Reads a request.
     *
     * @param words turns a refusal into words
     * @throws BadRequest with every problem found
     */
    static AssessRequest read(JsonNode request, Function<Refusal, String> words) {
        RequestReader reader = new RequestReader(words);
        AssessRequest read = reader.request(new Fields(request, "", reader.problems));
        if (!reader.problems.isEmpty()) {
            throw new BadRequest(reader.problems);
        }
        return read;
    }

    private AssessRequest request(Fields fields) {
        Optional<Fields> heatFields = fields.object("heat");
        Optional<HeatPlan> heat = heatFields.map(RequestReader::heat);
        Instant moment = moment(fields, heat);
        var setting = new AssessRequest.Setting(
                ClimateReader.read(fields.object("climate")), ClimateReader.rules(fields.object("rules")));
        List<Assumption> counted = new ArrayList<>(Counted.inHeat(heatFields));
        Optional<Fields> board = fields.object("board");
        AssessRequest read;
        if (board.isPresent()) {
            boolean both = fields.has("part") || fields.has("history");
            if (both) {
                fields.problem("board", "cannot stand beside part or history");
            }
            var question = new BoardReader(this, setting, heat, moment).read(board.get());
            read = new AssessRequest(Optional.empty(), Optional.of(question), counted);
        } else {
            Fields part = fields.object("part").orElseGet(this::nothing);
            counted.addAll(Counted.inPart(part));
            Question question = question(PartReader.read(part), fields, setting, heat, moment);
            read = new AssessRequest(Optional.of(question), Optional.empty(), counted);
        }
        fields.done();
        return read;
    }

    private Fields nothing() {
        return new Fields(JsonNodeFactory.instance.objectNode(), "part", problems);
    }

    private Question question(
            Part part, Fields fields, AssessRequest.Setting setting, Optional<HeatPlan> heat, Instant moment) {
        Timeline timeline = timeline(HistoryReader.read(fields.list("history")), "history", moment);
        return new Question(new PartHistory(part, timeline, setting.climate(), setting.rules(), moment), heat);
    }

    /** The events as a lawful history that ends by the moment; problems are noted. */
    Timeline timeline(List<Event> events, String path, Instant moment) {
        events.stream()
                .filter(event -> event.at().isAfter(moment))
                .forEach(event -> problems.add(path + ": an event at " + event.at() + " is later than the moment"));
        events.stream()
                .filter(event -> event instanceof Event.Opened opened
                        && opened.cardReadAt()
                                .filter(read -> read.isAfter(moment))
                                .isPresent())
                .forEach(event -> problems.add(path + ": a card was read later than the moment"));
        return check(Timeline.of(events), path);
    }

    /** A history that is possible; where it is not, an empty one stands in and the problems are noted. */
    Timeline check(Outcome<Timeline> outcome, String path) {
        return outcome.fold(timeline -> timeline, refusals -> {
            refusals.forEach(refusal -> problems.add(path + ": " + words.apply(refusal)));
            return Timeline.EMPTY;
        });
    }

    /** A part of which nothing is said. */
    Part unknownPart() {
        return PartReader.read(nothing());
    }

    private static Instant moment(Fields fields, Optional<HeatPlan> heat) {
        if (heat.isEmpty()) {
            return fields.requiredInstant("at");
        }
        Optional<Instant> beside = fields.instant("at");
        if (beside.isPresent() && !beside.get().equals(heat.get().at())) {
            fields.problem("at", "must equal heat.at, or be left out");
        }
        return heat.get().at();
    }

    private static HeatPlan heat(Fields fields) {
        Instant at = fields.requiredInstant("at");
        Duration length = fields.number("minutes", Range.HOURS_OR_NONE)
                .map(minutes -> ClimateReader.minutes(minutes, RoundingMode.CEILING))
                .orElse(Duration.ZERO);
        HeatPlan plan = new HeatPlan(
                at,
                length,
                PartReader.celsius(fields, "peakBodyC"),
                fields.word("purpose", HeatPlan.Purpose::parse),
                fields.flag("local"));
        fields.done();
        return plan;
    }
}
