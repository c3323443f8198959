package bagclock.ovens;

import bagclock.core.oven.Plan;
import bagclock.core.oven.Replan;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

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

    private record Move(Replan.Place from, Replan.Place to) {}

    /** Each lot in another oven, or in one by more than an hour earlier or later. */
    List<String> of(Plan before, Plan after, Instant now) {
        return Replan.moved(before, after).stream()
                .collect(Collectors.groupingBy(
                        moved -> new Move(moved.before(), moved.after()),
                        LinkedHashMap::new,
                        Collectors.mapping(Replan.Moved::lot, Collectors.joining(", "))))
                .entrySet()
                .stream()
                .map(entry -> told(entry.getValue(), entry.getKey(), now))
                .toList();
    }

    private String told(String lots, Move move, Instant now) {
        String oven = shop.nameOf(move.to().oven());
        String from = texts.at(move.from().inAt(), now);
        String to = texts.at(move.to().inAt(), now);
        if (!move.from().oven().equals(move.to().oven())) {
            return words.text("plan.moved", lots, shop.nameOf(move.from().oven()), from, oven, to);
        }
        Duration shift = Duration.between(move.from().inAt(), move.to().inAt());
        String key = shift.isNegative() ? "plan.moved.earlier" : "plan.moved.later";
        return words.text(key, lots, texts.span(shift.abs()), oven, to, from);
    }
}
