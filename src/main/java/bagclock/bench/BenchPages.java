package bagclock.bench;

import bagclock.bench.BenchPage.BoardPart;
import bagclock.bench.BenchPage.PlanFields;
import bagclock.bench.BenchPage.RecordPart;
import bagclock.bench.BenchPage.RecordPart.Hidden;
import bagclock.bench.BenchPage.ReleasePart;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BoardAnswer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.heat.Release;
import bagclock.core.heat.Verdict;
import bagclock.desk.BoardNotice;
import bagclock.desk.BoardReply;
import bagclock.desk.Decided;
import bagclock.desk.ItemView;
import bagclock.ledger.Act;
import bagclock.ledger.Entry;
import bagclock.ledger.Notes;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Secret;
import bagclock.platform.Texts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts the question and its answer on a page. */
final class BenchPages {
    static final String AT = "at";
    static final String MEASURED = "measured";
    static final String KEY = "key";
    static final String WHY = "why";

    private static final int MOST_PARTS = 60;

    private final Messages messages;
    private final Texts texts;
    private final Names names;
    private final AnswerWords words;

    BenchPages(Names names, Texts texts) {
        this.messages = texts.messages();
        this.texts = texts;
        this.names = names;
        this.words = new AnswerWords(texts);
    }

    /** An item, whether it may be heated as planned, and the release that waits for that heat. */
    record Answered(ItemView item, Answer answer, Optional<Entry> release) {}

    /** The question alone. */
    BenchPage question(PlanForm form) {
        return page(form, "", Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The question alone, with a word about the cells from memory that have decided answers of late. */
    BenchPage question(PlanForm form, Decided decided) {
        return decided.cells().isEmpty()
                ? question(form)
                : question(form)
                        .remembering(
                                messages.text("tables.decided", decided.cells().size(), decided.answers()));
    }

    /**
     * The answer about one item, with the form that records the heat.
     *
     * @param sent what was typed into that form
     * @param refusal why the heat was not recorded; empty for no reason
     */
    BenchPage item(PlanForm form, Answered answered, Entered sent, String refusal, Instant now) {
        HeatPlan plan = form.plan().orElseThrow();
        AnswerPart part = words.of(answered.item(), plan, answered.answer(), now);
        boolean fits = answered.answer().verdict() == Verdict.CLEAR;
        RecordPart record = record(form, sent, fits, refusal);
        String topics = "item/" + part.tag() + " zone register";
        return page(form, topics, Optional.of(part), Optional.empty(), Optional.of(record))
                .releasing(answered.release().map(this::released).orElse(""), release(form, sent, answered));
    }

    private String released(Entry release) {
        return messages.text(
                "boards.release.given",
                names.of(release.stamp().who()),
                texts.at(release.happenedAt()),
                release.act() instanceof Act.Released released
                        ? released.notes().getOrDefault(Notes.WHY, "")
                        : "");
    }

    /** The form by which an engineer releases the heat, where that is possible and was not done. */
    private Optional<ReleasePart> release(PlanForm form, Entered sent, Answered answered) {
        if (!Release.isPossible(answered.answer()) || answered.release().isPresent()) {
            return Optional.empty();
        }
        List<Hidden> hidden = hidden(form);
        hidden.add(new Hidden(AT, sent.text(AT)));
        hidden.add(new Hidden(KEY, Secret.token()));
        return Optional.of(new ReleasePart(List.copyOf(hidden), sent.field(WHY, messages.text("boards.release.why"))));
    }

    /** The answer about a board, with the parts that decide. */
    BenchPage board(PlanForm form, String serial, BoardReply reply, Instant now) {
        Answer whole = reply.answer().whole();
        List<BoardPart.Line> lines = reply.answer().parts().stream()
                .sorted(Comparator.comparing(
                                (BoardAnswer.At part) -> part.answer().verdict())
                        .reversed())
                .limit(MOST_PARTS)
                .map(part -> line(form, reply, part, now))
                .toList();
        BoardPart board = new BoardPart(
                serial,
                reply.notices().contains(BoardNotice.TYPE_UNKNOWN) ? "/boards" : "/boards/" + serial,
                whole.verdict().code(),
                boardSentence(whole, now),
                messages.text("bench.board.aside", reply.answer().parts().size()),
                reply.notices().stream()
                        .map(notice -> messages.text("boards.notice." + notice.name()))
                        .toList(),
                lines);
        return page(
                form,
                "board/" + serial + " item zone register",
                Optional.empty(),
                Optional.of(board),
                Optional.empty());
    }

    private String boardSentence(Answer whole, Instant now) {
        boolean free = whole.verdict() == Verdict.CLEAR && whole.until().isEmpty();
        return free ? messages.text("bench.board.clear") : words.sentence(whole, now);
    }

    private BoardPart.Line line(PlanForm form, BoardReply reply, BoardAnswer.At part, Instant now) {
        String verdict = part.answer().verdict().code();
        String tag = reply.items().getOrDefault(part.location(), "");
        return new BoardPart.Line(
                part.location(),
                tag,
                tag.isEmpty() ? messages.text("boards.parts.no-item") : "",
                verdict,
                messages.text("verdict." + verdict),
                words.sentence(part.answer(), now),
                tag.isEmpty() ? "" : form.addressFor(tag));
    }

    private BenchPage page(
            PlanForm form,
            String topics,
            Optional<AnswerPart> answer,
            Optional<BoardPart> board,
            Optional<RecordPart> record) {
        return new BenchPage(
                messages.text("bench.title"),
                fields(form.entered()),
                form.address(),
                topics,
                answer,
                board,
                record,
                "",
                "",
                Optional.empty());
    }

    private PlanFields fields(Entered entered) {
        return new PlanFields(
                field(entered, PlanForm.CODE),
                field(entered, PlanForm.PURPOSE),
                Arrays.stream(Purpose.values()).map(this::choice).toList(),
                field(entered, PlanForm.PEAK),
                entered.field(PlanForm.MINUTES, messages.text("bench.minutes")),
                entered.field(PlanForm.LOCAL, messages.text("bench.local")),
                List.of(new Choice("yes", messages.text("bench.local.yes"), messages.text("bench.local.yes.note"))),
                field(entered, PlanForm.START));
    }

    private Field field(Entered entered, String name) {
        return entered.field(name, messages.text("bench." + name), messages.text("bench." + name + ".hint"));
    }

    private Choice choice(Purpose purpose) {
        String key = "bench.purpose." + purpose.code();
        return new Choice(purpose.code(), messages.text(key), messages.text(key + ".note"));
    }

    private RecordPart record(PlanForm form, Entered sent, boolean fits, String refusal) {
        List<Hidden> hidden = hidden(form);
        hidden.add(new Hidden(KEY, sent.text(KEY)));
        return new RecordPart(
                List.copyOf(hidden),
                sent.field(AT, messages.text("bench.record.at"), messages.text("bench.record.at.hint")),
                sent.field(
                        MEASURED, messages.text("bench.record.measured"), messages.text("bench.record.measured.hint")),
                fits,
                refusal);
    }

    private static List<Hidden> hidden(PlanForm form) {
        List<Hidden> hidden = new ArrayList<>();
        PlanForm.FIELDS.forEach(
                name -> hidden.add(new Hidden(name, form.entered().text(name))));
        return hidden;
    }
}
