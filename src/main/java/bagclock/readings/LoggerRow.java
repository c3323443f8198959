package bagclock.readings;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Function;

/** One version of a logger, as stored; empty text for what was not said. */
record LoggerRow(
        String name,
        int version,
        String placeCode,
        String timeZone,
        String dayOrder,
        String unit,
        String temperatureChannel,
        String humidityChannel,
        boolean spreadsheetDays,
        String belowZero) {
    static LoggerRow of(LoggerProfile profile, int version) {
        return new LoggerRow(
                profile.name(),
                version,
                profile.placeCode(),
                profile.zone().map(ZoneId::getId).orElse(""),
                profile.dayOrder().map(Enum::name).orElse(""),
                profile.unit().map(Enum::name).orElse(""),
                profile.names().temperature().orElse(""),
                profile.names().humidity().orElse(""),
                profile.spreadsheetDays(),
                profile.belowZero().name());
    }

    LoggerProfile profile() {
        return new LoggerProfile(
                name,
                placeCode,
                said(timeZone, ZoneId::of),
                said(dayOrder, DayOrder::valueOf),
                said(unit, Channel.Unit::valueOf),
                new Answers.Names(
                        said(temperatureChannel, Function.identity()), said(humidityChannel, Function.identity())),
                spreadsheetDays,
                LoggerProfile.BelowZero.valueOf(belowZero));
    }

    private static <T> Optional<T> said(String text, Function<String, T> meaning) {
        return text.isEmpty() ? Optional.empty() : Optional.of(meaning.apply(text));
    }
}
