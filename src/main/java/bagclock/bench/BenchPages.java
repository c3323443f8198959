package bagclock.bench;

import bagclock.bench.BenchPage.BoardPart;
import bagclock.bench.BenchPage.PlanFields;
import bagclock.bench.BenchPage.RecordPart;
import bagclock.bench.BenchPage.RecordPart.Hidden;
import bagclock.core.heat.Answer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.heat.Verdict;
import bagclock.desk.Decided;
import bagclock.desk.ItemView;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts the question and its answer on a page. */
final class BenchPages {
    static final String AT = "at";
    static final String MEASURED = "measured";
    static final String KEY = "key";

    private final Messages messages;
    private final Texts texts;
    private final AnswerWords words;

    BenchPages(Texts texts) {
        this.messages = texts.messages();
        this.texts = texts;
        this.words = new AnswerWords(texts);
    }

    /** An item and whether it may be heated as planned. */
    record Answered(ItemView item, Answer answer) {}

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
                                messages.text("bench.memory", decided.cells().size(), decided.answers()));
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
        return page(form, topics, Optional.of(part), Optional.empty(), Optional.of(record));
    }

    /** The answers about every part on a board. */
    BenchPage board(PlanForm form, List<Answered> parts, Instant now) {
        Answered strictest = parts.stream()
                .max(Comparator.comparing(part -> part.answer().verdict()))
                .orElseThrow();
        Verdict verdict = strictest.answer().verdict();
        List<BoardPart.Line> lines =
                parts.stream().map(part -> line(form, part, now)).toList();
        long asStrict = parts.stream()
                .filter(part -> part.answer().verdict() == verdict)
                .count();
        BoardPart board = new BoardPart(
                form.code(),
                verdict.code(),
                verdict == Verdict.CLEAR ? allClear(parts, now) : notClear(verdict, asStrict),
                messages.text("bench.board.aside", parts.size()),
                lines);
        return page(form, "item zone register", Optional.empty(), Optional.of(board), Optional.empty());
    }

    private String allClear(List<Answered> parts, Instant now) {
        return parts.stream()
                .flatMap(part -> part.answer().until().stream())
                .min(Comparator.naturalOrder())
                .map(until -> messages.text("bench.until", texts.at(until, now)))
                .orElseGet(() -> messages.text("bench.board.clear"));
    }

    private String notClear(Verdict verdict, long count) {
        String word = messages.text("verdict." + verdict.code());
        return messages.text(count == 1 ? "bench.board.one" : "bench.board.some", count, word);
    }

    private BoardPart.Line line(PlanForm form, Answered part, Instant now) {
        var item = part.item().item();
        String verdict = part.answer().verdict().code();
        return new BoardPart.Line(
                item.location().orElse(""),
                item.tag(),
                item.partType() + " " + part.item().partType().fact().description(),
                verdict,
                messages.text("verdict." + verdict),
                words.sentence(part.answer(), now),
                form.addressFor(item.tag()));
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
                "");
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
        List<Hidden> hidden = new java.util.ArrayList<>();
        PlanForm.FIELDS.forEach(
                name -> hidden.add(new Hidden(name, form.entered().text(name))));
        hidden.add(new Hidden(KEY, sent.text(KEY)));
        return new RecordPart(
                List.copyOf(hidden),
                sent.field(AT, messages.text("bench.record.at"), messages.text("bench.record.at.hint")),
                sent.field(
                        MEASURED, messages.text("bench.record.measured"), messages.text("bench.record.measured.hint")),
                fits,
                refusal);
    }
}
