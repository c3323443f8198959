package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TextsTest {
    /** Behind a colon, between quotes, or as the tag, number or name that something has. */
    private static final Pattern QUOTING = Pattern.compile("(: |\"|has the (\\w+ )*)<typed>");

    /** An empty tag is none and draws one; an empty number is none before it is asked to be whole. */
    private static final Set<Reason> NEVER_EMPTY =
            Set.of(Reason.TAG_TAKEN, Reason.TAG_MALFORMED, Reason.TEXT_MISSING, Reason.NUMBER_NOT_WHOLE);

    private final Texts texts = new Texts(ZoneId.of("Europe/Berlin"), Messages.load());

    @Test
    void usedHoursAreRoundedUpAndLivesDown() {
        assertThat(Texts.usedHours(new BigDecimal("12.3401"))).isEqualTo("12.35");
        assertThat(Texts.lifeHours(new BigDecimal("12.3499"))).isEqualTo("12.34");
        assertThat(Texts.usedHours(new BigDecimal("168.000000"))).isEqualTo("168");
        assertThat(Texts.lifeHours(BigDecimal.ZERO)).isEqualTo("0");
    }

    @Test
    void aMomentIsSaidInTheSitesZone() {
        Instant moment = Instant.parse("2026-03-05T13:20:59Z");

        assertThat(texts.at(moment)).isEqualTo("Thu 5 Mar 2026 14:20 (CET)");
        assertThat(texts.at(moment, Instant.parse("2026-03-03T00:00:00Z"))).isEqualTo("Thu 14:20 (CET)");
        assertThat(texts.at(moment, Instant.parse("2026-02-27T00:00:00Z"))).isEqualTo("Thu 5 Mar 2026 14:20 (CET)");
    }

    @ParameterizedTest
    @CsvSource({
        "PT0S, less than 1 min",
        "PT59S, less than 1 min",
        "PT45M, 45 min",
        "PT3H, 3 h",
        "PT3H20M59S, 3 h 20 min",
        "PT24H, 1 day",
        "PT27H59M, 1 day 3 h",
        "PT51H, 2 days 3 h",
        "PT168H, 7 days"
    })
    void timeLeftIsNeverSaidLongerThanItIs(Duration span, String words) {
        assertThat(texts.span(span)).isEqualTo(words);
    }

    @Test
    void aNegativeSpanIsRefused() {
        assertThatThrownBy(() -> texts.span(Duration.ofHours(-1))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void hoursAreCutOff() {
        assertThat(texts.hours(Duration.ofMinutes(9_335))).isEqualTo("155.5 h");
        assertThat(texts.hours(Duration.ofMinutes(59))).isEqualTo("0.9 h");
    }

    @Test
    void quantitiesCarryTheirUnits() {
        assertThat(texts.part(new Celsius(125))).isEqualTo("125 °C");
        assertThat(texts.part(new RelativeHumidity(47.5))).isEqualTo("47.5 % RH");
        assertThat(texts.part(Millimetres.of("1.4"))).isEqualTo("1.4 mm");
    }

    @Test
    void aFieldIsReadInTheSitesZone() {
        assertThat(texts.parseField("2026-03-05T14:20")).contains(Instant.parse("2026-03-05T13:20:00Z"));
        assertThat(texts.field(Instant.parse("2026-03-05T13:20:00Z"))).isEqualTo("2026-03-05T14:20");
    }

    @Test
    void theHourThatSpringLeavesOutIsNoTime() {
        assertThat(texts.parseField("2026-03-29T02:30")).isEmpty();
    }

    @Test
    void ofTheHourThatAutumnHasTwiceTheFirstIsTaken() {
        assertThat(texts.parseField("2026-10-25T02:30")).contains(Instant.parse("2026-10-25T00:30:00Z"));
    }

    @ParameterizedTest
    @CsvSource({"''", "yesterday", "2026-13-01T00:00", "2026-03-05"})
    void whatIsNoTimeIsEmpty(String text) {
        assertThat(texts.parseField(text)).isEmpty();
    }

    /** Where nothing was entered there is nothing to quote: the words say what is missing. */
    @ParameterizedTest
    @EnumSource
    void noRefusalQuotesATextThatNobodyEntered(Reason reason) {
        String words = Messages.load().text("refusal." + reason.name(), "<typed>", "x", "x", "x");
        boolean quotes = QUOTING.matcher(words).find() && !NEVER_EMPTY.contains(reason);

        String empty = texts.refusal(Refusal.of(reason, "", "x", "x", "x"));

        assertThat(quotes && empty.equals(words.replace("<typed>", "")))
                .as(empty)
                .isFalse();
    }

    @Test
    void aDayThatIsMissingIsSaidToBeMissing() {
        assertThat(texts.refusal(Refusal.of(Reason.DATE_UNREADABLE, "")))
                .isEqualTo("The day is missing. Write it as 2026-03-05, today or earlier.");
        assertThat(texts.refusal(Refusal.of(Reason.DATE_UNREADABLE, "5 March")))
                .isEqualTo("Not a day: 5 March. Write it as 2026-03-05, today or earlier.");
    }
}
