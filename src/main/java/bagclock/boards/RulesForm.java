package bagclock.boards;

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
    private static final double MS_PER_HOUR = 3_600_000;
    private static final int MOST_WITHIN_H = 8760;
    private static final int MOST_REPLACEMENTS = 9;
    private static final int MOST_MONTHS = 120;

    private RulesForm() {}

    static Map<String, String> values(BoardRules rules, int version) {
        return Map.of(
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
        double hours = time.toMillis() / MS_PER_HOUR;
        return hours % 1 == 0 ? Long.toString((long) hours) : Double.toString(hours);
    }

    /** The rules; empty when something is wrong, which is noted by field. */
    static Optional<BoardRules> read(Entered entered) {
        Optional<Duration> within = entered.numberOrNone(WITHIN, 0, MOST_WITHIN_H)
                .map(hours -> Duration.ofMillis((long) Math.floor(hours * MS_PER_HOUR)));
        Optional<Integer> replacements = entered.count(REPLACEMENTS, 1, MOST_REPLACEMENTS);
        Optional<Integer> months = entered.count(MONTHS, 1, MOST_MONTHS);
        return entered.isRefused()
                ? Optional.empty()
                : Optional.of(new BoardRules(months.orElseThrow(), within, replacements.orElseThrow()));
    }

    /** The fields with what was typed. */
    static List<Input> inputs(Entered entered, Messages messages) {
        return List.of(
                input(entered, messages, WITHIN),
                input(entered, messages, REPLACEMENTS),
                input(entered, messages, MONTHS));
    }

    private static Input input(Entered entered, Messages messages, String name) {
        String key = "boards.rules." + name;
        return Input.of(Input.Kind.NUMBER, entered.field(name, messages.text(key), messages.text(key + ".hint")));
    }
}
