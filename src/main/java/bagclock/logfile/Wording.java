package bagclock.logfile;

import bagclock.logfile.Channel.Kind;
import bagclock.logfile.Channel.Unit;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the words of a header say, in the languages that loggers speak. */
final class Wording {
    private static final Pattern DEW = Pattern.compile("dew|taupunkt|ros[ée]e|roc[ií]o");
    private static final Pattern FROST = Pattern.compile("frost|reifpunkt");
    private static final Pattern TEMPERATURE =
            Pattern.compile("^t$|temp|celsius|fahrenheit|airt[cf]|^t[ _(\\[,]|deg\\.? ?[cf]\\b");
    private static final Pattern HUMIDITY = Pattern.compile("humid|feuchte|humedad|relhum|relat|r\\.h\\."
            + "|(?<![a-z])(rh|hum|rel)(?![a-z])|rhpercent|(?<![a-z(\\[/])hr(?![a-z)\\]])");

    /** Not relative to saturation, or no humidity at all; taken for one it would look dry. */
    private static final Pattern NO_HUMIDITY = Pattern.compile(
            "(?<![a-z])(abs|press)|g/m|g/kg|specific|spezif|mixing|druck|presi[oó]n|deficit|vpd|elapsed|(?<![a-z])(run|up)[ _-]?time");

    /** Below the temperature of the air, or only felt. */
    private static final Pattern NO_TEMPERATURE =
            Pattern.compile("wet.?bulb|feuchtkugel|feuchttemp|heat.?index|wind.?chill|feels|apparent|gef[uü]hlt");

    private static final Pattern TIME =
            Pattern.compile("time|date|datum|uhrzeit|zeit|heure|fecha|hora|timestamp|created|changed|^ts$");
    private static final Pattern FAHRENHEIT =
            Pattern.compile("fahrenheit|airtf|(^|[°º*?(\\[,;/_ ]|deg\\.? ?) ?f($|[)\\] _,;])");
    private static final Pattern CELSIUS = Pattern.compile("celsius|(^|[°º*?(\\[,;/_ ]|deg\\.? ?) ?c($|[)\\] _,;])");
    private static final Pattern OFFSET = Pattern.compile("(?:GMT|UTC) ?([+-])(\\d{1,2})(?::?(\\d{2}))?");

    private Wording() {}

    /** A dew point is never taken for a temperature, nor grams of water for a relative humidity. */
    static Optional<Kind> kind(String header) {
        String words = plain(header);
        if (FROST.matcher(words).find()) {
            return Optional.of(Kind.FROST_POINT);
        } else if (DEW.matcher(words).find()) {
            return Optional.of(Kind.DEW_POINT);
        } else if (TEMPERATURE.matcher(words).find()) {
            return NO_TEMPERATURE.matcher(words).find() ? Optional.empty() : Optional.of(Kind.TEMPERATURE);
        }
        boolean isHumidity =
                HUMIDITY.matcher(words).find() && !NO_HUMIDITY.matcher(words).find();
        return isHumidity ? Optional.of(Kind.HUMIDITY) : Optional.empty();
    }

    static Optional<Unit> unit(String header) {
        String words = plain(header);
        boolean celsius = CELSIUS.matcher(words).find();
        boolean fahrenheit = FAHRENHEIT.matcher(words).find();
        if (celsius == fahrenheit) {
            return Optional.empty();
        }
        return Optional.of(celsius ? Unit.CELSIUS : Unit.FAHRENHEIT);
    }

    static boolean isTime(String header) {
        return TIME.matcher(plain(header)).find();
    }

    /** An offset such as GMT-07:00 that holds for the whole file. */
    static Optional<ZoneOffset> offset(String header) {
        Matcher found = OFFSET.matcher(header);
        if (!found.find()) {
            return Optional.empty();
        }
        int sign = found.group(1).equals("-") ? -1 : 1;
        int hours = Integer.parseInt(found.group(2));
        int minutes = found.group(3) == null ? 0 : Integer.parseInt(found.group(3));
        return hours > 14 || minutes > 59
                ? Optional.empty()
                : Optional.of(ZoneOffset.ofHoursMinutes(sign * hours, sign * minutes));
    }

    private static String plain(String header) {
        return header.strip().toLowerCase(Locale.ROOT);
    }
}
