package bagclock.ovens;

import bagclock.core.oven.Span;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is asked of a plan, as entered. */
final class PlanForm {
    private static final String KIND = "kind";
    private static final String NEED_BY = "needBy";
    private static final String TAG = "moveTag";
    private static final String MOVE_OVEN = "moveOven";
    private static final String MOVE_TO = "moveTo";
    private static final String WEIGHT = "rushWeight";
    private static final String SHIFT = "shift";
    private static final double COLDEST_C = 20;
    private static final double HOTTEST_C = 300;
    private static final int MOST_POSITIONS = 500;
    private static final int MOST_HOURS = 2_000;

    private PlanForm() {}

    /** What is supposed; empty when something is wrong, which is noted by field. Nothing asked is no fault. */
    static Optional<List<PlanChange>> read(Entered entered, Texts texts, ShopNow shop, Instant now) {
        List<PlanChange> changes = switch (entered.text(KIND)) {
            case "need" -> need(entered, texts, shop);
            case "close" -> close(entered, texts, shop, now);
            case "rush" -> rush(entered, texts, shop, now);
            case "move" -> move(entered, texts, shop, now);
            case "pin" -> List.of(PlanChange.pin(planned(entered, texts, shop), true));
            case "unpin" -> List.of(PlanChange.pin(planned(entered, texts, shop), false));
            default -> List.of();
        };
        return entered.isRefused() ? Optional.empty() : Optional.of(changes);
    }

    /** What is wrong with fields that stand beside a run, where there is no room for it. */
    static List<String> ofRuns(Entered entered) {
        return Stream.of(TAG, MOVE_OVEN, MOVE_TO)
                .map(entered::error)
                .filter(error -> !error.isEmpty())
                .distinct()
                .toList();
    }

    private static List<PlanChange> need(Entered entered, Texts texts, ShopNow shop) {
        String tag = entered.required("needTag");
        if (!tag.isEmpty()
                && shop.queue().stream()
                        .noneMatch(waiting -> waiting.view().item().tag().equals(tag))) {
            entered.refuse("needTag", texts.messages().text("entered.choose"));
        }
        Optional<Instant> by = entered.text(NEED_BY).isEmpty() ? Optional.empty() : entered.time(NEED_BY);
        return List.of(PlanChange.need(tag, by.orElse(null)));
    }

    private static List<PlanChange> close(Entered entered, Texts texts, ShopNow shop, Instant now) {
        String oven = oven(entered, "closeOven", texts, shop);
        Optional<Instant> from = entered.time("closeFrom");
        Optional<Instant> to = entered.time("closeTo");
        if (from.isPresent() && to.isPresent() && !from.get().isBefore(to.get())) {
            entered.refuse("closeTo", texts.messages().text("plan.close.order"));
        } else if (to.filter(at -> !at.isAfter(now)).isPresent()) {
            entered.refuse("closeTo", texts.messages().text("plan.past"));
        } else if (from.isPresent() && to.isPresent() && shop.isOut(oven, new Span(from.get(), to.get()))) {
            entered.refuse("closeFrom", texts.messages().text("plan.close.overlaps"));
        }
        return entered.isRefused() ? List.of() : List.of(PlanChange.close(oven, from.orElseThrow(), to.orElseThrow()));
    }

    private static List<PlanChange> rush(Entered entered, Texts texts, ShopNow shop, Instant now) {
        String name = entered.required("rushName");
        if (!name.isEmpty() && !name.matches("[A-Za-z0-9._-]{1,40}")) {
            entered.refuse("rushName", texts.messages().text("ovens.code.shape", 40));
        } else if (shop.knows(name)) {
            entered.refuse("rushName", texts.messages().text("plan.rush.taken"));
        }
        Optional<Integer> positions = entered.count("rushPositions", 1, MOST_POSITIONS);
        Optional<Double> temperature = entered.number("rushTemperature", COLDEST_C, HOTTEST_C);
        Optional<Double> hours = entered.number("rushHours", 1, MOST_HOURS);
        int weight = entered.text(WEIGHT).isEmpty()
                ? 1
                : entered.count(WEIGHT, 1, OvenRoutes.MOST_WEIGHT).orElse(1);
        Optional<Instant> by = entered.time("rushBy");
        if (by.filter(at -> !at.isAfter(now)).isPresent()) {
            entered.refuse("rushBy", texts.messages().text("plan.past"));
        }
        if (entered.isRefused()) {
            return List.of();
        }
        int minutes = (int) Math.ceil(hours.orElseThrow() * 60);
        return List.of(new PlanChange(
                PlanChange.Kind.RUSH,
                name,
                null,
                null,
                by.orElseThrow(),
                positions.orElseThrow(),
                temperature.orElseThrow(),
                minutes,
                weight));
    }

    private static List<PlanChange> move(Entered entered, Texts texts, ShopNow shop, Instant now) {
        String tag = planned(entered, texts, shop);
        String oven = oven(entered, MOVE_OVEN, texts, shop);
        Optional<Instant> to = entered.time(MOVE_TO);
        int shift = entered.text(SHIFT).matches("-?\\d{1,7}") ? Integer.parseInt(entered.text(SHIFT)) : 0;
        if (shift == 0
                && to.filter(at -> at.isBefore(now.truncatedTo(ChronoUnit.MINUTES)))
                        .isPresent()) {
            entered.refuse(MOVE_TO, texts.messages().text("plan.past"));
        }
        Optional<Instant> start = to.map(at -> at.plus(Duration.ofMinutes(shift)));
        Instant earliest = now.truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES);
        return entered.isRefused()
                ? List.of()
                : List.of(PlanChange.move(
                        tag, oven, start.filter(at -> at.isAfter(earliest)).orElse(earliest)));
    }

    /** A lot of a published run. */
    private static String planned(Entered entered, Texts texts, ShopNow shop) {
        String tag = entered.required(TAG);
        if (!tag.isEmpty()
                && shop.published().flatMap(plan -> plan.plan().runOf(tag)).isEmpty()) {
            entered.refuse(TAG, texts.messages().text("plan.move.unknown"));
        }
        return tag;
    }

    private static String oven(Entered entered, String field, Texts texts, ShopNow shop) {
        String oven = entered.required(field);
        if (!oven.isEmpty() && shop.ovens().stream().noneMatch(one -> one.code().equals(oven))) {
            entered.refuse(field, texts.messages().text("entered.choose"));
        }
        return oven;
    }
}
