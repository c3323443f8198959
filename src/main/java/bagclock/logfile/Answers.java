package bagclock.logfile;

import java.time.ZoneId;
import java.util.Optional;

/**
 * What a person said about a file, or about a logger once for all its files.
 *
 * @param zone where the logger's clock stands; wins over an offset in the header, but not over one beside each time
 * @param unit of temperatures of which the file says none
 * @param names which channels are meant
 * @param spreadsheetDays whether numbers may be a spreadsheet's days
 * @param secondOfBoth whether an hour that is in the file once, but twice in the year, is the second of both
 */
public record Answers(
        Optional<ZoneId> zone,
        Optional<DayOrder> dayOrder,
        Optional<Channel.Unit> unit,
        Names names,
        boolean spreadsheetDays,
        Optional<Boolean> secondOfBoth) {
    /** Nothing was said. */
    public static final Answers NONE =
            new Answers(Optional.empty(), Optional.empty(), Optional.empty(), Names.NONE, false, Optional.empty());

    /** Names of channels; empty: the first that says so itself. */
    public record Names(Optional<String> temperature, Optional<String> humidity) {
        /** None named. */
        public static final Names NONE = new Names(Optional.empty(), Optional.empty());
    }

    /** With the zone of the logger's clock. */
    public Answers in(ZoneId other) {
        return new Answers(Optional.of(other), dayOrder, unit, names, spreadsheetDays, secondOfBoth);
    }

    /** With an order of day and month. */
    public Answers with(DayOrder order) {
        return new Answers(zone, Optional.of(order), unit, names, spreadsheetDays, secondOfBoth);
    }

    /** With a unit of temperature. */
    public Answers with(Channel.Unit other) {
        return new Answers(zone, dayOrder, Optional.of(other), names, spreadsheetDays, secondOfBoth);
    }

    /** With channels. */
    public Answers with(Names chosen) {
        return new Answers(zone, dayOrder, unit, chosen, spreadsheetDays, secondOfBoth);
    }

    /** With numbers as a spreadsheet's days. */
    public Answers withSpreadsheetDays() {
        return new Answers(zone, dayOrder, unit, names, true, secondOfBoth);
    }

    /** With the second, or the first, of an hour that autumn has twice. */
    public Answers withSecondOfBoth(boolean second) {
        return new Answers(zone, dayOrder, unit, names, spreadsheetDays, Optional.of(second));
    }
}
