package bagclock.bench;

import bagclock.core.exposure.Share;
import bagclock.core.exposure.TrailEntry;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.StepCode;
import bagclock.core.standard.Life;
import bagclock.desk.ItemView;
import bagclock.ledger.Item;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts an answer into sentences. */
final class AnswerWords {
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
                answers.aside(answer, plan.length(), now),
                life(answer.floorLife().usedHours(), answer.floorLife().totalHours()),
                answer.reasons().stream().map(this::reason).toList(),
                answer.next().stream().map(step -> step(step, item)).toList(),
                answer.bakes().stream().map(this::bake).toList(),
                answer.assumed().stream()
                        .map(one -> new AnswerPart.Assumed(answers.assumption(one), answers.taken(one)))
                        .toList(),
                answer.trail().stream()
                        .map(entry -> stretch(entry, answer.floorLife(), now))
                        .toList());
    }

    String sentence(Answer answer, Instant now) {
        return answers.sentence(answer, now).orElse("");
    }

    /** The floor life in one sentence. */
    String life(BigDecimal usedHours, Optional<BigDecimal> totalHours) {
        return totalHours
                .map(total -> messages.text("bench.life", Texts.usedHours(usedHours), Texts.lifeHours(total)))
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
        return new AnswerPart.Reason(answers.finding(finding), answers.because(finding));
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
                answers.bakeTime(offer.time()),
                answers.bakeHumidity(offer),
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
        String hours = Texts.usedHours(share.hoursOf(total));
        return rate.filter(life -> !life.isUnlimited())
                .map(life -> messages.text("bench.trail.used", hours, Texts.lifeHours(Share.WHOLE.hoursOf(life))))
                .orElseGet(() -> messages.text("bench.trail.used-plain", hours));
    }
}
