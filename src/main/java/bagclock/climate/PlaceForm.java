package bagclock.climate;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Place.CabinetClass;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.register.KnownPlace;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** A zone or a cabinet as entered. */
final class PlaceForm {
    static final String ZONE = "zone";
    static final String CABINET = "cabinet";
    static final String YES = "yes";
    static final String NO = "no";

    private static final String CLASS = "class";

    private static final int LONGEST_CODE = 20;
    private static final int LONGEST_NAME = 80;

    private PlaceForm() {}

    /** The fields that show a place. */
    static Map<String, String> values(KnownPlace place, DoubleFunction<String> number) {
        Map<String, String> values = new HashMap<>();
        values.put("name", place.name());
        values.put("logged", place.logged() ? YES : NO);
        if (place instanceof KnownPlace.FloorZone zone) {
            zone.worstCase().ifPresent(air -> put(values, "worst", air, number));
            zone.openBagsUpTo().ifPresent(air -> put(values, "open", air, number));
        } else if (place instanceof KnownPlace.DryCabinet cabinet) {
            values.put(CLASS, cabinet.limit().name());
        }
        return values;
    }

    private static void put(Map<String, String> values, String name, Air air, DoubleFunction<String> number) {
        values.put(name + "C", number.apply(air.temperature().degrees()));
        values.put(name + "Percent", number.apply(air.humidity().percent()));
    }

    /** The code of a new place; what is wrong with it is noted. */
    static String code(Entered entered, Messages messages) {
        String code = entered.required("code");
        if (!code.isEmpty() && !code.matches("[A-Za-z0-9._-]{1," + LONGEST_CODE + "}")) {
            entered.refuse("code", messages.text("climate.code.shape", LONGEST_CODE));
        }
        return code;
    }

    /** The place; empty when something is wrong, which is noted by field. */
    static Optional<KnownPlace> place(Entered entered, String kind, String code, Messages messages) {
        String name = entered.required("name");
        if (name.length() > LONGEST_NAME) {
            entered.refuse("name", messages.text("entered.long", LONGEST_NAME));
        }
        boolean logged = entered.required("logged").equals(YES);
        return kind.equals(CABINET)
                ? cabinet(entered, code, name, logged, messages)
                : zone(entered, code, name, logged, messages);
    }

    private static Optional<KnownPlace> zone(
            Entered entered, String code, String name, boolean logged, Messages messages) {
        Optional<Air> worst = air(entered, "worst", messages);
        Optional<Air> open = air(entered, "open", messages);
        return entered.isRefused()
                ? Optional.empty()
                : Optional.of(new KnownPlace.FloorZone(code, name, logged, worst, open));
    }

    private static Optional<KnownPlace> cabinet(
            Entered entered, String code, String name, boolean logged, Messages messages) {
        Optional<CabinetClass> limit = Arrays.stream(CabinetClass.values())
                .filter(one -> one.name().equals(entered.text(CLASS)))
                .findFirst();
        if (limit.isEmpty()) {
            entered.refuse(CLASS, messages.text("entered.choose"));
        }
        return entered.isRefused()
                ? Optional.empty()
                : limit.map(one -> new KnownPlace.DryCabinet(code, name, logged, one));
    }

    /** Both numbers or none. */
    static Optional<Air> air(Entered entered, String name, Messages messages) {
        Optional<Double> celsius = entered.numberOrNone(name + "C", -20, 60);
        Optional<Double> percent = entered.numberOrNone(name + "Percent", 0, 100);
        if (entered.text(name + "C").isEmpty() != entered.text(name + "Percent").isEmpty()) {
            String missing = entered.text(name + "C").isEmpty() ? "C" : "Percent";
            entered.refuse(name + missing, messages.text("climate.both"));
        }
        return celsius.flatMap(c -> percent.map(p -> Air.of(c, p)));
    }
}
