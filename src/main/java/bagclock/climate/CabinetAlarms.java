package bagclock.climate;

import bagclock.core.heat.Answer;
import bagclock.desk.ChangedAnswer;
import bagclock.desk.Desk;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Says of cabinets that did not hold their class lately which items answer otherwise for it. */
final class CabinetAlarms {
    private static final Duration LATELY = Duration.ofDays(3);
    private static final int MOST_ITEMS = 200;

    private final ClimateStore store;
    private final Desk desk;
    private final Messages messages;
    private final Texts texts;

    CabinetAlarms(ClimateStore store, Desk desk, Texts texts) {
        this.store = store;
        this.desk = desk;
        this.messages = texts.messages();
        this.texts = texts;
    }

    List<ClimatePage.Changed> changed(List<KnownPlace> places, Instant now) {
        List<ClimatePage.Changed> changed = new ArrayList<>();
        for (KnownPlace place : places) {
            if (place instanceof KnownPlace.DryCabinet cabinet && cabinet.logged() && wasAbove(cabinet, now)) {
                List<ClimatePage.Item> items =
                        desk.air().changedBy(cabinet, now.minus(LATELY), now, MOST_ITEMS).stream()
                                .map(item -> new ClimatePage.Item(item.tag(), words(item, now)))
                                .toList();
                if (!items.isEmpty()) {
                    String title = messages.text("climate.changed.title", cabinet.name());
                    changed.add(new ClimatePage.Changed(title, items));
                }
            }
        }
        return changed;
    }

    private boolean wasAbove(KnownPlace.DryCabinet cabinet, Instant now) {
        return store.between(cabinet.zone(), now.minus(LATELY), now).stream()
                .anyMatch(reading ->
                        reading.air().humidity().isAbove(cabinet.limit().limit()));
    }

    private String words(ChangedAnswer changed, Instant now) {
        return messages.text(
                "climate.changed.item", changed.tag(), words(changed.held(), now), words(changed.now(), now));
    }

    private String words(Answer answer, Instant now) {
        String verdict = messages.text("verdict." + answer.verdict().code());
        return answer.floorLife()
                .endsAt()
                .map(end -> messages.text("climate.changed.answer.until", verdict, texts.at(end, now)))
                .or(() -> answer.floorLife()
                        .remainingHours()
                        .map(hours -> messages.text("climate.changed.answer.left", verdict, texts.span(span(hours)))))
                .orElse(messages.text("climate.changed.answer", verdict));
    }

    /** Rounded down, so that no more is said than is left. */
    private static Duration span(BigDecimal hours) {
        return Duration.ofMillis(hours.movePointRight(3)
                .multiply(BigDecimal.valueOf(3600))
                .setScale(0, RoundingMode.FLOOR)
                .longValueExact());
    }
}
