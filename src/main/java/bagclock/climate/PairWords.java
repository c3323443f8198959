package bagclock.climate;

import bagclock.logfile.Channel.Kind;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.util.stream.Stream;

/** Says what came of putting two files together. */
final class PairWords {
    private final Texts texts;
    private final Messages messages;

    PairWords(Texts texts) {
        this.texts = texts;
        this.messages = texts.messages();
    }

    /** How many samples found each other, and which did not. */
    Stream<String> lines(Pairing.Found found) {
        Stream<String> counts = Stream.of(
                        line("climate.half.found.paired", found.paired()),
                        line("climate.half.found.temperatures", found.temperaturesAlone()),
                        line("climate.half.found.humidities", found.humiditiesAlone()))
                .flatMap(words -> words);
        return Stream.concat(counts, found.spells().stream().map(this::spell));
    }

    private Stream<String> line(String key, long count) {
        return count == 0 ? Stream.empty() : Stream.of(messages.text(key, count));
    }

    private String spell(Pairing.Spell spell) {
        boolean isTemperature = spell.kind() == Kind.TEMPERATURE;
        String from = texts.at(spell.from());
        if (spell.samples() == 1) {
            String key = isTemperature ? "climate.half.alone.temperature" : "climate.half.alone.humidity";
            return messages.text(key, from);
        }
        String key = isTemperature ? "climate.half.alone.temperatures" : "climate.half.alone.humidities";
        return messages.text(key, from, texts.at(spell.to()), spell.samples());
    }
}
