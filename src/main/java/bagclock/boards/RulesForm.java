package bagclock.boards;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.SiteLimits;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.register.BoardRules;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The site's rules for boards, as typed. */
final class RulesForm {
    static final String BASED_ON = "basedOn";

    private static final String WITHIN = "within";
    private static final String REPLACEMENTS = "replacements";
    private static final String MONTHS = "months";
    private static final String PEAK = "harmless";
    private static final String ABOVE_90 = "above90";
    private static final double MS_PER_HOUR = 3_600_000;
    private static final int MOST_WITHIN_H = 8760;
    private static final int MOST_REPLACEMENTS = 9;
    private static final int MOST_MONTHS = 120;
    private static final int COOLEST_PEAK = 50;
    private static final int HOTTEST_TYPED = 500;

    private RulesForm() {}

    static Map<String, String> values(BoardRules rules, int version) {
        return Map.of(
                PEAK,
                plain(rules.limits().harmlessPeak().degrees()),
                ABOVE_90,
                hours(rules.limits().mostAbove90()),
                WITHIN,
                rules.useWithin().map(time -> hours(time)).orElse(""),
                REPLACEMENTS,
                Integer.toString(rules.mostReplacements()),
                MONTHS,
                Integer.toString(rules.profileMonths()),
                BASED_ON,
                Integer.toString(version));
    }

    private static String hours(Duration time) {
        return plain(time.toMillis() / MS_PER_HOUR);
    }

    private static String plain(double number) {
        return number % 1 == 0 ? Long.toString((long) number) : Double.toString(number);
    }

    /** The rules; empty when something is wrong, which is noted by field. */
    static Optional<BoardRules> read(Entered entered) {
        Optional<Duration> within = entered.hoursOrNone(WITHIN, 0, MOST_WITHIN_H, Math::floor);
        Optional<Integer> replacements = entered.count(REPLACEMENTS, 1, MOST_REPLACEMENTS);
        Optional<Integer> months = entered.count(MONTHS, 1, MOST_MONTHS);
        Optional<SiteLimits> limits = limits(entered);
        return entered.isRefused()
                ? Optional.empty()
                : Optional.of(
                        new BoardRules(months.orElseThrow(), within, replacements.orElseThrow(), limits.orElseThrow()));
    }

    /** Stricter than the standard or the same; wider is refused. */
    private static Optional<SiteLimits> limits(Entered entered) {
        Optional<Celsius> peak = entered.number(PEAK, COOLEST_PEAK, HOTTEST_TYPED)
                .map(Celsius::new)
                .filter(one -> !refusedAbove(entered, PEAK, one.isAbove(SiteLimits.HARMLESS_PEAK)));
        Optional<Duration> above90 = entered.hours(ABOVE_90, 1, MOST_WITHIN_H, Math::floor)
                .filter(one -> !refusedAbove(entered, ABOVE_90, one.compareTo(SiteLimits.MOST_ABOVE_90) > 0));
        return peak.isPresent() && above90.isPresent()
                ? Optional.of(new SiteLimits(peak.get(), above90.get()))
                : Optional.empty();
    }

    private static boolean refusedAbove(Entered entered, String name, boolean isWider) {
        if (isWider) {
            entered.refuse(name, entered.texts().messages().text("boards.rules." + name + ".wider"));
        }
        return isWider;
    }

    /** The fields with what was typed. */
    static List<Input> inputs(Entered entered, Messages messages) {
        return List.of(
                input(entered, messages, WITHIN),
                input(entered, messages, REPLACEMENTS),
                input(entered, messages, MONTHS),
                input(entered, messages, PEAK),
                input(entered, messages, ABOVE_90));
    }

    private static Input input(Entered entered, Messages messages, String name) {
        String key = "boards.rules." + name;
        return Input.of(Input.Kind.NUMBER, entered.field(name, messages.text(key), messages.text(key + ".hint")));
    }
}
