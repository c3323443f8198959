package bagclock.readings;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.readings.LoggerProfile.BelowZero;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What a person says about a file of a logger. */
public final class AnswersForm {
    /** Name of the field of the zone of the clock. */
    public static final String ZONE = "zone";

    /** Name of the field of day and month. */
    public static final String ORDER = "order";

    /** Name of the field of the unit. */
    public static final String UNIT = "unit";

    /** Name of the field of the channel of temperature. */
    public static final String TEMPERATURE = "temperature";

    /** Name of the field of the channel of humidity. */
    public static final String HUMIDITY = "humidity";

    /** Name of the field of dew points below 0 C. */
    public static final String BELOW_ZERO = "belowZero";

    /** Name of the field of a spreadsheet's days. */
    public static final String DAYS = "days";

    /** Name of the field of an hour that autumn has twice. */
    public static final String DOUBLED = "doubled";

    /** Value of a box that is ticked. */
    public static final String YES = "yes";

    /** Value of the second of two hours. */
    public static final String SECOND = "second";

    private AnswersForm() {}

    /** The fields that show what is known of a logger. */
    public static Map<String, String> values(LoggerProfile profile) {
        Map<String, String> values = new HashMap<>();
        profile.zone().ifPresent(zone -> values.put(ZONE, zone.getId()));
        profile.dayOrder().ifPresent(order -> values.put(ORDER, order.name()));
        profile.unit().ifPresent(unit -> values.put(UNIT, unit.name()));
        profile.names().temperature().ifPresent(name -> values.put(TEMPERATURE, name));
        profile.names().humidity().ifPresent(name -> values.put(HUMIDITY, name));
        if (profile.spreadsheetDays()) {
            values.put(DAYS, YES);
        }
        values.put(BELOW_ZERO, profile.belowZero().name());
        return values;
    }

    /** What was said; a zone that nobody knows is refused. */
    public static Answers answers(Entered entered, Messages messages) {
        String doubled = entered.text(DOUBLED);
        return new Answers(
                zone(entered, messages),
                one(DayOrder.class, entered.text(ORDER)),
                one(Channel.Unit.class, entered.text(UNIT)),
                new Answers.Names(said(entered.text(TEMPERATURE)), said(entered.text(HUMIDITY))),
                entered.text(DAYS).equals(YES),
                doubled.isEmpty() ? Optional.empty() : Optional.of(doubled.equals(SECOND)));
    }

    public static BelowZero belowZero(Entered entered) {
        return one(BelowZero.class, entered.text(BELOW_ZERO)).orElse(BelowZero.UNKNOWN);
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
