package bagclock.ovens;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.Layout;
import java.util.List;
import java.util.Optional;

/**
 * What a person said about the chart of an oven.
 *
 * @param probes names of the channels that are in the load
 * @param humidity name of the channel of the oven's humidity; empty if there is none
 */
record ChartAnswers(Answers answers, List<String> probes, Optional<String> humidity) {
    ChartAnswers {
        probes = List.copyOf(probes);
    }

    /** As long as nobody has said another: every channel that is in degrees by its name, the first humidity. */
    static ChartAnswers usual(Layout layout) {
        List<String> probes = layout.channels().stream()
                .filter(channel -> is(channel, Channel.Kind.TEMPERATURE)
                        || (channel.kind().isEmpty() && channel.unit().isPresent()))
                .map(Channel::name)
                .toList();
        Optional<String> humidity = layout.channels().stream()
                .filter(channel -> is(channel, Channel.Kind.HUMIDITY))
                .map(Channel::name)
                .findFirst();
        return new ChartAnswers(Answers.NONE, probes, humidity);
    }

    private static boolean is(Channel channel, Channel.Kind kind) {
        return channel.kind().filter(kind::equals).isPresent();
    }

    /** What was said of another chart of the same logger, as far as this one has the same channels. */
    ChartAnswers on(Layout layout) {
        List<String> names = layout.channels().stream().map(Channel::name).toList();
        return names.containsAll(probes) && names.containsAll(humidity.stream().toList())
                ? this
                : new ChartAnswers(answers, usual(layout).probes, usual(layout).humidity);
    }

    /** For the reader: the first probe stands for all of them. */
    Answers forReader() {
        Answers.Names names = new Answers.Names(probes.stream().findFirst(), humidity);
        return answers.with(names);
    }

    /** The layout with the kinds of channels that follow from what was said. */
    Layout say(Layout layout) {
        List<Channel> channels = layout.channels().stream()
                .map(channel -> new Channel(channel.name(), kind(channel), channel.unit()))
                .toList();
        return new Layout(layout.table(), layout.times(), channels);
    }

    private Optional<Channel.Kind> kind(Channel channel) {
        if (probes.contains(channel.name())) {
            return Optional.of(Channel.Kind.TEMPERATURE);
        }
        return humidity.filter(channel.name()::equals).isPresent()
                ? Optional.of(Channel.Kind.HUMIDITY)
                : channel.kind();
    }
}
