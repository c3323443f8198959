package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.Assumption;
import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words of an answer: what was taken in the place of a missing fact is said with its unit. */
class AnswerTextsTest {
    private static final Messages MESSAGES = Messages.load();
    private static final AnswerTexts ANSWERS = new AnswerTexts(MESSAGES, new Texts(ZoneOffset.UTC, MESSAGES));

    @ParameterizedTest
    @CsvSource({
        "CLASSIFICATION, 220.0, 220 °C",
        "CARRIER, 40.0, 40 °C",
        "PAST_PEAK, above 200, above 200 °C",
        "EDGES, above 17 mm, above 17 mm",
        "CARD, none, none",
    })
    void aTemperatureTakenHasItsUnit(Assumption.Fact fact, String as, String words) {
        assertThat(ANSWERS.taken(new Assumption(fact, as))).isEqualTo(words);
    }
}
