package bagclock.platform;

import bagclock.core.Refusal;
import bagclock.core.heat.Answer;
import bagclock.core.heat.Assumption;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.StepCode;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Status;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words of an answer, in the language of the bundle and the zone of the texts. */
public final class AnswerTexts {
    private static final Set<Assumption.Fact> TEMPERATURES = Set.of(
            Assumption.Fact.CLASSIFICATION,
            Assumption.Fact.CARRIER,
            Assumption.Fact.BAKE_LIMIT,
            Assumption.Fact.PAST_PEAK);

    private static final BigDecimal MS_PER_HOUR = BigDecimal.valueOf(3_600_000);

    private final Messages messages;
    private final Texts texts;

    /** Words from one bundle, times in one zone. */
    public AnswerTexts(Messages messages, Texts texts) {
        this.messages = messages;
        this.texts = texts;
    }

    /** Why. */
    public String finding(Finding finding) {
        return text("finding." + finding.code().name(), finding.parts());
    }

    /** Where the reason stands: the table's cell that decided, else the rule's source. */
    public String source(Finding finding) {
        return finding.citation().map(AnswerTexts::cell).orElse(finding.code().source());
    }

    /** Where the reason stands, and how far that may be trusted, in one sentence. */
    public String because(Finding finding) {
        return messages.text("answer.source", source(finding), texts.part(status(finding)));
    }

    /** Where a value of a table stands, and how far it may be trusted, in one sentence. */
    public String because(Citation citation) {
        return messages.text("answer.source", cell(citation), texts.part(citation.status()));
    }

    private static String cell(Citation citation) {
        String place = Stream.of(citation.document(), citation.table(), citation.row(), citation.column())
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
        return citation.sources().isEmpty() ? place : place + " (" + citation.sources() + ")";
    }

    /** How far its source may be trusted. */
    public Status status(Finding finding) {
        return finding.citation().map(Citation::status).orElse(finding.code().status());
    }

    /** Until when the heat must end, when it mends itself, or which bake comes first; empty without a reason. */
    public Optional<String> sentence(Answer answer, Instant now) {
        Optional<String> timed = switch (answer.verdict()) {
            case CLEAR -> answer.until().map(at -> messages.text("answer.until", texts.at(at, now)));
            case WAIT ->
                answer.until()
                        .map(at -> messages.text(
                                at.isAfter(now) ? "answer.wait-until" : "answer.wait-over", texts.at(at, now)));
            case BAKE -> bakeFirst(answer);
            case HOLD -> Optional.empty();
        };
        return timed.or(() -> deciding(answer));
    }

    private Optional<String> bakeFirst(Answer answer) {
        return answer.bakes().stream()
                .filter(BakeOffer::isAllowed)
                .min(Comparator.comparing(BakeOffer::time))
                .map(offer -> messages.text(
                        "answer.bake-first", bakeTime(offer.time()), texts.temperature(offer.temperature())));
    }

    private Optional<String> deciding(Answer answer) {
        return answer.reasons().stream().findFirst().map(this::finding);
    }

    /**
     * What stands under the sentence: the time left, or why it is not clear; empty where the sentence says it.
     *
     * @param length of the heat
     */
    public String aside(Answer answer, Duration length, Instant now) {
        return switch (answer.verdict()) {
            case CLEAR ->
                answer.until()
                        .filter(until -> until.isAfter(now))
                        .map(until -> messages.text(
                                "answer.left",
                                texts.span(Duration.between(now, until)),
                                texts.at(until.minus(length), now)))
                        .orElse("");
            case WAIT, BAKE -> deciding(answer).orElse("");
            case HOLD -> "";
        };
    }

    /** For example {@code 7.5 h}; never shown shorter than it is. */
    public String bakeTime(Duration time) {
        BigDecimal hours = BigDecimal.valueOf(time.toMillis()).divide(MS_PER_HOUR, 2, RoundingMode.CEILING);
        return messages.text("span.hours", hours.stripTrailingZeros().toPlainString());
    }

    /** How dry the oven must be. */
    public String bakeHumidity(BakeOffer offer) {
        return offer.maxHumidity()
                .map(most -> messages.text("answer.bake-dry", texts.humidity(most)))
                .orElseGet(() -> messages.text("answer.bake-any"));
    }

    /** What to do. */
    public String step(StepCode step) {
        return messages.text("step." + step.name());
    }

    /** What speaks against a bake, in one sentence or more. */
    public String bars(BakeOffer offer) {
        return offer.bars().stream()
                .map(bar -> text("bar." + bar.code().name(), List.of(bar.limit())))
                .collect(Collectors.joining(" "));
    }

    /** Why a missing fact was taken so. */
    public String assumption(Assumption assumption) {
        return messages.text("assumed." + assumption.fact().name());
    }

    /** What was taken in its place, temperatures with their unit. */
    public String taken(Assumption assumption) {
        String plain = assumption.as().replaceFirst("\\.0$", "");
        boolean isTemperature = TEMPERATURES.contains(assumption.fact()) && plain.matches(".*\\d");
        return isTemperature ? messages.text("assumed.temperature", plain) : plain;
    }

    /** Why a history is not possible. */
    public String refusal(Refusal refusal) {
        return texts.refusal(refusal);
    }

    private String text(String key, List<Object> parts) {
        return messages.text(key, parts.stream().map(texts::part).toArray());
    }
}
