package bagclock.labels;

import bagclock.core.exposure.CardRule;
import bagclock.core.exposure.DryPack;
import bagclock.core.exposure.PartHistory;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Verdict;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Level;
import bagclock.core.standard.Rating;
import bagclock.desk.ItemView;
import bagclock.ledger.Item;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.PartType;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the labels say. A label outlives its moment, so every time stands there with its date. */
final class LabelWords {
    private static final Duration IN_HOURS_UP_TO = Duration.ofHours(96);

    private final Messages messages;
    private final Texts texts;
    private final AnswerTexts answers;

    LabelWords(Texts texts) {
        this.messages = texts.messages();
        this.texts = texts;
        this.answers = new AnswerTexts(messages, texts);
    }

    /** The label of an item as it is now. */
    LabelText item(ItemView view, PartHistory history) {
        List<String> lines = new ArrayList<>();
        lines.add(part(view));
        if (view.item().where() == Item.Where.BAG) {
            DryPack.last(history).ifPresent(bag -> lines.add(shelf(bag)));
        }
        levelSix(view).ifPresent(lines::add);
        if (view.item().where() != Item.Where.OVEN) {
            lines.addAll(bakes(view));
        }
        String caution = messages.text("labels.caution.item", texts.at(history.moment()));
        return new LabelText(view.item().tag(), sentence(view), lines, caution);
    }

    /** The label of a bag that the site closed. */
    LabelText bag(ItemView view, PartHistory history) {
        List<String> lines = new ArrayList<>();
        Optional<DryPack> bag = DryPack.last(history).filter(one -> view.item().where() == Item.Where.BAG);
        bag.ifPresent(one -> lines.add(messages.text("labels.shelf", texts.at(one.shelfEndsAt()))));
        lines.add(part(view));
        afterOpening(view.answer()).ifPresent(lines::add);
        card(view).ifPresent(lines::add);
        levelSix(view).ifPresent(lines::add);
        lines.addAll(bakes(view));
        String sentence = bag.map(one -> messages.text("labels.closed", texts.at(one.closedAt())))
                .orElseGet(() -> messages.text("labels.not-closed"));
        return new LabelText(view.item().tag(), sentence, lines, messages.text("labels.caution.bag"));
    }

    /** A label of many words: an item in a closed bag, whose bake is told too. */
    LabelText wordy(Instant now) {
        String at = texts.at(now);
        String bake =
                messages.text("labels.bake.words", texts.span(IN_HOURS_UP_TO), texts.temperature(new Celsius(125)));
        return new LabelText(
                "R10014",
                messages.text("labels.in-bag"),
                List.of(
                        messages.text("labels.part", "HQ-1001", messages.text("labels.pieces", 500), "3"),
                        messages.text("labels.closed-shelf", at, at),
                        messages.text("labels.bake.unpacked", bake)),
                messages.text("labels.caution.item", at));
    }

    private String part(ItemView view) {
        return messages.text(
                "labels.part", view.item().partType(), pieces(view.item().quantity()), level(view));
    }

    private String pieces(long quantity) {
        return quantity == 1 ? messages.text("labels.piece") : messages.text("labels.pieces", quantity);
    }

    private String level(ItemView view) {
        PartType type = view.partType().fact();
        return type.part().ratings().stream().map(this::rating).collect(Collectors.joining("; "));
    }

    private String rating(Rating rating) {
        String level = rating.level().map(Level::code).orElseGet(() -> messages.text("labels.level.unknown"));
        return rating.peak()
                .map(peak -> messages.text("labels.level.at", level, texts.temperature(peak)))
                .orElse(level);
    }

    private String sentence(ItemView view) {
        Answer answer = view.answer();
        if (view.item().ended()) {
            return messages.text("labels.gone");
        }
        return switch (answer.verdict()) {
            case CLEAR -> answer.until().map(until -> byWhen(view, until)).orElseGet(() -> standing(answer));
            case WAIT ->
                answer.until()
                        .map(until -> messages.text("labels.wait.until", texts.at(until)))
                        .orElseGet(() -> messages.text("labels.wait"));
            case BAKE -> messages.text("labels.bake-first");
            case HOLD ->
                view.item().where() == Item.Where.BAG
                        ? messages.text("labels.in-bag")
                        : messages.text(
                                "labels.hold", answers.finding(answer.reasons().get(0)));
        };
    }

    private String byWhen(ItemView view, Instant until) {
        String end = texts.at(until);
        return view.item()
                .placeCode()
                .map(place -> messages.text("labels.until.at", end, place))
                .orElseGet(() -> messages.text("labels.until", end));
    }

    private String standing(Answer answer) {
        return answer.floorLife()
                .remainingHours()
                .map(left -> messages.text("labels.paused", hours(left)))
                .orElseGet(() -> messages.text("labels.no-limit"));
    }

    private String shelf(DryPack bag) {
        return messages.text("labels.closed-shelf", texts.at(bag.closedAt()), texts.at(bag.shelfEndsAt()));
    }

    /** What is left of the floor life; of a clock that a bag does not stop, when it ends. */
    private Optional<String> afterOpening(Answer answer) {
        return answer.floorLife()
                .endsAt()
                .map(end -> messages.text("labels.runs-on", texts.at(end)))
                .or(() -> answer.floorLife()
                        .remainingHours()
                        .map(left -> messages.text("labels.after-opening", hours(left))));
    }

    private Optional<String> levelSix(ItemView view) {
        return view.partType().fact().part().ratings().stream()
                        .anyMatch(rating -> rating.level()
                                .filter(level -> level == Level.L6)
                                .isPresent())
                ? Optional.of(messages.text("labels.level-6"))
                : Optional.empty();
    }

    private Optional<String> card(ItemView view) {
        return view.partType().fact().part().ratings().stream()
                .flatMap(rating -> rating.level().stream())
                .filter(Level::hasFloorLife)
                .max(Comparator.naturalOrder())
                .map(level ->
                        messages.text("labels.card", texts.humidity(new RelativeHumidity(CardRule.neededSpot(level)))));
    }

    /** The shortest bake that is allowed as it is; and a shorter one that only the carrier bars. */
    private List<String> bakes(ItemView view) {
        Answer answer = view.answer();
        List<String> lines = new ArrayList<>();
        Optional<BakeOffer> here =
                shortest(answer.bakes().stream().filter(BakeOffer::isAllowed).toList());
        Optional<BakeOffer> elsewhere = shortest(
                answer.bakes().stream().filter(LabelWords::barsOnlyCarrier).toList());
        String key = view.item().where() == Item.Where.BAG ? "labels.bake.unpacked" : "labels.bake";
        here.ifPresent(bake -> lines.add(messages.text(key, bake(bake))));
        elsewhere
                .filter(other -> here.filter(bake -> bake.time().compareTo(other.time()) <= 0)
                        .isEmpty())
                .ifPresent(other -> lines.add(messages.text("labels.bake.elsewhere", bake(other))));
        if (lines.isEmpty() && answer.verdict() == Verdict.BAKE) {
            lines.add(messages.text("labels.bake.ask"));
        }
        return lines;
    }

    private static boolean barsOnlyCarrier(BakeOffer bake) {
        return !bake.isAllowed() && bake.bars().stream().allMatch(bar -> bar.code() == BakeOffer.BarCode.CARRIER);
    }

    private static Optional<BakeOffer> shortest(List<BakeOffer> bakes) {
        return bakes.stream().min(Comparator.comparing(BakeOffer::time));
    }

    private String bake(BakeOffer bake) {
        String words = messages.text("labels.bake.words", time(bake.time()), texts.temperature(bake.temperature()));
        return bake.maxHumidity()
                .map(most -> messages.text("labels.bake.dry", words, texts.humidity(most)))
                .orElse(words);
    }

    /** Short bakes in hours, long ones in days, as the trade tells them. */
    private String time(Duration time) {
        return time.toMinutesPart() == 0 && time.compareTo(IN_HOURS_UP_TO) <= 0
                ? messages.text("span.hours", time.toHours())
                : texts.span(time);
    }

    private static String hours(BigDecimal hours) {
        return hours.setScale(1, RoundingMode.DOWN).stripTrailingZeros().toPlainString();
    }
}
