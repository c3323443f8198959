package bagclock.climate;

import bagclock.logfile.Channel;
import bagclock.logfile.Question;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.readings.AnswersForm;
import bagclock.readings.Asked;
import bagclock.readings.AskedFields;
import bagclock.readings.LoggerProfile.BelowZero;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The fields in which a person says what a file of a room's logger leaves open. */
final class RoomFields {
    private final Messages messages;
    private final AskedFields fields;

    RoomFields(Messages messages) {
        this.messages = messages;
        this.fields = new AskedFields(messages);
    }

    /** Fields of what is open, or was said, or can be chosen. */
    List<Asked> of(Preview preview, Entered entered) {
        List<Asked> asked = new ArrayList<>(fields.of(preview.file().layout(), entered));
        channels(preview, entered, asked);
        belowZero(preview, entered, asked);
        fields.doubled(preview.file(), preview.open(), entered).ifPresent(asked::add);
        return asked;
    }

    private void channels(Preview preview, Entered entered, List<Asked> asked) {
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
            asked.add(fields.choose(entered, AnswersForm.TEMPERATURE, names));
            asked.add(fields.choose(entered, AnswersForm.HUMIDITY, names));
        }
    }

    private void belowZero(Preview preview, Entered entered, List<Asked> asked) {
        if (preview.belowZero() > 0) {
            asked.add(fields.choose(
                    entered,
                    AnswersForm.BELOW_ZERO,
                    List.of(
                            Choice.of(BelowZero.UNKNOWN.name(), messages.text("climate.file.below-zero.unknown")),
                            Choice.of(BelowZero.DEW_POINT.name(), messages.text("climate.file.below-zero.dew")),
                            Choice.of(BelowZero.FROST_POINT.name(), messages.text("climate.file.below-zero.frost")))));
        }
    }
}
