package bagclock.ovens;

import bagclock.core.oven.Lot;
import bagclock.core.oven.Plan;
import bagclock.core.oven.PlanSum;
import bagclock.core.oven.Programme;
import bagclock.core.oven.Replan;
import bagclock.core.oven.Run;
import bagclock.core.oven.Shop;
import bagclock.ovens.Ovens.Waiting;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts a plan on a page. */
final class PlanPages {
    /** What the axis may show. */
    static final Map<String, Duration> RANGES = Map.of(
            "day", Duration.ofHours(24),
            "days", Duration.ofDays(3),
            "weeks", Duration.ofDays(14),
            "month", Duration.ofDays(35));

    private static final List<String> ORDER = List.of("day", "days", "weeks", "month");
    private static final int MOST_NEXT = 8;

    private final OvenWords words;
    private final Texts texts;
    private final PlanWords planWords;

    PlanPages(OvenWords words, Texts texts) {
        this.words = words;
        this.texts = texts;
        this.planWords = new PlanWords(words, texts);
    }

    /**
     * What a page is made of.
     *
     * @param shown the plan; empty if none was ever published
     * @param done what was just done, in words
     */
    record Shown(ShopNow shop, ShopNow.Supposed supposed, Optional<StoredPlan> shown, String range, String done) {
        Plan plan() {
            return shown.map(StoredPlan::plan).orElseGet(() -> new Plan(List.of()));
        }

        boolean isDraft() {
            return shown.filter(plan -> plan.publishedAt().isEmpty()).isPresent();
        }
    }

    PlanPage page(Shown shown, Entered entered, Instant now) {
        Shop planned = shown.supposed().intake().shop();
        Plan plan = current(shown, now);
        PlanSum sum = PlanSum.of(planned, plan);
        LanesDrawing drawing =
                new LanesDrawing(words, texts, now, RANGES.getOrDefault(shown.range(), Duration.ofDays(3)));
        return new PlanPage(
                words.text(shown.isDraft() ? "plan.draft.title" : "plan.title"),
                lead(shown, sum, plan),
                shown.shown().map(planWords::goodness).orElse(""),
                shown.done(),
                draft(shown, planned, plan, now),
                named(shown),
                drawing.draw(shown.shop(), planned, plan.runs(), sum),
                ORDER.stream()
                        .map(range -> Choice.of(range, words.text("plan.range." + range)))
                        .toList(),
                path(shown),
                shown.range(),
                next(shown, plan, now),
                plan.runs().stream()
                        .map(run -> runLine(shown, planned, run, now))
                        .toList(),
                planned.lots().stream()
                        .sorted(Comparator.comparing(
                                lot -> lot.wish().neededBy().orElse(Instant.MAX)))
                        .map(lot -> lotLine(shown, planned, lot, plan, now))
                        .toList(),
                shown.shop().outages().stream()
                        .map(one -> new PlanPage.Outage(
                                one.id(),
                                words.text(
                                        "plan.outage",
                                        name(shown, one.oven()),
                                        texts.at(one.fromAt(), now),
                                        texts.at(one.toAt(), now))))
                        .toList(),
                asking(shown, entered));
    }

    /** What has no place as it is: what needs a bake and may have none too. */
    private List<String> named(Shown shown) {
        List<String> named = new ArrayList<>();
        shown.supposed().intake().named().stream().map(texts::refusal).forEach(named::add);
        shown.shop().queue().stream()
                .filter(waiting -> !waiting.canBeBaked())
                .map(Waiting::view)
                .map(view -> words.text("plan.named.hold", view.item().tag(), words.why(view.answer())))
                .forEach(named::add);
        return named;
    }

    private static String path(Shown shown) {
        return shown.isDraft()
                ? "/ovens/plan/drafts/" + shown.shown().orElseThrow().id()
                : "/ovens/plan";
    }

    /** The plan without what is over, with what runs. */
    private static Plan current(Shown shown, Instant now) {
        List<Run> frozen = shown.supposed().intake().shop().frozen();
        List<Run> runs = new ArrayList<>(frozen);
        shown.plan().runs().stream()
                .filter(run -> run.endAt().isAfter(now))
                .filter(run ->
                        frozen.stream().noneMatch(other -> other.lots().stream().anyMatch(run.lots()::contains)))
                .forEach(runs::add);
        return new Plan(runs);
    }

    private String lead(Shown shown, PlanSum sum, Plan plan) {
        if (shown.shown().isEmpty()) {
            return words.text("plan.none");
        }
        String late = sum.late().isEmpty()
                ? words.text("plan.lead.on-time")
                : words.text("plan.lead.late", sum.late().size(), words.hours(sum.lateHours()));
        return late + " " + words.text("plan.lead.sum", plan.runs().size(), words.hours(sum.ovenTime()));
    }

    private PlanPage.Draft draft(Shown shown, Shop planned, Plan plan, Instant now) {
        if (!shown.isDraft()) {
            return new PlanPage.Draft("", false, false, List.of(), List.of());
        }
        StoredPlan draft = shown.shown().orElseThrow();
        Plan before = shown.shop().published().map(StoredPlan::plan).orElseGet(() -> new Plan(List.of()));
        PlanSum was = PlanSum.of(planned, before);
        PlanSum is = PlanSum.of(planned, plan);
        List<PlanPage.Line> lines = List.of(
                line(
                        "plan.sum.late",
                        Integer.toString(was.late().size()),
                        Integer.toString(is.late().size())),
                line("plan.sum.hours", words.hours(was.lateHours()), words.hours(is.lateHours())),
                line("plan.sum.ovens", words.hours(was.ovenTime()), words.hours(is.ovenTime())),
                line(
                        "plan.sum.runs",
                        before.runs().size() + "",
                        draft.plan().runs().size() + ""),
                line(
                        "plan.sum.missing",
                        Long.toString(missing(planned, before)),
                        Long.toString(missing(planned, plan))));
        List<String> told = new ArrayList<>();
        draft.changes().forEach(change -> told.add(planWords.change(change, now)));
        Replan.moved(before, draft.plan())
                .forEach(moved -> told.add(words.text(
                        "plan.moved",
                        moved.lot(),
                        name(shown, moved.before().oven()),
                        texts.at(moved.before().startAt(), now),
                        name(shown, moved.after().oven()),
                        texts.at(moved.after().startAt(), now))));
        boolean isStale = !shown.shop().published().map(StoredPlan::id).equals(draft.basedOn());
        return new PlanPage.Draft(draft.id(), isStale, draft.search() == StoredPlan.Search.SEARCHING, lines, told);
    }

    private PlanPage.Line line(String key, String before, String after) {
        return new PlanPage.Line(words.text(key), before, after);
    }

    private static long missing(Shop planned, Plan plan) {
        return planned.lots().stream()
                .filter(lot -> plan.stay(lot.tag()).isEmpty())
                .count();
    }

    private static String name(Shown shown, String code) {
        return shown.shop().ovens().stream()
                .filter(oven -> oven.code().equals(code))
                .map(BakeOven::name)
                .findFirst()
                .orElse(code);
    }

    /** Doors to open, by time. */
    private List<PlanPage.Next> next(Shown shown, Plan plan, Instant now) {
        record Act(Instant at, String words, String href) {}
        List<Act> acts = new ArrayList<>();
        for (Run run : plan.runs()) {
            String lots = String.join(", ", run.lots());
            String oven = name(shown, run.oven());
            if (!shown.shop().isRunning(run)) {
                String tags = run.lots().stream().map(tag -> "&tag=" + tag).collect(Collectors.joining());
                acts.add(new Act(
                        run.startAt(),
                        words.text("plan.next.load", oven, texts.temperature(run.temperature()), lots),
                        "/ovens/load?oven=" + run.oven() + "&setPoint="
                                + texts.number(run.temperature().degrees()) + tags));
            }
            acts.add(new Act(run.endAt(), words.text("plan.next.out", oven, lots), ""));
        }
        return acts.stream()
                .sorted(Comparator.comparing(Act::at))
                .limit(MOST_NEXT)
                .map(act -> new PlanPage.Next(texts.at(act.at(), now), act.words(), act.href()))
                .toList();
    }

    private PlanPage.RunLine runLine(Shown shown, Shop planned, Run run, Instant now) {
        boolean isRunning = shown.shop().isRunning(run);
        boolean isHeld = planned.frozen().contains(run);
        boolean isPinned =
                !isRunning && run.lots().stream().anyMatch(shown.supposed().pinned()::contains);
        return new PlanPage.RunLine(
                run.lots().get(0),
                name(shown, run.oven()),
                run.oven(),
                texts.temperature(run.temperature()),
                texts.at(run.startAt(), now),
                texts.at(run.endAt(), now),
                state(isRunning, isHeld, run.startAt().isBefore(shown.shop().now()), isPinned),
                run.lots(),
                isRunning || shown.isDraft() ? "" : texts.field(run.startAt()),
                isPinned);
    }

    private String state(boolean isRunning, boolean isHeld, boolean isPast, boolean isPinned) {
        if (isRunning) {
            return words.text("plan.state.running");
        } else if (isPinned) {
            return words.text("plan.state.pinned");
        } else if (isPast) {
            return words.text("plan.state.overdue");
        }
        return words.text(isHeld ? "plan.state.held" : "plan.state.planned");
    }

    private PlanPage.LotLine lotLine(Shown shown, Shop planned, Lot lot, Plan plan, Instant now) {
        Optional<Run.Stay> stay = plan.stay(lot.tag());
        Optional<Instant> due = lot.wish().neededBy();
        boolean isLate = stay.isPresent()
                && due.filter(by -> stay.get().outAt().isAfter(by)).isPresent();
        return new PlanPage.LotLine(
                lot.tag(),
                planWords.programmes(lot),
                words.weighed(
                        due.map(by -> texts.at(by, now)).orElse(""), lot.wish().weight()),
                stay.map(one -> texts.at(one.outAt(), now)).orElseGet(() -> words.text("plan.lot.unplanned")),
                plan.runOf(lot.tag()).map(run -> name(shown, run.oven())).orElse(""),
                isLate
                        ? words.text(
                                "plan.lot.late",
                                words.hours(
                                        Duration.between(due.get(), stay.get().outAt())))
                        : "",
                isLate ? planWords.why(planned, lot, barred(shown, lot, now), now) : List.of());
    }

    private static List<Programme> barred(Shown shown, Lot lot, Instant now) {
        return shown.shop().queue().stream()
                .filter(waiting -> waiting.view().item().tag().equals(lot.tag()))
                .map(Waiting::view)
                .findFirst()
                .map(view -> LotOf.barredByCarrier(view, now))
                .orElse(List.of());
    }

    private PlanPage.Asking asking(Shown shown, Entered entered) {
        return new PlanPage.Asking(
                shown.shop().queue().stream()
                        .filter(Waiting::canBeBaked)
                        .map(waiting -> waiting.view().item().tag())
                        .map(tag -> Choice.of(tag, tag))
                        .toList(),
                shown.shop().ovens().stream()
                        .map(oven -> Choice.of(oven.code(), oven.name()))
                        .toList(),
                entered.field("needTag", words.text("plan.ask.lot")),
                entered.field("needBy", words.text("ovens.needed-by"), words.text("ovens.needed-by.hint")),
                entered.field("closeOven", words.text("ovens.oven")),
                entered.field("closeFrom", words.text("plan.ask.from")),
                entered.field("closeTo", words.text("plan.ask.to")),
                List.of(
                        entered.field("rushName", words.text("plan.ask.name")),
                        entered.field("rushPositions", words.text("ovens.positions")),
                        entered.field("rushTemperature", words.text("ovens.set-point")),
                        entered.field("rushHours", words.text("ovens.hours-at-temperature")),
                        entered.field("rushBy", words.text("ovens.needed-by"))));
    }
}
