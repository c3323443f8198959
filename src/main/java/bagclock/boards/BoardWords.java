package bagclock.boards;

import bagclock.core.Refusal;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.BoardAnswer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.Verdict;
import bagclock.desk.BoardReply;
import bagclock.desk.BoardView;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardNotes;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Texts;
import bagclock.register.BoardType;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts answers about boards and refusals into words. */
final class BoardWords {
    private static final int MOST_PARTS = 40;

    private final Texts texts;
    private final Messages messages;
    private final AnswerTexts answers;
    private final Names names;

    BoardWords(Texts texts, Names names) {
        this.texts = texts;
        this.messages = texts.messages();
        this.answers = new AnswerTexts(messages, texts);
        this.names = names;
    }

    Texts texts() {
        return texts;
    }

    String text(String key, Object... parts) {
        return messages.text(key, parts);
    }

    String name(String id) {
        return names.of(id);
    }

    /** The refusals in words; persons by name. */
    List<String> refusals(List<Refusal> refusals) {
        return refusals.stream().map(this::refusal).toList();
    }

    private String refusal(Refusal refusal) {
        return switch (refusal.reason()) {
            case BOARD_CHANGED_MEANWHILE ->
                messages.text(
                        "refusal.BOARD_CHANGED_MEANWHILE",
                        refusal.parts().get(0),
                        names.of(refusal.parts().get(1).toString()),
                        texts.part(refusal.parts().get(2)));
            default -> texts.refusal(refusal);
        };
    }

    /** The answer about a board. */
    AnswerBox box(BoardReply reply, Duration length, Instant now) {
        Answer whole = reply.answer().whole();
        List<BoardAnswer.At> telling = reply.answer().parts().stream()
                .filter(part -> part.counts() || part.answer().verdict() != Verdict.CLEAR)
                .sorted(Comparator.comparing(
                                (BoardAnswer.At part) -> part.answer().verdict())
                        .reversed())
                .toList();
        int hidden = reply.answer().parts().size() - Math.min(telling.size(), MOST_PARTS);
        return new AnswerBox(
                whole.verdict().code(),
                sentence(whole, now),
                answers.aside(whole, length, now),
                reply.notices().stream()
                        .map(notice -> messages.text("boards.notice." + notice.name()))
                        .toList(),
                whole.reasons().stream().map(this::reason).toList(),
                whole.bakes().stream().map(this::bake).toList(),
                telling.stream()
                        .limit(MOST_PARTS)
                        .map(part -> part(reply, part, now))
                        .toList(),
                hidden == 0 ? "" : messages.text("boards.parts.rest", hidden));
    }

    /** The answer about an item by itself. */
    AnswerBox box(Answer answer, Duration length, Instant now) {
        return new AnswerBox(
                answer.verdict().code(),
                sentence(answer, now),
                answers.aside(answer, length, now),
                List.of(),
                answer.reasons().stream().map(this::reason).toList(),
                answer.bakes().stream().map(this::bake).toList(),
                List.of(),
                "");
    }

    private AnswerBox.Part part(BoardReply reply, BoardAnswer.At part, Instant now) {
        String tag = reply.items().getOrDefault(part.location(), "");
        String verdict = part.answer().verdict().code();
        return new AnswerBox.Part(
                part.location(),
                tag.isEmpty() ? messages.text("boards.parts.no-item") : tag,
                tag.isEmpty() ? "" : "/items/" + tag,
                verdict,
                messages.text("verdict." + verdict),
                sentence(part.answer(), now));
    }

    /** Until when, or what first. */
    String sentence(Answer answer, Instant now) {
        return answers.sentence(answer, now).orElseGet(() -> messages.text("boards.nothing-above-200"));
    }

    private AnswerBox.Reason reason(Finding finding) {
        return new AnswerBox.Reason(answers.finding(finding), answers.because(finding));
    }

    private AnswerBox.Bake bake(BakeOffer offer) {
        return new AnswerBox.Bake(
                texts.temperature(offer.temperature()),
                hours(offer.time()),
                answers.bakeHumidity(offer),
                answers.bars(offer));
    }

    /** A bake's time is never shown shorter than it is. */
    String hours(Duration time) {
        return answers.bakeTime(time);
    }

    /** What stays on the board in a bake, in one sentence; empty where nothing is named. */
    String keptOn(BoardView view) {
        String all = view.type().stream()
                .flatMap(type -> type.fact().keptOn().stream())
                .map(BoardType.KeptOn::what)
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "" : text("boards.caution.kept.here", all);
    }

    /** By whom, when and why a heat was released; empty without a release. */
    String given(Optional<BoardEntry> release, Instant now) {
        return release.map(entry -> text(
                        "boards.release.given",
                        name(entry.stamp().who()),
                        texts().at(entry.happenedAt(), now),
                        entry.say(BoardNotes.WHY).orElse("")))
                .orElse("");
    }
}
