package bagclock.climate;

import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import bagclock.logfile.Layout;
import bagclock.logfile.Question;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.readings.LoggerProfile.BelowZero;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The fields in which a person says what a file leaves open. */
final class AskedFields {
    private final Messages messages;

    AskedFields(Messages messages) {
        this.messages = messages;
    }

    /** Fields of what is open, or was said, or can be chosen. */
    List<FilePage.Asked> of(Preview preview, Entered entered) {
        Layout layout = preview.file().layout();
        List<FilePage.Asked> asked = new ArrayList<>();
        if (!layout.times().withOffset()) {
            String hint = layout.times()
                    .headerOffset()
                    .map(offset -> messages.text("climate.file.zone.header", offset))
                    .orElse(messages.text("climate.file.zone.hint"));
            asked.add(new FilePage.Asked(entered.field("zone", messages.text("climate.file.zone"), hint), List.of()));
        }
        if (layout.times().orderOpen()) {
            asked.add(choose(
                    entered,
                    AnswersForm.ORDER,
                    List.of(
                            Choice.of(DayOrder.DAY_FIRST.name(), messages.text("climate.file.order.day")),
                            Choice.of(DayOrder.MONTH_FIRST.name(), messages.text("climate.file.order.month")))));
        }
        if (layout.channels().stream().anyMatch(AskedFields::isWithoutUnit)) {
            asked.add(choose(
                    entered,
                    AnswersForm.UNIT,
                    List.of(
                            Choice.of(Channel.Unit.CELSIUS.name(), messages.text("climate.file.unit.celsius")),
                            Choice.of(Channel.Unit.FAHRENHEIT.name(), messages.text("climate.file.unit.fahrenheit")))));
        }
        if (layout.times().spreadsheetDays()) {
            asked.add(choose(
                    entered,
                    AnswersForm.DAYS,
                    List.of(Choice.of(AnswersForm.YES, messages.text("climate.file.days.yes")))));
        }
        channels(preview, entered, asked);
        rare(preview, entered, asked);
        return asked;
    }

    private static boolean isWithoutUnit(Channel channel) {
        return channel.unit().isEmpty()
                && channel.kind().map(Channel.Kind::isInDegrees).orElse(true);
    }

    private void channels(Preview preview, Entered entered, List<FilePage.Asked> asked) {
        List<Channel> all = preview.file().layout().channels();
        boolean choice = preview.open().contains(Question.CHANNELS)
                || preview.channels().isEmpty()
                || Stream.of(Channel.Kind.TEMPERATURE, Channel.Kind.HUMIDITY)
                        .anyMatch(kind -> all.stream()
                                        .filter(channel -> channel.kind()
                                                .filter(kind::equals)
                                                .isPresent())
                                        .count()
                                > 1);
        if (choice && all.size() > 1) {
            List<Choice> names = Stream.concat(
                            Stream.of(Choice.of("", messages.text("climate.file.channel.first"))),
                            all.stream().map(channel -> Choice.of(channel.name(), channel.name())))
                    .toList();
            asked.add(choose(entered, AnswersForm.TEMPERATURE, names));
            asked.add(choose(entered, AnswersForm.HUMIDITY, names));
        }
    }

    private void rare(Preview preview, Entered entered, List<FilePage.Asked> asked) {
        if (preview.belowZero() > 0) {
            asked.add(choose(
                    entered,
                    AnswersForm.BELOW_ZERO,
                    List.of(
                            Choice.of(BelowZero.UNKNOWN.name(), messages.text("climate.file.below-zero.unknown")),
                            Choice.of(BelowZero.DEW_POINT.name(), messages.text("climate.file.below-zero.dew")),
                            Choice.of(BelowZero.FROST_POINT.name(), messages.text("climate.file.below-zero.frost")))));
        }
        if (preview.open().contains(Question.DOUBLE_HOUR)
                || preview.file().answers().secondOfBoth().isPresent()) {
            asked.add(choose(
                    entered,
                    AnswersForm.DOUBLED,
                    List.of(
                            Choice.of("first", messages.text("climate.file.doubled.first")),
                            Choice.of(AnswersForm.SECOND, messages.text("climate.file.doubled.second")))));
        }
    }

    private FilePage.Asked choose(Entered entered, String name, List<Choice> choices) {
        return new FilePage.Asked(entered.field(name, messages.text("climate.file." + name)), choices);
    }
}
