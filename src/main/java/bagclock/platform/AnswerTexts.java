package bagclock.platform;

import bagclock.core.Refusal;
import bagclock.core.heat.Assumption;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.StepCode;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Status;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words of an answer, in the language of the bundle and the zone of the texts. */
public final class AnswerTexts {
    private final Messages messages;
    private final Texts texts;

    /** Words from one bundle, times in one zone. */
    public AnswerTexts(Messages messages, Texts texts) {
        this.messages = messages;
        this.texts = texts;
    }

    /** Why. */
    public String finding(Finding finding) {
        return text("finding." + finding.code().name(), finding.parts());
    }

    /** Where the reason stands: the table's cell that decided, else the rule's source. */
    public String source(Finding finding) {
        return finding.citation().map(AnswerTexts::cell).orElse(finding.code().source());
    }

    private static String cell(Citation citation) {
        String place = Stream.of(citation.document(), citation.table(), citation.row(), citation.column())
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
        return citation.sources().isEmpty() ? place : place + " (" + citation.sources() + ")";
    }

    /** How far its source may be trusted. */
    public Status status(Finding finding) {
        return finding.citation().map(Citation::status).orElse(finding.code().status());
    }

    /** What to do. */
    public String step(StepCode step) {
        return messages.text("step." + step.name());
    }

    /** What speaks against a bake, in one sentence or more. */
    public String bars(BakeOffer offer) {
        return offer.bars().stream()
                .map(bar -> text("bar." + bar.code().name(), List.of(bar.limit())))
                .collect(Collectors.joining(" "));
    }

    /** Why a missing fact was taken so. */
    public String assumption(Assumption assumption) {
        return messages.text("assumed." + assumption.fact().name());
    }

    /** Why a history is not possible. */
    public String refusal(Refusal refusal) {
        return texts.refusal(refusal);
    }

    private String text(String key, List<Object> parts) {
        return messages.text(key, parts.stream().map(texts::part).toArray());
    }
}
