package bagclock.ovens;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A load as entered.
 *
 * @param tags each once, in the order entered
 */
record LoadForm(String oven, Celsius setPoint, Optional<RelativeHumidity> shown, Instant at, List<String> tags) {
    private static final double COLDEST_C = 20;
    private static final double HOTTEST_C = 300;
    /** Name of the field that a scanner fills. */
    static final String CODE = "code";

    static final String TAG = "tag";
    static final String OVEN = "oven";
    /** What a load is told by, but for the field of the scanner. */
    static final List<String> FIELDS = List.of(OVEN, "setPoint", "humidity", "at", TAG);

    private static final String NO_WORDS = "";

    /** The load as far as it is entered, without a word about what is missing; empty where a plan can't be asked yet. */
    static Optional<LoadForm> soFar(Entered entered, Texts texts, Instant now) {
        Map<String, String> values = new HashMap<>();
        FIELDS.forEach(name -> values.put(name, entered.text(name)));
        Entered copy = Entered.of(values, texts);
        return read(copy, now, NO_WORDS);
    }

    /** The load; empty when something is wrong, which is noted by field. */
    static Optional<LoadForm> read(Entered entered, Instant now, String noItem) {
        String oven = entered.required(OVEN);
        Optional<Double> setPoint = entered.number("setPoint", COLDEST_C, HOTTEST_C);
        Optional<Double> humidity = entered.numberOrNone("humidity", 0, 100);
        Optional<Instant> at = entered.pastTime("at", now);
        List<String> tags = tags(entered);
        if (tags.isEmpty()) {
            entered.refuse(CODE, noItem);
        }
        return entered.isRefused()
                ? Optional.empty()
                : Optional.of(new LoadForm(
                        oven,
                        new Celsius(setPoint.orElseThrow()),
                        humidity.map(RelativeHumidity::new),
                        at.orElseThrow(),
                        tags));
    }

    private static List<String> tags(Entered entered) {
        Set<String> tags = new LinkedHashSet<>(entered.all(TAG));
        for (String more : entered.text(CODE).split("[\\s,;]+")) {
            if (!more.isEmpty()) {
                tags.add(more);
            }
        }
        return List.copyOf(tags);
    }
}
