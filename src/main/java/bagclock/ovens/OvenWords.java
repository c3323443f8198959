package bagclock.ovens;

import bagclock.core.Refusal;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.StepCode;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The words of bakes. */
final class OvenWords {
    private static final double HOUR_MS = 3_600_000;

    private final Messages messages;
    private final Texts texts;
    private final AnswerTexts answers;

    OvenWords(Texts texts) {
        this.messages = texts.messages();
        this.texts = texts;
        this.answers = new AnswerTexts(messages, texts);
    }

    String text(String key, Object... parts) {
        return messages.text(key, parts);
    }

    /** For example {@code 48 h}; to the minute, rounded up. */
    String hours(Duration time) {
        long minutes = time.plusMinutes(1).minusNanos(1).toMinutes();
        return minutes % 60 == 0
                ? messages.text("ovens.hours", minutes / 60)
                : messages.text("ovens.hours-minutes", minutes / 60, minutes % 60);
    }

    /** Hours for a field, with at most two decimals, rounded down. */
    String hoursField(Duration time) {
        return texts.number(Math.floor(time.toMillis() / HOUR_MS * 100) / 100);
    }

    /** One bake, for example {@code 90 °C for 23 h at or below 5 % RH}. */
    String offer(BakeOffer offer) {
        String temperature = texts.temperature(offer.temperature());
        return offer.maxHumidity()
                .map(most ->
                        messages.text("ovens.programme.dry", temperature, hours(offer.time()), texts.humidity(most)))
                .orElseGet(() -> messages.text("ovens.programme", temperature, hours(offer.time())));
    }

    /** The bakes that are allowed. */
    List<String> allowed(Answer answer) {
        return answer.bakes().stream()
                .filter(BakeOffer::isAllowed)
                .map(this::offer)
                .toList();
    }

    /** What speaks against a bake. */
    String bars(BakeOffer offer) {
        return answers.bars(offer);
    }

    /** Why, by the first reason. */
    String why(Answer answer) {
        return answer.reasons().stream().findFirst().map(answers::finding).orElse("");
    }

    /** By when something is needed, and how much that counts. */
    String weighed(String needed, int weight) {
        return weight == 1 ? needed : (needed + " " + messages.text("ovens.weight.times", weight)).strip();
    }

    /** What would mend it. */
    String next(List<StepCode> steps) {
        return steps.stream().map(answers::step).collect(Collectors.joining(" "));
    }

    /** What an oven can do. */
    String ability(BakeOven oven) {
        String range = messages.text(
                "ovens.ability",
                oven.positions(),
                texts.temperature(oven.lowest()),
                texts.temperature(oven.highest()),
                texts.span(oven.heatUp()));
        return range + " "
                + oven.holds()
                        .map(most -> messages.text("ovens.holds", texts.humidity(most)))
                        .orElseGet(() -> messages.text("ovens.holds.not"));
    }

    /** Refusals in words. */
    String refusals(List<Refusal> refusals) {
        return refusals.stream().map(texts::refusal).collect(Collectors.joining(" "));
    }

    /** The humidity that a bake asks for is not shown. */
    Optional<String> humidityMissing(BakeOffer offer, Optional<RelativeHumidity> shown) {
        return offer.maxHumidity()
                .filter(most -> shown.filter(is -> !is.isAbove(most)).isEmpty())
                .map(most -> messages.text("ovens.fit.humidity", texts.humidity(most)));
    }
}
