package bagclock.ovens;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import bagclock.register.KnownPlace.Pauses;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** An oven as entered. */
final class OvenForm {
    private static final double COLDEST_C = 20;
    private static final double HOTTEST_C = 300;
    private static final int MOST_POSITIONS = 500;
    private static final int LONGEST_HEAT_UP = 600;
    private static final int LONGEST_PAUSE = 1440;
    private static final int LONGEST_CODE = 20;

    private OvenForm() {}

    /** The fields that show an oven. */
    static Map<String, String> values(BakeOven oven, Texts texts) {
        Map<String, String> values = new HashMap<>();
        values.put("name", oven.name());
        values.put("positions", Integer.toString(oven.positions()));
        values.put("lowest", texts.number(oven.lowest().degrees()));
        values.put("highest", texts.number(oven.highest().degrees()));
        values.put(
                "holds", oven.holds().map(most -> texts.number(most.percent())).orElse(""));
        values.put("heatUp", Long.toString(oven.heatUp().toMinutes()));
        values.put("coolDown", minutes(oven.pauses().coolDown()));
        values.put("turnaround", minutes(oven.pauses().turnaround()));
        values.put("change", minutes(oven.pauses().change()));
        return values;
    }

    private static String minutes(Optional<Duration> time) {
        return time.map(Duration::toMinutes).map(String::valueOf).orElse("");
    }

    /** Its own pauses; what is wrong with them is noted by field. */
    private static Pauses pauses(Entered entered, Texts texts) {
        Optional<Duration> coolDown = minutes(entered, "coolDown");
        Optional<Duration> turnaround = minutes(entered, "turnaround");
        Optional<Duration> change = minutes(entered, "change");
        if (change.isPresent() != turnaround.isPresent()) {
            entered.refuse("change", texts.messages().text("ovens.pauses.both"));
        } else if (change.isPresent() && change.get().compareTo(turnaround.get()) < 0) {
            entered.refuse("change", texts.messages().text("plan.rules.change.order"));
        }
        return new Pauses(coolDown, turnaround, change);
    }

    private static Optional<Duration> minutes(Entered entered, String name) {
        return entered.text(name).isEmpty()
                ? Optional.empty()
                : entered.count(name, 0, LONGEST_PAUSE).map(Duration::ofMinutes);
    }

    /** The code of a new oven; what is wrong with it is noted. */
    static String code(Entered entered, Texts texts) {
        String code = entered.required("code");
        if (!code.isEmpty() && !code.matches("[A-Za-z0-9._-]{1," + LONGEST_CODE + "}")) {
            entered.refuse("code", texts.messages().text("ovens.code.shape", LONGEST_CODE));
        }
        return code;
    }

    /** The oven; empty when something is wrong, which is noted by field. */
    static Optional<BakeOven> oven(Entered entered, String code, Texts texts) {
        String name = entered.required("name");
        Optional<Integer> positions = entered.count("positions", 1, MOST_POSITIONS);
        Optional<Double> lowest = entered.number("lowest", COLDEST_C, HOTTEST_C);
        Optional<Double> highest = entered.number("highest", COLDEST_C, HOTTEST_C);
        Optional<Double> holds = entered.numberOrNone("holds", 0, 100);
        Optional<Integer> heatUp = entered.count("heatUp", 0, LONGEST_HEAT_UP);
        Pauses pauses = pauses(entered, texts);
        if (lowest.isPresent() && highest.isPresent() && lowest.get() > highest.get()) {
            entered.refuse("highest", texts.messages().text("ovens.highest.below"));
        }
        if (entered.isRefused()) {
            return Optional.empty();
        }
        return Optional.of(new BakeOven(
                code,
                name,
                positions.orElseThrow(),
                new Celsius(lowest.orElseThrow()),
                new Celsius(highest.orElseThrow()),
                holds.map(RelativeHumidity::new),
                Duration.ofMinutes(heatUp.orElseThrow()),
                pauses));
    }
}
