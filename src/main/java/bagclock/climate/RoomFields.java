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
import java.util.Optional;
import java.util.stream.Stream;

/** The fields in which a person says what a file of a room's logger leaves open. */
final class RoomFields {
    /** Name of the field that says which half a file is. */
    static final String HOLDS = "holds";

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
        belowZero(preview.belowZero(), entered, asked);
        fields.doubled(preview.file(), preview.open(), entered).ifPresent(asked::add);
        return asked;
    }

    /**
     * As {@link #of(Preview, Entered)}, of two halves.
     *
     * @param which whether it must be said which of both holds the temperatures
     */
    List<Asked> of(PairPreview preview, Entered entered, boolean which) {
        List<Asked> asked = new ArrayList<>();
        if (which) {
            asked.add(fields.choose(
                    entered,
                    HOLDS,
                    List.of(
                            Choice.of(
                                    Channel.Kind.TEMPERATURE.name(), messages.text("climate.half.holds.temperatures")),
                            Choice.of(Channel.Kind.HUMIDITY.name(), messages.text("climate.half.holds.humidities")))));
        }
        Stream.of(preview.temperature(), preview.humidity())
                .flatMap(half -> fields.of(half.file().layout(), entered).stream())
                .filter(one -> asked.stream()
                        .noneMatch(
                                other -> other.field().name().equals(one.field().name())))
                .forEach(asked::add);
        channel(preview.temperature(), AnswersForm.TEMPERATURE, entered).ifPresent(asked::add);
        channel(preview.humidity(), AnswersForm.HUMIDITY, entered).ifPresent(asked::add);
        belowZero(preview.belowZero(), entered, asked);
        Stream.of(preview.temperature(), preview.humidity())
                .flatMap(half -> fields.doubled(half.file(), preview.open(), entered).stream())
                .findFirst()
                .ifPresent(asked::add);
        return asked;
    }

    /** Of a half with several columns of its kind. */
    private Optional<Asked> channel(Half half, String name, Entered entered) {
        List<Choice> names = half.file().layout().channels().stream()
                .filter(channel ->
                        channel.kind().filter(kind -> kind == half.kind()).isPresent())
                .map(channel -> Choice.of(channel.name(), channel.name()))
                .toList();
        Stream<Choice> first = Stream.of(Choice.of("", messages.text("climate.file.channel.first")));
        return names.size() < 2
                ? Optional.empty()
                : Optional.of(fields.choose(
                        entered, name, Stream.concat(first, names.stream()).toList()));
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

    private void belowZero(long count, Entered entered, List<Asked> asked) {
        if (count > 0) {
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
