package bagclock.ovens;

import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The site's choices for plans, as entered. Times of day are hours and minutes. */
final class PlanRulesForm {
    private static final String OPENS = "opens";
    private static final String CLOSES = "closes";
    private static final String DOOR = "door";
    private static final int HOUR_MIN = 60;
    private static final int DAY_MIN = 1440;
    private static final int LONGEST_SEARCH_S = 600;
    private static final String PATIENCE = "patience";
    private static final int LONGEST_PATIENCE_H = 8_760;
    private static final List<String> HOURS = List.of("opens", "closes");
    private static final List<String> OTHERS =
            List.of("coolDown", "turnaround", "change", "door", PATIENCE, "fence", "movePrice", "search");

    private PlanRulesForm() {}

    static Map<String, String> values(PlanRules rules) {
        Map<String, String> values = new HashMap<>();
        boolean isAlways = rules.opensMin() == 0 && rules.closesMin() == 0;
        values.put("opens", isAlways ? "" : time(rules.opensMin()));
        values.put("closes", isAlways ? "" : time(rules.closesMin()));
        values.put("weekends", rules.weekends() ? "yes" : "");
        values.put("fence", Integer.toString(rules.fenceMin()));
        values.put("movePrice", Integer.toString(rules.movePriceMin()));
        values.put("coolDown", Integer.toString(rules.coolDownMin()));
        values.put("turnaround", Integer.toString(rules.turnaroundMin()));
        values.put("change", Integer.toString(rules.changeMin()));
        values.put("search", Integer.toString(rules.searchS()));
        values.put("door", rules.doorMin() < 0 ? "" : Integer.toString(rules.doorMin()));
        values.put(PATIENCE, rules.patienceMin() < 0 ? "" : Integer.toString(rules.patienceMin() / HOUR_MIN));
        return values;
    }

    private static String time(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / HOUR_MIN, minute % HOUR_MIN);
    }

    /** When doors are opened. */
    static List<Field> hours(Entered entered, Messages messages) {
        return fields(HOURS, entered, messages);
    }

    /** The others: what a run takes, then how lots are weighed, then the search. */
    static List<Field> others(Entered entered, Messages messages) {
        return fields(OTHERS, entered, messages);
    }

    private static List<Field> fields(List<String> names, Entered entered, Messages messages) {
        return names.stream()
                .map(name -> entered.field(
                        name, messages.text("plan.rules." + name), messages.text("plan.rules." + name + ".hint")))
                .toList();
    }

    /** The choices; empty when something is wrong, which is noted by field. */
    static Optional<PlanRules> read(Entered entered, Messages messages) {
        int opens = minute(entered, messages, "opens");
        int closes = minute(entered, messages, "closes");
        if (closes <= opens
                && !(entered.text(OPENS).isEmpty() && entered.text(CLOSES).isEmpty())) {
            entered.refuse("closes", messages.text("plan.rules.closes.order"));
        }
        Optional<Integer> fence = entered.count("fence", 0, 7 * DAY_MIN);
        Optional<Integer> price = entered.count("movePrice", 0, 7 * DAY_MIN);
        Optional<Integer> coolDown = entered.count("coolDown", 0, DAY_MIN);
        Optional<Integer> turnaround = entered.count("turnaround", 0, DAY_MIN);
        Optional<Integer> change = entered.count("change", 0, DAY_MIN);
        Optional<Integer> search = entered.count("search", 0, LONGEST_SEARCH_S);
        int door = orNone(entered, DOOR, DAY_MIN);
        int patience = orNone(entered, PATIENCE, LONGEST_PATIENCE_H);
        if (change.isPresent() && turnaround.isPresent() && change.get() < turnaround.get()) {
            entered.refuse("change", messages.text("plan.rules.change.order"));
        }
        if (entered.isRefused()) {
            return Optional.empty();
        }
        return Optional.of(new PlanRules(
                opens,
                closes,
                entered.isChecked("weekends"),
                fence.orElseThrow(),
                price.orElseThrow(),
                coolDown.orElseThrow(),
                turnaround.orElseThrow(),
                change.orElseThrow(),
                search.orElseThrow(),
                door,
                patience < 0 ? -1 : patience * HOUR_MIN));
    }

    /** Below 0: the field is empty. */
    private static int orNone(Entered entered, String name, int most) {
        return entered.text(name).isEmpty() ? -1 : entered.count(name, 0, most).orElse(-1);
    }

    private static int minute(Entered entered, Messages messages, String name) {
        String text = entered.text(name);
        if (text.isEmpty()) {
            return 0;
        } else if (!text.matches("([01]?\\d|2[0-3]):[0-5]\\d|24:00")) {
            entered.refuse(name, messages.text("plan.rules.time"));
            return 0;
        }
        String[] parts = text.split(":");
        return Integer.parseInt(parts[0]) * HOUR_MIN + Integer.parseInt(parts[1]);
    }
}
