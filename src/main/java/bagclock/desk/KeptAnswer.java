package bagclock.desk;

import bagclock.core.heat.Verdict;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Status;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * An answer that was acted on, read back from the ledger.
 *
 * @param until clear: the heat had to end by then; wait: when it would mend itself
 * @param usedHours of {@code totalHours}; 0 without a total
 * @param totalHours empty if unlimited or none
 * @param bakeCells the cells of the bakes that were asked for; none unless the verdict is bake
 */
public record KeptAnswer(
        Verdict verdict,
        Optional<Instant> until,
        BigDecimal usedHours,
        Optional<BigDecimal> totalHours,
        List<Reason> reasons,
        List<String> bakeCells) {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String DEGREES = " C";

    /** Keeps its own copy. */
    public KeptAnswer {
        reasons = List.copyOf(reasons);
        bakeCells = List.copyOf(bakeCells);
    }

    /**
     * One reason.
     *
     * @param code of then; a later release may not know it
     * @param parts instants, durations, temperatures and texts
     * @param source of the table cell that decided, if one did
     */
    public record Reason(String code, List<Object> parts, Optional<String> source, Optional<Status> status) {
        /** Keeps its own copy. */
        public Reason {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Reads what the ledger keeps.
     *
     * @throws IllegalStateException when it is no kept answer
     */
    public static KeptAnswer parse(String text) {
        try {
            JsonNode json = JSON.readTree(text);
            List<Reason> reasons = new ArrayList<>();
            json.path("reasons").forEach(reason -> reasons.add(reason(reason)));
            List<String> bakeCells = new ArrayList<>();
            json.path("bakes").forEach(cell -> bakeCells.add(cell.asText()));
            return new KeptAnswer(
                    verdict(json.path("verdict").asText()),
                    text(json, "until").map(Instant::parse),
                    text(json, "usedHours").map(BigDecimal::new).orElse(BigDecimal.ZERO),
                    text(json, "totalHours").map(BigDecimal::new),
                    reasons,
                    bakeCells);
        } catch (JsonProcessingException failure) {
            throw new IllegalStateException("no kept answer: " + text, failure);
        }
    }

    private static Verdict verdict(String code) {
        return Arrays.stream(Verdict.values())
                .filter(verdict -> verdict.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no verdict: " + code));
    }

    private static Optional<String> text(JsonNode json, String field) {
        return Optional.ofNullable(json.get(field)).map(JsonNode::asText);
    }

    private static Reason reason(JsonNode json) {
        List<Object> parts = new ArrayList<>();
        json.path("parts").forEach(part -> parts.add(typed(part.asText())));
        return new Reason(
                json.path("code").asText(),
                parts,
                text(json, "source"),
                text(json, "status").map(Status::valueOf));
    }

    /** A part of a reason as text; {@link #typed} reads it. */
    static String written(Object part) {
        return part instanceof Celsius temperature ? temperature.degrees() + DEGREES : part.toString();
    }

    private static Object typed(String text) {
        try {
            if (text.matches("-?\\d+(\\.\\d+)?" + DEGREES)) {
                return new Celsius(Double.parseDouble(text.substring(0, text.length() - DEGREES.length())));
            } else if (text.startsWith("PT")) {
                return Duration.parse(text);
            }
            return text.matches("\\d{4}-.*Z") ? Instant.parse(text) : text;
        } catch (DateTimeException notATime) {
            return text;
        }
    }
}
