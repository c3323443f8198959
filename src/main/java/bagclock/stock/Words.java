package bagclock.stock;

import bagclock.core.Refusal;
import bagclock.core.exposure.Air;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.StepCode;
import bagclock.core.heat.Verdict;
import bagclock.ledger.Act;
import bagclock.ledger.Entry;
import bagclock.ledger.Item;
import bagclock.ledger.Notes;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The stockroom's words. */
final class Words {
    private final Messages messages;
    private final Texts texts;
    private final AnswerTexts answers;

    Words(Texts texts) {
        this.messages = texts.messages();
        this.texts = texts;
        this.answers = new AnswerTexts(messages, texts);
    }

    Texts texts() {
        return texts;
    }

    String text(String key, Object... parts) {
        return messages.text(key, parts);
    }

    List<String> refusals(List<Refusal> refusals) {
        return refusals.stream().map(texts::refusal).toList();
    }

    /** The answer in one sentence. */
    String sentence(Answer answer, Instant now) {
        if (answer.verdict() == Verdict.CLEAR) {
            return answer.until()
                    .map(until -> text("stock.clear.until", texts.at(until, now)))
                    .orElseGet(() -> text("stock.clear"));
        } else if (answer.verdict() == Verdict.WAIT && answer.until().isPresent()) {
            Instant until = answer.until().get();
            return text(until.isAfter(now) ? "stock.wait.until" : "stock.wait.over", texts.at(until, now));
        }
        return finding(answer.reasons().get(0));
    }

    /** The time left, or nothing. */
    String aside(Answer answer, Instant now) {
        return answer.until()
                .filter(until -> until.isAfter(now))
                .map(until -> text("stock.left", texts.span(Duration.between(now, until))))
                .orElse("");
    }

    String finding(Finding finding) {
        return answers.finding(finding);
    }

    /** For example {@code 48 h at 125 C}. */
    String bake(BakeOffer offer) {
        return text("stock.bake", answers.bakeTime(offer.time()), texts.temperature(offer.temperature()));
    }

    String bars(BakeOffer offer) {
        return answers.bars(offer);
    }

    /** Where its time stands, and how far that may be trusted. */
    String source(BakeOffer offer) {
        return answers.because(offer.citation());
    }

    String source(Finding finding) {
        return answers.source(finding);
    }

    String status(Finding finding) {
        return answers.status(finding).code();
    }

    String step(StepCode step) {
        return answers.step(step);
    }

    /** What an entry says, with the place, carrier or child that it names. */
    String act(Entry entry) {
        String word = text("stock.entry." + entry.act().word());
        String named = named(entry.act());
        return named.isEmpty() ? word : word + ": " + named;
    }

    private String named(Act act) {
        if (act instanceof Act.Happened happened) {
            return named(happened.notes());
        } else if (act instanceof Act.Received received) {
            return received.partType() + ", " + pieces(received.quantity());
        } else if (act instanceof Act.SplitOff split) {
            return split.child() + ", " + pieces(split.quantity());
        } else if (act instanceof Act.SplitFrom from) {
            return from.parent() + ", " + pieces(from.quantity());
        } else if (act instanceof Act.UsedUp used) {
            return used.workOrder() + ", " + pieces(used.quantity());
        }
        if (act instanceof Act.PutAt put) {
            return put.placeCode();
        } else if (act instanceof Act.BakedElsewhere baked) {
            return elsewhere(baked);
        }
        return act instanceof Act.JoinedInto into ? into.keeper() : "";
    }

    private String elsewhere(Act.BakedElsewhere baked) {
        return text(
                "stock.entry.baked-elsewhere.told",
                baked.oven(),
                answers.bakeTime(baked.time()),
                texts.temperature(baked.temperature()));
    }

    private String named(Map<String, String> notes) {
        Stream<String> names = List.of(Notes.PLACE, Notes.CARRIER, Notes.BOARD, Notes.LOCATION).stream()
                .filter(notes::containsKey)
                .map(notes::get);
        Stream<String> remarks = Stream.of(
                        remark(notes, Notes.ABOVE_OPENING_LIMIT, "stock.entry.above"),
                        remark(notes, Notes.OPENED_ANYWAY, "stock.entry.anyway"),
                        remark(notes, Notes.CALIBRATION_WAS_DUE, "stock.entry.calibration"))
                .flatMap(Optional::stream);
        return Stream.concat(names, remarks).collect(Collectors.joining(", "));
    }

    private Optional<String> remark(Map<String, String> notes, String note, String key) {
        return Optional.ofNullable(notes.get(note)).map(said -> text(key, said));
    }

    String air(Air air) {
        return text("stock.air", texts.temperature(air.temperature()), texts.humidity(air.humidity()));
    }

    /** How many parts. */
    String pieces(long quantity) {
        return quantity == 1 ? text("stock.piece") : text("stock.pieces", quantity);
    }

    String where(Item item) {
        return item.board()
                .map(board -> text("stock.on-board", board))
                .or(item::placeCode)
                .orElseGet(() -> text("stock.where." + item.where().name()));
    }
}
