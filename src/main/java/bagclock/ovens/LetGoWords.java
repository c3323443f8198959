package bagclock.ovens;

import bagclock.core.oven.Fault;
import bagclock.core.oven.Fault.Law;
import bagclock.core.oven.Held.LetGo;
import bagclock.core.oven.Run;
import bagclock.platform.Texts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says of runs that can't be as planned which they are, and why. */
final class LetGoWords {
    private final OvenWords words;
    private final Texts texts;
    private final ShopNow shop;
    private final Instant now;

    LetGoWords(OvenWords words, Texts texts, ShopNow shop, Instant now) {
        this.words = words;
        this.texts = texts;
        this.shop = shop;
        this.now = now;
    }

    /** What can't be as planned, why, and whether that ends a pin. */
    String letGo(LetGo one) {
        Run run = one.run();
        String lots = String.join(", ", run.lots());
        String oven = shop.nameOf(run.oven());
        String temperature = texts.temperature(run.temperature());
        String start = texts.at(run.startAt(), now);
        String said;
        if (one.isOverdue()) {
            said = words.text("plan.let-go.overdue", lots, oven, temperature, start);
        } else if (one.isLessLots()) {
            String without = String.join(", ", one.lots());
            said = words.text("plan.let-go.less", lots, oven, temperature, start, without) + " " + why(one);
        } else {
            said = words.text("plan.let-go", lots, oven, temperature, start) + " " + why(one);
        }
        boolean wasPinned = !one.isLessLots()
                && shop.published().stream()
                        .anyMatch(plan -> one.lots().stream().anyMatch(plan.pinned()::contains));
        return wasPinned ? said + " " + words.text("plan.let-go.unpinned") : said;
    }

    /** Why a run can't be where somebody wants it. */
    String refused(LetGo one) {
        Run run = one.run();
        return words.text(
                        "plan.move.refused",
                        String.join(", ", run.lots()),
                        shop.nameOf(run.oven()),
                        texts.at(run.startAt(), now))
                + " " + why(one);
    }

    /** A reason, and the oven that it names. */
    private record Cause(String key, String oven) {}

    /** Each reason once, with the lots that it is about. */
    private String why(LetGo one) {
        Map<Cause, List<String>> lots = new LinkedHashMap<>();
        for (Fault fault : one.faults()) {
            lots.computeIfAbsent(cause(one, fault), cause -> new ArrayList<>())
                    .add(fault.parts().get(0));
        }
        return lots.entrySet().stream()
                .map(cause -> words.text(
                        cause.getKey().key(),
                        String.join(", ", cause.getValue()),
                        cause.getKey().oven()))
                .collect(Collectors.joining(" "));
    }

    private Cause cause(LetGo one, Fault fault) {
        List<String> parts = fault.parts();
        if (one.isGone(fault)) {
            boolean isBarred = shop.queue().stream()
                    .anyMatch(waiting -> waiting.view().item().tag().equals(parts.get(0)));
            return new Cause(isBarred ? "plan.fault.barred" : "plan.fault.gone", "");
        } else if (fault.law() == Law.ONCE && parts.size() > 1) {
            return new Cause("plan.fault.elsewhere", shop.nameOf(parts.get(1)));
        }
        return new Cause("plan.fault." + fault.law(), "");
    }
}
