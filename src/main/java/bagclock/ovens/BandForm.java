package bagclock.ovens;

import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The site's own band for charts, as entered. */
final class BandForm {
    private static final String LEAST = "bandLeast";
    private static final String MOST = "bandMost";
    /** Below the narrowest band of the table, which ends 5 C above the set-point. */
    private static final double HIGHEST_LEAST_C = 4;

    private static final double WIDEST_C = 10;

    private BandForm() {}

    static Map<String, String> values(BandRule rule, Texts texts) {
        Map<String, String> values = new HashMap<>();
        values.put(LEAST, texts.number(rule.leastAboveC()));
        values.put(MOST, rule.mostAboveC() == null ? "" : texts.number(rule.mostAboveC()));
        return values;
    }

    static List<Field> fields(Entered entered, Messages messages) {
        return List.of(
                entered.field(LEAST, messages.text("plan.band.least"), messages.text("plan.band.least.hint")),
                entered.field(MOST, messages.text("plan.band.most"), messages.text("plan.band.most.hint")));
    }

    /** The band; empty when something is wrong, which is noted by field. */
    static Optional<BandRule> read(Entered entered, Messages messages) {
        Optional<Double> least = entered.number(LEAST, 0, HIGHEST_LEAST_C);
        Optional<Double> most = entered.numberOrNone(MOST, 0, WIDEST_C);
        if (least.isPresent() && most.filter(top -> top <= least.get()).isPresent()) {
            entered.refuse(MOST, messages.text("plan.band.order"));
        }
        return entered.isRefused()
                ? Optional.empty()
                : Optional.of(new BandRule(least.orElseThrow(), most.orElse(null)));
    }
}
