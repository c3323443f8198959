package bagclock.readings;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A logger, and what was said once for all its files.
 *
 * @param placeCode the zone or cabinet that it hangs in
 * @param spreadsheetDays whether numbers in its files are a spreadsheet's days
 * @param belowZero what a dew point below 0 C means
 */
public record LoggerProfile(
        String name,
        String placeCode,
        Optional<ZoneId> zone,
        Optional<DayOrder> dayOrder,
        Optional<Channel.Unit> unit,
        Answers.Names names,
        boolean spreadsheetDays,
        BelowZero belowZero) {
    /** What a logger means by a dew point below 0 C. */
    public enum BelowZero {
        /** Nobody knows: taken as dew point, the wetter answer. */
        UNKNOWN,
        DEW_POINT,
        FROST_POINT
    }

    /** A logger of which nothing was said yet. */
    public static LoggerProfile fresh(String name, String placeCode) {
        return new LoggerProfile(
                name,
                placeCode,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Answers.Names.NONE,
                false,
                BelowZero.UNKNOWN);
    }
}
