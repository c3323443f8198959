package bagclock.ovens;

import bagclock.core.oven.Plan;
import bagclock.core.oven.Replan;
import bagclock.core.oven.Run;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lots that a plan moves, in words: those that go together in one sentence. */
final class MovedLots {
    private final OvenWords words;
    private final Texts texts;
    private final ShopNow shop;

    MovedLots(OvenWords words, Texts texts, ShopNow shop) {
        this.words = words;
        this.texts = texts;
        this.shop = shop;
    }

    private record Move(String fromOven, Instant from, String toOven, Instant to) {}

    /** Each lot in another oven, or in one by more than an hour earlier or later. */
    List<String> of(Plan before, Plan after, Instant now) {
        Map<Move, List<String>> together = new LinkedHashMap<>();
        for (Replan.Moved moved : Replan.moved(before, after)) {
            Move move = new Move(
                    moved.before().oven(),
                    inAt(before, moved.lot()),
                    moved.after().oven(),
                    inAt(after, moved.lot()));
            together.computeIfAbsent(move, none -> new ArrayList<>()).add(moved.lot());
        }
        return together.entrySet().stream()
                .map(entry -> told(String.join(", ", entry.getValue()), entry.getKey(), now))
                .toList();
    }

    private static Instant inAt(Plan plan, String lot) {
        return plan.stay(lot).map(Run.Stay::inAt).orElseThrow();
    }

    private String told(String lots, Move move, Instant now) {
        String oven = shop.nameOf(move.toOven());
        String from = texts.at(move.from(), now);
        String to = texts.at(move.to(), now);
        if (!move.fromOven().equals(move.toOven())) {
            return words.text("plan.moved", lots, shop.nameOf(move.fromOven()), from, oven, to);
        }
        Duration shift = Duration.between(move.from(), move.to());
        String key = shift.isNegative() ? "plan.moved.earlier" : "plan.moved.later";
        return words.text(key, lots, texts.span(shift.abs()), oven, to, from);
    }
}
