package bagclock.assess;

import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.ZoneOffset;
import java.util.List;

/** Asks the contract as the command line does. */
final class Asked {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final AssessContract CONTRACT = contract();

    private Asked() {}

    private static AssessContract contract() {
        Messages messages = Messages.load();
        return new AssessContract(
                Standard.load(Edition.J_STD_033D), new AnswerTexts(messages, new Texts(ZoneOffset.UTC, messages)));
    }

    static JsonNode answer(String request) {
        try {
            return JSON.readTree(CONTRACT.answer(request));
        } catch (JsonProcessingException notJson) {
            throw new AssertionError(notJson);
        }
    }

    /** What is wrong with a request; fails if it is answered. */
    static List<String> problems(String request) {
        try {
            throw new AssertionError("answered: " + CONTRACT.answer(request));
        } catch (BadRequest bad) {
            return bad.problems();
        }
    }
}
