package bagclock.climate;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.readings.LoggerProfile;
import bagclock.readings.LoggerProfile.BelowZero;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What a person says about a file. */
final class AnswersForm {
    static final String ZONE = "zone";
    static final String ORDER = "order";
    static final String UNIT = "unit";
    static final String TEMPERATURE = "temperature";
    static final String HUMIDITY = "humidity";
    static final String BELOW_ZERO = "belowZero";
    static final String DAYS = "days";
    static final String DOUBLED = "doubled";
    static final String YES = "yes";
    static final String SECOND = "second";

    private AnswersForm() {}

    /** The fields that show what is known of a logger. */
    static Map<String, String> values(LoggerProfile profile) {
        Map<String, String> values = new HashMap<>();
        profile.zone().ifPresent(zone -> values.put(ZONE, zone.getId()));
        profile.dayOrder().ifPresent(order -> values.put(ORDER, order.name()));
        profile.unit().ifPresent(unit -> values.put(UNIT, unit.name()));
        profile.names().temperature().ifPresent(name -> values.put(TEMPERATURE, name));
        profile.names().humidity().ifPresent(name -> values.put(HUMIDITY, name));
        values.put(BELOW_ZERO, profile.belowZero().name());
        return values;
    }

    /** What was said; a zone that nobody knows is refused. */
    static Answers answers(Entered entered, Messages messages) {
        String doubled = entered.text(DOUBLED);
        return new Answers(
                zone(entered, messages),
                one(DayOrder.class, entered.text(ORDER)),
                one(Channel.Unit.class, entered.text(UNIT)),
                new Answers.Names(said(entered.text(TEMPERATURE)), said(entered.text(HUMIDITY))),
                entered.text(DAYS).equals(YES),
                doubled.isEmpty() ? Optional.empty() : Optional.of(doubled.equals(SECOND)));
    }

    static BelowZero belowZero(Entered entered) {
        return one(BelowZero.class, entered.text(BELOW_ZERO)).orElse(BelowZero.UNKNOWN);
    }

    /** The logger as it is known from now on. */
    static LoggerProfile profile(LoggerProfile before, Answers answers, BelowZero below) {
        return new LoggerProfile(
                before.name(),
                before.placeCode(),
                answers.zone(),
                answers.dayOrder(),
                answers.unit(),
                answers.names(),
                below);
    }

    private static Optional<String> said(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static Optional<ZoneId> zone(Entered entered, Messages messages) {
        String text = entered.text(ZONE);
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(ZoneId.of(text));
        } catch (DateTimeException unknown) {
            entered.refuse(ZONE, messages.text("climate.file.zone.unknown"));
            return Optional.empty();
        }
    }

    private static <E extends Enum<E>> Optional<E> one(Class<E> kind, String name) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(constant -> constant.name().equals(name))
                .findFirst();
    }
}
