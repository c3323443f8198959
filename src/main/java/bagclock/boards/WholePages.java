package bagclock.boards;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.heat.Release;
import bagclock.core.heat.Verdict;
import bagclock.desk.BoardReply;
import bagclock.desk.BoardView;
import bagclock.platform.Entered;
import bagclock.platform.Secret;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a heat of a whole board on a page. */
final class WholePages {
    private final Rooms rooms;
    private final BoardWords words;

    WholePages(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
    }

    /** What came of the last sending. */
    record Told(List<String> refusals, Entered sent, boolean mayRelease) {}

    static String path(BoardView view) {
        return "/boards/" + view.serial() + "/heat";
    }

    WholePage page(BoardView view, HeatForm form, Told told, Instant now) {
        BoardReply reply = rooms.boards().mayHeat(form.ask(view.serial(), "", Purpose.WHOLE_BOARD, now));
        boolean releasable =
                told.mayRelease() && Release.isPossible(reply.answer().whole());
        return new WholePage(
                words.text("boards.whole-heat.title", view.serial()),
                view.serial(),
                told.refusals(),
                path(view) + form.query(),
                "board/" + view.serial() + " item zone register",
                words.box(reply, form.length(), now),
                words.given(view.state().openRelease("", Purpose.WHOLE_BOARD.code()), now),
                plan(view, form),
                record(view, form, told.sent(), reply.answer().whole().verdict(), now),
                releasable
                        ? Optional.of(JobForms.release(words, told.sent(), path(view) + "/release", hidden(view, form)))
                        : Optional.empty(),
                List.of(words.text("boards.caution.hot"), words.text("boards.caution.label")));
    }

    /** How the board is to be heated, asked by address. */
    JobPage.Plan plan(BoardView view, HeatForm form) {
        Entered asked = form.entered();
        return new JobPage.Plan(
                path(view),
                List.of(
                        JobForms.profile(words, form),
                        number(asked, HeatForm.PEAK, "bench.peak", "boards.whole-heat.peak.hint"),
                        number(asked, HeatForm.MINUTES, "bench.minutes", "boards.job.minutes.hint")));
    }

    private Input number(Entered asked, String name, String label, String hint) {
        return Input.of(Input.Kind.NUMBER, asked.field(name, words.text(label), words.text(hint)));
    }

    private FormPart record(BoardView view, HeatForm form, Entered sent, Verdict verdict, Instant now) {
        boolean clear = verdict == Verdict.CLEAR;
        return new FormPart(
                words.text(clear ? "bench.record" : "bench.record.all-the-same"),
                clear ? "" : words.text("bench.record.all-the-same.text"),
                path(view),
                hidden(view, form),
                List.of(
                        JobForms.moment(words, sent, HeatForm.AT, now),
                        Input.of(
                                Input.Kind.TEXT,
                                sent.field(
                                        JobForms.WHY,
                                        words.text("boards.whole-heat.what"),
                                        words.text("boards.whole-heat.what.hint")))),
                words.text("bench.record.act"),
                clear);
    }

    private static List<Hidden> hidden(BoardView view, HeatForm form) {
        List<Hidden> hidden = new ArrayList<>(form.hidden());
        hidden.add(new Hidden(JobForms.SEEN, Integer.toString(view.newest())));
        hidden.add(new Hidden(JobForms.KEY, Secret.token()));
        return hidden;
    }

    /** Nothing was sent yet. */
    Told nothing(boolean mayRelease) {
        return new Told(List.of(), Entered.of(Map.of(), words.texts()), mayRelease);
    }
}
