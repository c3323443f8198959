package bagclock.boards;

import bagclock.core.heat.Verdict;
import bagclock.desk.BoardView;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Secret;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The forms of a job. Each carries the newest entry that its reader saw. */
final class JobForms {
    static final String SEEN = "seen";
    static final String KEY = "key";
    static final String STEP = "step";
    static final String WHY = "why";
    static final String REASON = "reason";

    /** Two forms stand on one page, so their fields have names of their own. */
    static final String BALLED_AT = "balledAt";

    static final String BALLED_PEAK = "balledPeak";

    private final Rooms rooms;
    private final BoardWords words;
    private final BoardView view;
    private final Job job;
    private final Entered sent;

    /**
     * Forms of one page.
     *
     * @param sent what was typed into the form that was refused; empty otherwise
     */
    JobForms(Rooms rooms, BoardView view, Job job, Entered sent) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.view = view;
        this.job = job;
        this.sent = sent;
    }

    private String action(String act) {
        return "/boards/" + view.serial() + "/jobs/" + job.number() + "/" + act;
    }

    private List<Hidden> hidden(List<Hidden> more) {
        List<Hidden> all = new ArrayList<>(more);
        all.add(new Hidden(SEEN, Integer.toString(view.newest())));
        all.add(new Hidden(KEY, Secret.token()));
        all.add(new Hidden(STEP, job.step().code()));
        return all;
    }

    private Input input(Input.Kind kind, String name) {
        String key = "boards.job." + name;
        return Input.of(kind, sent.field(name, words.text(key), words.text(key + ".hint")));
    }

    private Input moment(String name, Instant now) {
        return moment(words, sent, name, now);
    }

    /** When it happened: now, unless something was typed. */
    static Input moment(BoardWords words, Entered sent, String name, Instant now) {
        return moment(words, sent, name, "boards.job.at", now);
    }

    /** The same under a label of its own. */
    static Input moment(BoardWords words, Entered sent, String name, String label, Instant now) {
        Entered entered = sent.text(name).isEmpty()
                ? Entered.of(Map.of(name, words.texts().field(now)), words.texts())
                : sent;
        return Input.of(Input.Kind.MOMENT, entered.field(name, words.text(label)));
    }

    /** A step without heat is done. */
    FormPart step(String act, boolean first) {
        String step = job.step().code();
        String title = job.step() == Step.BAKE ? act : "boards.step." + step;
        return new FormPart(
                words.text(title),
                words.text("boards.step." + step + ".text"),
                action("step"),
                hidden(List.of()),
                List.of(input(Input.Kind.LINES, WHY)),
                words.text(act),
                first);
    }

    /** The board goes into an oven. */
    FormPart bake(Instant now, boolean first) {
        return new BakeForm(rooms, view, sent).into(action("bake"), hidden(List.of()), now, first);
    }

    /** The board comes out. */
    FormPart unbake(Instant now) {
        return new BakeForm(rooms, view, sent).out(action("bake-end"), hidden(List.of()), now);
    }

    /** The board was baked in an oven that this shop does not know. */
    FormPart elsewhere(Instant now) {
        return new ElsewhereForm(words, view, sent).part(action("elsewhere"), hidden(List.of()), now);
    }

    /** The heat was done. */
    FormPart heat(HeatForm form, Verdict verdict, Instant now) {
        boolean clear = verdict == Verdict.CLEAR;
        return new FormPart(
                words.text(clear ? "bench.record" : "bench.record.all-the-same"),
                clear ? "" : words.text("bench.record.all-the-same.text"),
                action("heat"),
                hidden(form.hidden()),
                List.of(moment(HeatForm.AT, now), input(Input.Kind.NUMBER, HeatForm.MEASURED)),
                words.text("bench.record.act"),
                clear);
    }

    /** The part that was taken off is balled anew: a heat of its own. */
    FormPart reball(Instant now) {
        return new FormPart(
                words.text("boards.job.reball"),
                words.text("boards.job.reball.text"),
                action("reball"),
                hidden(List.of()),
                List.of(
                        moment(BALLED_AT, now),
                        Input.of(
                                Input.Kind.NUMBER,
                                sent.field(
                                        BALLED_PEAK,
                                        words.text("boards.job.measured"),
                                        words.text("boards.job.measured.hint")))),
                words.text("boards.job.reball.act"),
                false);
    }

    /** An engineer releases the next heat. */
    FormPart release(HeatForm form) {
        return release(words, sent, action("release"), hidden(form.hidden()));
    }

    /** An engineer releases one heat of the board. */
    static FormPart release(BoardWords words, Entered sent, String action, List<Hidden> hidden) {
        return new FormPart(
                words.text("boards.release"),
                words.text("boards.release.text"),
                action,
                hidden,
                List.of(Input.of(Input.Kind.TEXT, sent.field(REASON, words.text("boards.release.why")))),
                words.text("boards.release.act"),
                false);
    }

    /** By which profile the next heat goes, and which part is placed. */
    JobPage.Plan plan(HeatForm form, boolean placing) {
        List<Input> inputs = new ArrayList<>();
        Entered asked = form.entered();
        if (placing) {
            inputs.add(Input.of(
                    Input.Kind.SCANNED,
                    asked.field(HeatForm.PART, words.text("boards.job.part"), words.text("boards.job.part.hint"))));
        }
        inputs.add(profile(words, form));
        inputs.add(Input.of(
                Input.Kind.NUMBER,
                asked.field(HeatForm.PEAK, words.text("bench.peak"), words.text("boards.job.peak.hint"))));
        inputs.add(Input.of(
                Input.Kind.NUMBER,
                asked.field(HeatForm.MINUTES, words.text("bench.minutes"), words.text("boards.job.minutes.hint"))));
        return new JobPage.Plan("/boards/" + view.serial() + "/jobs/" + job.number(), inputs);
    }

    /** By which profile a heat goes. */
    static Input profile(BoardWords words, HeatForm form) {
        List<Choice> choices = new ArrayList<>();
        form.profiles()
                .forEach(profile -> choices.add(Choice.of(
                        profile.id(),
                        words.text("boards.profile.choice", profile.id(), profile.tool(), profile.measuredOn()))));
        choices.add(Choice.of(HeatForm.NO_PROFILE, words.text("boards.profile.choose-none")));
        return new Input(
                form.entered().field(HeatForm.PROFILE, words.text("boards.job.profile")), Input.Kind.SELECT, choices);
    }
}
