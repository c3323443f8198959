package bagclock.assess;

import bagclock.core.heat.Assess;
import bagclock.core.heat.AssessBoard;
import bagclock.core.heat.SealedProof;
import bagclock.core.standard.Standard;
import bagclock.platform.AnswerTexts;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** One JSON text with a request, or with an array of them, in; one JSON text with the answers out. Stateless. */
public final class AssessContract {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private final Supplier<Standard> tables;
    private final AnswerTexts text;
    private final AnswerWriter writer;

    /**
     * Answers by tables of the standard, in the words of a text.
     *
     * @param tables asked anew for each request, since a site may correct a cell
     */
    public AssessContract(Supplier<Standard> tables, AnswerTexts text) {
        this.tables = tables;
        this.text = text;
        this.writer = new AnswerWriter(text);
    }

    /** Answers by these tables alone. */
    public AssessContract(Standard standard, AnswerTexts text) {
        this(() -> standard, text);
    }

    /**
     * Answers a request or an array of requests, in the same order.
     *
     * @throws BadRequest with every problem, each named by its field, and in an array by its place from 0
     */
    public String answer(String json) {
        JsonNode request = parse(json);
        try {
            return JSON.writeValueAsString(request.isArray() ? all((ArrayNode) request) : one(request));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static JsonNode parse(String json) {
        try {
            JsonNode request = JSON.readTree(json);
            boolean known = request != null && (request.isObject() || request.isArray());
            if (!known) {
                throw new BadRequest(List.of("the request must be a JSON object or an array of them"));
            }
            return request;
        } catch (JsonProcessingException notJson) {
            throw new BadRequest(List.of("the request is not JSON: " + notJson.getOriginalMessage()));
        }
    }

    private JsonNode all(ArrayNode requests) {
        List<String> problems = new ArrayList<>();
        ArrayNode answers = JSON.createArrayNode();
        for (int i = 0; i < requests.size(); i++) {
            try {
                answers.add(one(requests.get(i)));
            } catch (BadRequest bad) {
                int index = i;
                bad.problems().forEach(problem -> problems.add("[" + index + "] " + problem));
            }
        }
        if (!problems.isEmpty()) {
            throw new BadRequest(problems);
        }
        return answers;
    }

    private JsonNode one(JsonNode json) {
        Standard standard = tables.get();
        AssessRequest request = RequestReader.read(json, text::refusal);
        request.part()
                .flatMap(question -> SealedProof.refusal(standard, question.history()))
                .ifPresent(refusal -> {
                    throw new BadRequest(List.of("history: " + text.refusal(refusal)));
                });
        return request.part()
                .map(question -> writer.part(Assess.of(standard, question), request.counted()))
                .orElseGet(() ->
                        writer.board(AssessBoard.of(standard, request.board().orElseThrow()), request.counted()));
    }
}
