package bagclock.bench;

import bagclock.core.exposure.Share;
import bagclock.core.exposure.TrailEntry;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.StepCode;
import bagclock.core.heat.Verdict;
import bagclock.core.standard.Life;
import bagclock.desk.ItemView;
import bagclock.ledger.Item;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts an answer into sentences. */
final class AnswerWords {
    private static final BigDecimal MS_PER_HOUR = BigDecimal.valueOf(3_600_000);

    private final Messages messages;
    private final Texts texts;
    private final AnswerTexts answers;

    AnswerWords(Texts texts) {
        this.messages = texts.messages();
        this.texts = texts;
        this.answers = new AnswerTexts(messages, texts);
    }

    AnswerPart of(ItemView view, HeatPlan plan, Answer answer, Instant now) {
        Item item = view.item();
        String part = item.partType();
        return new AnswerPart(
                item.tag(),
                part,
                view.partType().fact().description(),
                where(item),
                answer.verdict().code(),
                sentence(answer, now),
                aside(answer, plan, now),
                life(answer.floorLife().usedHours(), answer.floorLife().totalHours()),
                answer.reasons().stream().map(this::reason).toList(),
                answer.next().stream().map(step -> step(step, item)).toList(),
                answer.bakes().stream().map(this::bake).toList(),
                answer.assumed().stream()
                        .map(one -> new AnswerPart.Assumed(answers.assumption(one), one.as()))
                        .toList(),
                answer.trail().stream()
                        .map(entry -> stretch(entry, answer.floorLife(), now))
                        .toList());
    }

    /** What to do, in one sentence that stands beside the verdict's word. */
    String sentence(Answer answer, Instant now) {
        Optional<String> until = answer.until().map(at -> texts.at(at, now));
        return switch (answer.verdict()) {
            case CLEAR -> until.map(at -> messages.text("bench.until", at)).orElseGet(() -> deciding(answer));
            case WAIT ->
                until.map(at -> messages.text(isOver(answer, now) ? "bench.wait-over" : "bench.wait-until", at))
                        .orElseGet(() -> deciding(answer));
            case BAKE -> bakeFirst(answer);
            case HOLD -> deciding(answer);
        };
    }

    /** The bake has been long enough, but nobody has written down its end. */
    private static boolean isOver(Answer answer, Instant now) {
        return answer.until().filter(until -> !until.isAfter(now)).isPresent();
    }

    private String bakeFirst(Answer answer) {
        return answer.bakes().stream()
                .filter(BakeOffer::isAllowed)
                .min(Comparator.comparing(BakeOffer::time))
                .map(offer ->
                        messages.text("bench.bake-first", hours(offer.time()), texts.temperature(offer.temperature())))
                .orElseGet(() -> deciding(answer));
    }

    private String deciding(Answer answer) {
        return answer.reasons().stream().findFirst().map(answers::finding).orElse("");
    }

    private String aside(Answer answer, HeatPlan plan, Instant now) {
        if (answer.verdict() == Verdict.CLEAR) {
            return answer.until()
                    .filter(until -> until.isAfter(now))
                    .map(until -> messages.text(
                            "bench.left",
                            texts.span(Duration.between(now, until)),
                            texts.at(until.minus(plan.length()), now)))
                    .orElse("");
        }
        boolean isSentence = answer.verdict() == Verdict.HOLD;
        return isSentence ? "" : deciding(answer);
    }

    /** The floor life in one sentence. */
    String life(BigDecimal usedHours, Optional<BigDecimal> totalHours) {
        return totalHours
                .map(total -> messages.text("bench.life", used(usedHours), plain(total)))
                .orElseGet(() -> messages.text("bench.life.none"));
    }

    private String where(Item item) {
        String kind = messages.text("bench.in." + item.where().name());
        if (item.board().isPresent()) {
            return messages.text(
                    "bench.on-board", item.board().get(), item.location().orElse(""));
        }
        return item.placeCode().map(code -> kind + ", " + code).orElse(kind);
    }

    private AnswerPart.Reason reason(Finding finding) {
        String source = messages.text("bench.source", answers.source(finding), texts.part(answers.status(finding)));
        return new AnswerPart.Reason(answers.finding(finding), source);
    }

    private AnswerPart.Step step(StepCode step, Item item) {
        String where = place(step);
        return new AnswerPart.Step(
                answers.step(step),
                messages.text("role." + step.role().name()),
                href(where, item),
                messages.has("bench.go." + where) ? messages.text("bench.go." + where) : "");
    }

    private static String place(StepCode step) {
        return switch (step) {
            case OPEN_AND_READ_CARD, CHANGE_CARRIER, WAIT_IN_DRY_STORAGE, ENTER_BOARD_LIMIT -> "item";
            case ENTER_LEVEL, MEASURE_BODY, MEASURE_EDGES, ENTER_BAKE_LIMIT, ENTER_MAKERS_BAKE, ENTER_LABEL_TIME ->
                "part";
            case BAKE, WAIT_FOR_OVEN, RECORD_BAKE_END -> "ovens";
            case LOWER_THE_PEAK -> "plan";
            case TAKE_ANOTHER_PART -> "another";
            case ASK_ENGINEER -> "nowhere";
        };
    }

    private static String href(String place, Item item) {
        return switch (place) {
            case "item" -> "/scan?code=" + encoded(item.tag());
            case "part" -> "/parts/type?number=" + encoded(item.partType());
            case "ovens" -> "/ovens";
            case "plan" -> "#peak";
            case "another" -> "#code";
            default -> "";
        };
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private AnswerPart.Bake bake(BakeOffer offer) {
        return new AnswerPart.Bake(
                texts.temperature(offer.temperature()),
                hours(offer.time()),
                offer.maxHumidity()
                        .map(rh -> messages.text("bench.bake.dry", texts.humidity(rh)))
                        .orElseGet(() -> messages.text("bench.bake.any")),
                answers.bars(offer));
    }

    private AnswerPart.Stretch stretch(TrailEntry entry, Answer.FloorLife life, Instant now) {
        Optional<Life> total = life.total().map(cited -> cited.value());
        String place = Stream.of(
                        Optional.of(messages.text("bench.trail." + entry.where().name())),
                        entry.zone().map(zone -> zone.name()),
                        entry.air().map(air -> texts.temperature(air.temperature())),
                        entry.air().map(air -> texts.humidity(air.humidity())))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return new AnswerPart.Stretch(
                messages.text("bench.trail.from-to", texts.at(entry.from(), now), texts.at(entry.to(), now)),
                place,
                total.map(all -> used(entry.used(), all, entry.life())).orElse(""));
    }

    private String used(Share share, Life total, Optional<Life> rate) {
        String hours = used(share.hoursOf(total));
        return rate.filter(life -> !life.isUnlimited())
                .map(life -> messages.text("bench.trail.used", hours, plain(Share.WHOLE.hoursOf(life))))
                .orElseGet(() -> messages.text("bench.trail.used-plain", hours));
    }

    /** A bake's time is never shown shorter than it is. */
    private String hours(Duration time) {
        BigDecimal hours = BigDecimal.valueOf(time.toMillis()).divide(MS_PER_HOUR, 2, RoundingMode.CEILING);
        return messages.text("span.hours", plain(hours));
    }

    /** Nor is what was used. */
    private static String used(BigDecimal hours) {
        return plain(hours.setScale(2, RoundingMode.CEILING));
    }

    private static String plain(BigDecimal number) {
        return number.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
