package bagclock.ovens;

import bagclock.core.oven.Held;
import bagclock.core.oven.Plan;
import bagclock.core.oven.PlanSum;
import bagclock.core.oven.Run;
import bagclock.core.oven.Shop;
import bagclock.core.oven.Span;
import bagclock.ovens.Ovens.Waiting;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a plan on a page. */
final class PlanPages {
    /** What the axis may show. */
    static final Map<String, Duration> RANGES = Map.of(
            "day", Duration.ofHours(24),
            "days", Duration.ofDays(3),
            "weeks", Duration.ofDays(14),
            "month", Duration.ofDays(35),
            "quarter", Duration.ofDays(91));

    private static final List<String> ORDER = List.of("day", "days", "weeks", "month", "quarter");
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
        Shop planned = planned(shown);
        Plan plan = current(shown, now);
        PlanSum sum = PlanSum.of(planned, plan);
        List<String> without = without(shown);
        LanesDrawing drawing =
                new LanesDrawing(words, texts, now, RANGES.getOrDefault(shown.range(), Duration.ofDays(3)));
        return new PlanPage(
                words.text(shown.isDraft() ? "plan.draft.title" : "plan.title"),
                lead(shown, sum, plan, without.size()),
                shown.shown().map(planWords::goodness).orElse(""),
                shown.done(),
                draft(shown, planned, plan, now),
                named(shown, plan, now),
                drawing.draw(shown.shop(), planned, plan.runs(), sum),
                ORDER.stream()
                        .map(range -> Choice.of(range, words.text("plan.range." + range)))
                        .toList(),
                path(shown),
                shown.range(),
                next(shown, plan, now),
                plan.runs().stream().map(run -> runLine(shown, run, now)).toList(),
                new LotLines(words, texts, shown.shop(), shown.supposed()).of(plan, now),
                without,
                shown.shop().outages().stream()
                        .map(one -> new PlanPage.Outage(
                                one.id(),
                                words.text(
                                        "plan.outage",
                                        shown.shop().nameOf(one.oven()),
                                        texts.at(one.fromAt(), now),
                                        texts.at(one.toAt(), now))))
                        .toList(),
                asking(shown, entered));
    }

    /** What is not as it should be. */
    private List<String> named(Shown shown, Plan plan, Instant now) {
        List<String> named = new ArrayList<>(shown.isDraft() ? List.of() : letGo(shown, now));
        if (!named.isEmpty()) {
            named.add(words.text("plan.let-go.anew"));
        }
        if (!shown.isDraft()) {
            named.addAll(inClosed(shown, now));
        }
        beyondDoors(planned(shown), plan, now).ifPresent(named::add);
        shown.supposed().intake().named().stream().map(texts::refusal).forEach(named::add);
        return named;
    }

    private List<String> without(Shown shown) {
        return shown.shop().queue().stream()
                .filter(waiting -> !waiting.canBeBaked())
                .map(Waiting::view)
                .map(view -> words.text("plan.without.one", view.item().tag(), words.why(view.answer())))
                .toList();
    }

    private static Shop planned(Shown shown) {
        return shown.supposed().intake().shop();
    }

    /** What comes out later than the hours reach in which doors are opened. */
    private Optional<String> beyondDoors(Shop planned, Plan plan, Instant now) {
        return planned.customs().attended().stream()
                .map(Span::endExclusive)
                .max(Comparator.naturalOrder())
                .filter(last -> plan.runs().stream().anyMatch(run -> run.endAt().isAfter(last)))
                .map(last -> words.text("plan.named.beyond-doors", texts.at(last, now)));
    }

    /** What is published and can't be as planned. */
    private List<String> letGo(Shown shown, Instant now) {
        LetGoWords why = new LetGoWords(words, texts, shown.shop(), now);
        return shown.supposed().held().letGo().stream().map(why::letGo).toList();
    }

    /** Loads in an oven that is closed before they are out. */
    private List<String> inClosed(Shown shown, Instant now) {
        List<String> lines = new ArrayList<>();
        Shop planned = planned(shown);
        for (Run run : planned.frozen()) {
            Span stay = new Span(run.startAt(), run.endAt());
            planned.ovens().stream()
                    .filter(oven -> shown.shop().isRunning(run) && oven.code().equals(run.oven()))
                    .flatMap(oven -> oven.habits().outOfService().stream())
                    .filter(stay::overlaps)
                    .forEach(span -> lines.add(words.text(
                            "plan.named.in-closed",
                            shown.shop().nameOf(run.oven()),
                            texts.at(span.startInclusive(), now),
                            String.join(", ", run.lots()),
                            texts.at(run.endAt(), now))));
        }
        return lines;
    }

    private static String path(Shown shown) {
        return shown.isDraft()
                ? "/ovens/plan/drafts/" + shown.shown().orElseThrow().id()
                : "/ovens/plan";
    }

    /** The plan without what is over, with what runs. */
    private static Plan current(Shown shown, Instant now) {
        return shown.isDraft()
                ? beside(shown.supposed().intake().shop().frozen(), shown.plan().runs(), now)
                : published(shown.supposed(), now);
    }

    /** What runs, what is published and can be, and what can't and still waits. */
    private static Plan published(ShopNow.Supposed supposed, Instant now) {
        List<Run> there = new ArrayList<>(supposed.intake().shop().frozen());
        there.addAll(supposed.held().free());
        List<Run> letGo = supposed.held().letGo().stream()
                .filter(one -> !one.isLessLots())
                .map(Held.LetGo::run)
                .toList();
        return beside(there, letGo, now);
    }

    private static Plan beside(List<Run> there, List<Run> others, Instant now) {
        List<Run> runs = new ArrayList<>(there);
        others.stream()
                .filter(run -> run.endAt().isAfter(now))
                .filter(run ->
                        there.stream().noneMatch(other -> other.lots().stream().anyMatch(run.lots()::contains)))
                .forEach(runs::add);
        return new Plan(runs);
    }

    private String lead(Shown shown, PlanSum sum, Plan plan, int without) {
        if (shown.shown().isEmpty()) {
            return words.text("plan.none");
        }
        String late = sum.late().isEmpty()
                ? words.text("plan.lead.on-time")
                : words.text("plan.lead.late", sum.late().size(), words.hours(sum.lateHours()));
        String missing = without == 0 ? "" : " " + words.text("plan.lead.without", without);
        return late + missing + " "
                + words.text("plan.lead.sum", plan.runs().size(), words.hours(sum.ovenTime()), sum.changes());
    }

    private PlanPage.Draft draft(Shown shown, Shop planned, Plan plan, Instant now) {
        if (!shown.isDraft()) {
            return new PlanPage.Draft("", false, false, List.of(), List.of());
        }
        StoredPlan draft = shown.shown().orElseThrow();
        Plan before = published(shown.shop().asItIs(), now);
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
                        Integer.toString(before.runs().size()),
                        Integer.toString(plan.runs().size())),
                line("plan.sum.changes", Integer.toString(was.changes()), Integer.toString(is.changes())),
                line(
                        "plan.sum.missing",
                        Long.toString(missing(planned, before)),
                        Long.toString(missing(planned, plan))));
        List<String> told = new ArrayList<>();
        for (PlanChange change : draft.changes()) {
            told.add(planWords.change(change, shown.shop()::nameOf, now));
            if (change.kind() == PlanChange.Kind.MOVE && isStaggered(shown, change.name())) {
                told.add(words.text("plan.change.together", change.name()));
            }
        }
        told.addAll(letGo(shown, now));
        told.addAll(inClosed(shown, now));
        told.addAll(new MovedLots(words, texts, shown.shop()).of(before, plan, now));
        boolean isStale = !shown.shop().published().map(StoredPlan::id).equals(draft.basedOn());
        return new PlanPage.Draft(draft.id(), isStale, draft.search() == StoredPlan.Search.SEARCHING, lines, told);
    }

    /** A run that somebody moves loses that. */
    private static boolean isStaggered(Shown shown, String tag) {
        return shown.shop()
                .published()
                .flatMap(plan -> plan.plan().runOf(tag))
                .filter(Run::isStaggered)
                .isPresent();
    }

    private PlanPage.Line line(String key, String before, String after) {
        return new PlanPage.Line(words.text(key), before, after);
    }

    private static long missing(Shop planned, Plan plan) {
        return planned.lots().stream()
                .filter(lot -> plan.stay(lot.tag()).isEmpty())
                .count();
    }

    /** Something to do at an oven. */
    private record Act(Instant at, String words, String href) {}

    /** Doors to open, by time. */
    private List<PlanPage.Next> next(Shown shown, Plan plan, Instant now) {
        return plan.runs().stream()
                .filter(run -> shown.isDraft() || !isLetGo(shown, run))
                .flatMap(run -> acts(shown, run))
                .sorted(Comparator.comparing(Act::at))
                .limit(MOST_NEXT)
                .map(act -> new PlanPage.Next(texts.at(act.at(), now), act.words(), act.href()))
                .toList();
    }

    /** Who goes in and who comes out together is one act each. */
    private Stream<Act> acts(Shown shown, Run run) {
        String oven = shown.shop().nameOf(run.oven());
        Stream<Act> out = together(run, Run.Stay::outAt)
                .map(lots -> new Act(
                        lots.getKey(), words.text("plan.next.out", oven, String.join(", ", lots.getValue())), ""));
        if (shown.shop().isRunning(run)) {
            return out;
        }
        Stream<Act> in = together(run, Run.Stay::inAt)
                .map(lots -> new Act(
                        lots.getKey(),
                        words.text(
                                "plan.next.load",
                                oven,
                                texts.temperature(run.temperature()),
                                String.join(", ", lots.getValue())),
                        "/ovens/load?oven=" + run.oven() + "&setPoint="
                                + texts.number(run.temperature().degrees())
                                + lots.getValue().stream()
                                        .map(tag -> "&tag=" + tag)
                                        .collect(Collectors.joining())));
        return Stream.concat(in, out);
    }

    private static Stream<Map.Entry<Instant, List<String>>> together(Run run, Function<Run.Stay, Instant> moment) {
        return run.stays().stream()
                .collect(Collectors.groupingBy(
                        moment, TreeMap::new, Collectors.mapping(Run.Stay::lot, Collectors.toList())))
                .entrySet()
                .stream();
    }

    /** Who joins a run or leaves it while it goes on, and what that costs the others. */
    private List<String> apart(Shown shown, Run run, Instant now) {
        List<String> apart = Apart.of(run, words, at -> texts.at(at, now));
        int doorMin = shown.shop().rules().doorMin();
        return apart.isEmpty() || doorMin <= 0
                ? apart
                : Stream.concat(
                                apart.stream(),
                                Stream.of(words.text("plan.run.opening", texts.span(Duration.ofMinutes(doorMin)))))
                        .toList();
    }

    private PlanPage.RunLine runLine(Shown shown, Run run, Instant now) {
        boolean isRunning = shown.shop().isRunning(run);
        boolean isPinned =
                !isRunning && run.lots().stream().anyMatch(shown.supposed().pinned()::contains);
        return new PlanPage.RunLine(
                run.lots().get(0),
                shown.shop().nameOf(run.oven()),
                run.oven(),
                texts.temperature(run.temperature()),
                texts.at(run.startAt(), now),
                texts.at(run.endAt(), now),
                state(shown, run, isPinned),
                run.lots(),
                apart(shown, run, now),
                isRunning || shown.isDraft() ? "" : texts.field(run.startAt()),
                isPinned);
    }

    private String state(Shown shown, Run run, boolean isPinned) {
        boolean isHeld = shown.supposed().intake().shop().frozen().contains(run);
        if (shown.shop().isRunning(run)) {
            return words.text("plan.state.running");
        } else if (isPinned) {
            return words.text("plan.state.pinned");
        } else if (run.startAt().isBefore(shown.shop().now())) {
            return words.text("plan.state.overdue");
        } else if (!shown.isDraft() && isLetGo(shown, run)) {
            return words.text("plan.state.let-go");
        }
        return words.text(isHeld ? "plan.state.held" : "plan.state.planned");
    }

    /** Whether it can't be, not even late. */
    private static boolean isLetGo(Shown shown, Run run) {
        return shown.supposed().held().letGo().stream()
                .anyMatch(one -> one.run().equals(run) && !one.isOverdue());
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
                        entered.field("rushBy", words.text("ovens.needed-by")),
                        entered.field("rushWeight", words.text("ovens.weight"), words.text("ovens.weight.hint"))));
    }
}
