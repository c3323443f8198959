package bagclock.ovens;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Lot;
import bagclock.core.oven.Programme;
import bagclock.core.oven.WhyLate;
import bagclock.core.oven.WhyLate.Remedy;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The words of plans. */
final class PlanWords {
    private final OvenWords words;
    private final Texts texts;

    PlanWords(OvenWords words, Texts texts) {
        this.words = words;
        this.texts = texts;
    }

    /** How good a plan is known to be, and how the search ended. */
    String goodness(StoredPlan plan) {
        String known = switch (plan.bounds().word(plan.score())) {
            case PROVED_BEST -> words.text("plan.word.best");
            case LATENESS_PROVED -> words.text("plan.word.lateness");
            case WITHIN ->
                words.text(
                        "plan.word.within",
                        words.hours(Duration.ofMinutes(
                                plan.score().late() - plan.bounds().late().orElse(0))));
            case NO_BOUND -> words.text("plan.word.none");
        };
        String search = search(plan);
        return search.isEmpty() || plan.bounds().word(plan.score()) == Bounds.Word.PROVED_BEST
                ? known
                : known + " " + search;
    }

    private String search(StoredPlan plan) {
        return switch (plan.search()) {
            case SEARCHING ->
                plan.publishedAt().isPresent() ? words.text("plan.search.stopped") : words.text("plan.search.running");
            case DONE -> "";
            case BROKEN_OFF -> words.text("plan.search.broken");
            case NO_LIBRARY -> words.text("plan.search.no-library");
            case NOT_FOR_OPENED_DOORS -> words.text("plan.search.doors");
        };
    }

    /** The bakes of a lot. */
    String programmes(Lot lot) {
        return lot.programmes().stream().map(this::programme).collect(Collectors.joining("; "));
    }

    private String programme(Programme one) {
        String temperature = texts.temperature(one.temperature());
        return one.maxHumidity()
                .map(most ->
                        words.text("ovens.programme.dry", temperature, words.hours(one.least()), texts.humidity(most)))
                .orElseGet(() -> words.text("ovens.programme", temperature, words.hours(one.least())));
    }

    /** Why a lot is late, then what would make it on time. */
    List<String> why(WhyLate why, UnaryOperator<String> nameOf, Instant now) {
        List<String> lines = new ArrayList<>();
        lines.add(words.text(
                why.cause() == WhyLate.Cause.OVENS_TAKEN ? "plan.why.taken" : "plan.why.alone",
                texts.at(why.aloneOutAt(), now)));
        why.remedies().forEach(remedy -> lines.add(remedy(remedy, nameOf, now)));
        if (why.remedies().isEmpty()) {
            lines.add(words.text("plan.remedy.none"));
        }
        return lines;
    }

    private String remedy(Remedy remedy, UnaryOperator<String> nameOf, Instant now) {
        if (remedy instanceof Remedy.FirstPlace first) {
            return words.text("plan.remedy.first", nameOf.apply(first.oven()), texts.at(first.outAt(), now));
        } else if (remedy instanceof Remedy.HotterCarrier hotter) {
            return words.text(
                    "plan.remedy.hotter", texts.temperature(hotter.temperature()), texts.at(hotter.outAt(), now));
        } else if (remedy instanceof Remedy.ReadyBy ready) {
            return words.text("plan.remedy.ready", texts.at(ready.at(), now));
        }
        Remedy.OvenBack back = (Remedy.OvenBack) remedy;
        return words.text("plan.remedy.back", nameOf.apply(back.oven()), texts.at(back.outAt(), now));
    }

    /** What a draft supposes. */
    String change(PlanChange change, UnaryOperator<String> nameOf, Instant now) {
        return switch (change.kind()) {
            case NEED ->
                change.fromAt() == null
                        ? words.text("plan.change.need.none", change.name())
                        : words.text("plan.change.need", change.name(), texts.at(change.fromAt(), now));
            case CLOSE ->
                words.text(
                        "plan.change.close",
                        nameOf.apply(change.name()),
                        at(change.fromAt(), now),
                        at(change.toAt(), now));
            case RUSH ->
                words.text(
                        "plan.change.rush",
                        change.name(),
                        words.weighed(
                                at(change.toAt(), now),
                                Optional.ofNullable(change.weight()).orElse(1)));
            case PIN -> words.text("plan.change.pin", change.name());
            case UNPIN -> words.text("plan.change.unpin", change.name());
            case MOVE ->
                words.text(
                        "plan.change.move",
                        change.name(),
                        nameOf.apply(String.valueOf(change.oven())),
                        at(change.fromAt(), now));
        };
    }

    private String at(@Nullable Instant moment, Instant now) {
        return moment == null ? "" : texts.at(moment, now);
    }
}
