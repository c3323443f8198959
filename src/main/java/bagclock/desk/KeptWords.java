package bagclock.desk;

import bagclock.core.heat.Verdict;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts an answer that was kept into words, the same on every page that shows one. */
public final class KeptWords {
    /** As a map writes itself: name, equals sign, number. */
    private static final Pattern FACT = Pattern.compile("(.+?)=(\\d+)(?:, |})");

    private final Texts texts;
    private final Messages messages;

    /** Words of one bundle, times of one zone. */
    public KeptWords(Texts texts) {
        this.texts = texts;
        this.messages = texts.messages();
    }

    /** Until when it held, else what decided; empty without a reason. */
    public Optional<String> sentence(KeptAnswer answer) {
        boolean isClear = answer.verdict() == Verdict.CLEAR;
        return answer.until()
                .map(until -> messages.text(isClear ? "answer.until" : "answer.wait-until", texts.at(until)))
                .or(() -> answer.reasons().stream().findFirst().map(this::reason));
    }

    /** The reason; one that this release knows no words for by its code. */
    public String reason(KeptAnswer.Reason reason) {
        Object[] parts = reason.parts().stream().map(texts::part).toArray();
        String key = "finding." + reason.code();
        return messages.has(key) ? messages.text(key, parts) : reason.code();
    }

    /** The facts that an answer was worked out from, each with its version. */
    public String versions(String kept) {
        Stream<String> tables = Stream.of(kept.replaceFirst(" ?\\{.*", "").replace('_', '-'));
        Stream<String> facts = FACT.matcher(kept.replaceFirst("^[^{]*\\{?", ""))
                .results()
                .map(fact -> messages.text("kept.version", fact.group(1), fact.group(2)));
        return Stream.concat(tables, facts).collect(Collectors.joining("; "));
    }

    /** The table cells of the bakes that it asked for; empty for none. */
    public Optional<String> bakeCells(KeptAnswer answer) {
        return Optional.of(String.join("; ", answer.bakeCells())).filter(cells -> !cells.isEmpty());
    }

    /** The table cell that decided, with its mark; empty for none. */
    public String source(KeptAnswer.Reason reason) {
        return reason.source()
                .map(from -> messages.text(
                        "answer.source", from, reason.status().map(texts::part).orElse("")))
                .orElse("");
    }
}
