package bagclock.ovens;

import bagclock.core.oven.Lot;
import bagclock.core.oven.Plan;
import bagclock.core.oven.Programme;
import bagclock.core.oven.Run;
import bagclock.core.oven.WhyLate;
import bagclock.ovens.Ovens.Waiting;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts the lots of a plan into words: the latest first, then by the time that they are needed. */
final class LotLines {
    private final OvenWords words;
    private final Texts texts;
    private final PlanWords planWords;
    private final ShopNow shop;
    private final ShopNow.Supposed supposed;

    LotLines(OvenWords words, Texts texts, ShopNow shop, ShopNow.Supposed supposed) {
        this.words = words;
        this.texts = texts;
        this.planWords = new PlanWords(words, texts);
        this.shop = shop;
        this.supposed = supposed;
    }

    List<PlanPage.LotLine> of(Plan plan, Instant now) {
        Comparator<Lot> latest = Comparator.comparing(lot -> late(lot, plan), Comparator.reverseOrder());
        return supposed.intake().shop().lots().stream()
                .sorted(latest.thenComparing(lot -> lot.wish().neededBy().orElse(Instant.MAX))
                        .thenComparing(Lot::tag))
                .map(lot -> line(lot, plan, now))
                .toList();
    }

    /** How much it is late; nothing if it is not. */
    private static Duration late(Lot lot, Plan plan) {
        return spare(lot, plan)
                .filter(Duration::isNegative)
                .map(Duration::negated)
                .orElse(Duration.ZERO);
    }

    /** From when it is out until it is needed; negative if it is late. */
    private static Optional<Duration> spare(Lot lot, Plan plan) {
        return plan.stay(lot.tag())
                .flatMap(stay -> lot.wish().neededBy().map(by -> Duration.between(stay.outAt(), by)));
    }

    private PlanPage.LotLine line(Lot lot, Plan plan, Instant now) {
        Optional<Waiting> waiting = shop.queue().stream()
                .filter(one -> one.view().item().tag().equals(lot.tag()))
                .findFirst();
        boolean isLate = !late(lot, plan).isZero();
        return new PlanPage.LotLine(
                lot.tag(),
                waiting.map(one -> OvenPages.part(one.view())).orElse(""),
                Integer.toString(lot.positions()),
                planWords.programmes(lot),
                needed(lot, now),
                plan.runOf(lot.tag())
                        .flatMap(run -> plan.stay(lot.tag()).map(stay -> in(run, stay, now)))
                        .orElse(""),
                plan.stay(lot.tag())
                        .map(stay -> texts.at(stay.outAt(), now))
                        .orElseGet(() -> words.text("plan.lot.unplanned")),
                isLate ? words.text("plan.lot.late", words.hours(late(lot, plan))) : "",
                isLate ? "" : early(lot, plan),
                isLate ? why(lot, waiting, now) : List.of());
    }

    private String needed(Lot lot, Instant now) {
        Optional<String> by = lot.wish().neededBy().map(time -> texts.at(time, now));
        String said = supposed.patient().contains(lot.tag())
                ? by.map(time -> words.text("plan.lot.patient", time)).orElseGet(() -> words.text("plan.lot.whenever"))
                : by.orElse("");
        return words.weighed(said, lot.wish().weight());
    }

    private String in(Run run, Run.Stay stay, Instant now) {
        return words.text(
                "plan.lot.in",
                shop.nameOf(run.oven()),
                texts.temperature(run.temperature()),
                texts.at(stay.inAt(), now));
    }

    private String early(Lot lot, Plan plan) {
        return supposed.patient().contains(lot.tag())
                ? ""
                : spare(lot, plan)
                        .map(spare -> words.text("plan.lot.early", words.hours(spare)))
                        .orElse("");
    }

    private List<String> why(Lot lot, Optional<Waiting> waiting, Instant now) {
        List<Programme> barred =
                waiting.map(one -> LotOf.barredByCarrier(one.view(), now)).orElse(List.of());
        return planWords.why(WhyLate.of(supposed.intake().shop(), lot, barred), shop::nameOf, now);
    }
}
