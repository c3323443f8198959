package bagclock.assess;

import bagclock.core.exposure.Share;
import bagclock.core.exposure.TrailEntry;
import bagclock.core.heat.Answer;
import bagclock.core.heat.Assumption;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.BoardAnswer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.StepCode;
import bagclock.core.standard.Life;
import bagclock.platform.AnswerTexts;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Writes an answer in the layout of the contract: times in UTC, temperatures in C, durations in hours. */
final class AnswerWriter {
    private static final BigDecimal MS_PER_HOUR = BigDecimal.valueOf(3_600_000);
    private static final int DIGITS = 9;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final AnswerTexts text;

    AnswerWriter(AnswerTexts text) {
        this.text = text;
    }

    ObjectNode board(BoardAnswer board, List<Assumption> counted) {
        ObjectNode node = part(board.whole(), counted);
        ArrayNode parts = node.putArray("parts");
        for (BoardAnswer.At at : board.parts()) {
            ObjectNode part = parts.addObject().put("location", at.location());
            part.setAll(part(at.answer(), List.of()));
        }
        return node;
    }

    ObjectNode part(Answer answer, List<Assumption> counted) {
        ObjectNode node = NODES.objectNode();
        node.put("verdict", answer.verdict().code());
        node.set("until", time(answer.until()));
        node.set("floorLife", floorLife(answer.floorLife()));
        node.put("clock", answer.clock().code());
        node.set("bakeColumn", orNull(answer.bakeColumn(), column -> TextNode.valueOf(column.code())));
        ArrayNode bakes = node.putArray("bakes");
        answer.bakes().forEach(bake -> bakes.add(bake(bake)));
        ArrayNode reasons = node.putArray("reasons");
        answer.reasons().forEach(finding -> reasons.add(reason(finding)));
        ArrayNode next = node.putArray("next");
        answer.next().forEach(step -> next.add(step(step)));
        ArrayNode assumed = node.putArray("assumed");
        answer.assumed().forEach(one -> assumed.add(assumed(one)));
        counted.forEach(one -> assumed.add(assumed(one)));
        ArrayNode trail = node.putArray("trail");
        Optional<Life> total = answer.floorLife().total().map(cited -> cited.value());
        answer.trail().forEach(entry -> trail.add(trail(entry, total)));
        return node;
    }

    private static ObjectNode floorLife(Answer.FloorLife life) {
        ObjectNode node = NODES.objectNode();
        node.set("totalHours", orNull(life.totalHours(), AnswerWriter::decimal));
        node.set("usedHours", decimal(life.usedHours()));
        node.set("remainingHours", orNull(life.remainingHours(), AnswerWriter::decimal));
        node.set("endsAt", time(life.endsAt()));
        return node;
    }

    private ObjectNode bake(BakeOffer bake) {
        ObjectNode node = NODES.objectNode();
        node.set("temperatureC", decimal(BigDecimal.valueOf(bake.temperature().degrees())));
        node.set("hours", decimal(hours(bake.time())));
        node.set("maxRhPercent", orNull(bake.maxHumidity(), rh -> decimal(BigDecimal.valueOf(rh.percent()))));
        node.put("allowed", bake.isAllowed());
        node.set("why", bake.isAllowed() ? NullNode.getInstance() : TextNode.valueOf(text.bars(bake)));
        return node;
    }

    private ObjectNode reason(Finding finding) {
        ObjectNode node = NODES.objectNode();
        node.put("code", finding.code().name());
        node.put("text", text.finding(finding));
        node.put("source", text.source(finding));
        node.put("status", text.status(finding).code());
        return node;
    }

    private ObjectNode step(StepCode step) {
        return NODES.objectNode()
                .put("code", step.name())
                .put("text", text.step(step))
                .put("role", step.role().code());
    }

    private ObjectNode assumed(Assumption one) {
        return NODES.objectNode()
                .put("fact", one.fact().field())
                .put("as", one.as())
                .put("why", text.assumption(one));
    }

    private static ObjectNode trail(TrailEntry entry, Optional<Life> total) {
        ObjectNode node = NODES.objectNode();
        node.put("from", entry.from().toString());
        node.put("to", entry.to().toString());
        node.put("where", entry.where().code());
        node.set("zone", orNull(entry.zone(), zone -> TextNode.valueOf(zone.name())));
        node.set(
                "temperatureC",
                orNull(
                        entry.air(),
                        air -> decimal(BigDecimal.valueOf(air.temperature().degrees()))));
        node.set(
                "rhPercent",
                orNull(
                        entry.air(),
                        air -> decimal(BigDecimal.valueOf(air.humidity().percent()))));
        node.set(
                "floorLifeHours",
                orNull(entry.life().filter(life -> !life.isUnlimited()), life -> decimal(Share.WHOLE.hoursOf(life))));
        node.set("usedHours", decimal(total.map(entry.used()::hoursOf).orElse(BigDecimal.ZERO)));
        return node;
    }

    private static BigDecimal hours(Duration duration) {
        return BigDecimal.valueOf(duration.toMillis()).divide(MS_PER_HOUR, MathContext.DECIMAL64);
    }

    private static JsonNode decimal(BigDecimal value) {
        BigDecimal rounded = value.setScale(DIGITS, RoundingMode.HALF_UP).stripTrailingZeros();
        return DecimalNode.valueOf(rounded.scale() < 1 ? rounded.setScale(1) : rounded);
    }

    private static JsonNode time(Optional<Instant> instant) {
        return orNull(instant, moment -> TextNode.valueOf(moment.toString()));
    }

    private static <T> JsonNode orNull(Optional<T> value, Function<T, JsonNode> write) {
        return value.map(write).orElse(NullNode.getInstance());
    }
}
