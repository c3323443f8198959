package bagclock.boards;

import bagclock.core.heat.Answer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.heat.Release;
import bagclock.core.heat.Verdict;
import bagclock.desk.BoardReply;
import bagclock.desk.BoardView;
import bagclock.desk.ItemView;
import bagclock.ledger.Item;
import bagclock.platform.Entered;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a job on a page. */
final class JobPages {
    private final Rooms rooms;
    private final BoardWords words;
    private final EntryWords entries;

    JobPages(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.entries = new EntryWords(words);
    }

    /** What the page was asked with. */
    record Asked(BoardView view, Job job, HeatForm form, Instant now) {}

    /** What came of the last sending. */
    record Told(String done, List<String> refusals, Entered sent, boolean mayRelease) {}

    private record Answered(Optional<AnswerBox> box, Optional<Answer> answer, Optional<BoardReply> reply) {
        static final Answered NOTHING = new Answered(Optional.empty(), Optional.empty(), Optional.empty());

        Verdict verdict() {
            return answer.map(Answer::verdict).orElse(Verdict.HOLD);
        }
    }

    JobPage page(Asked asked, Told told) {
        Job job = asked.job();
        BoardView view = asked.view();
        Answered answered = answered(asked);
        boolean boardHeat = answered.reply().isPresent() || (job.step() == Step.PLACE && !job.isClosed());
        JobForms forms = new JobForms(rooms, view, job, told.sent());
        String path = "/boards/" + view.serial() + "/jobs/" + job.number();
        return new JobPage(
                words.text("boards.job.title", view.serial(), job.location()),
                view.serial(),
                words.text("boards.job.lead." + job.oldPart().code(), job.why()),
                told.done(),
                told.refusals(),
                path + asked.form().query(),
                "board/" + view.serial() + " item zone register",
                answered.box(),
                line(asked, answered),
                release(asked),
                boardHeat ? Optional.of(forms.plan(asked.form(), job.step() == Step.PLACE)) : Optional.empty(),
                told(asked, answered, forms),
                told.mayRelease() && mayBeReleased(answered)
                        ? Optional.of(forms.release(asked.form()))
                        : Optional.empty(),
                steps(job),
                entries.of(job.entries(), asked.now()),
                links(asked),
                cautions(asked));
    }

    /** The desk's answer for the heat that comes next. */
    private Answered answered(Asked asked) {
        Step step = asked.job().step();
        if (asked.job().isClosed() || step == Step.CLEAN || step == Step.INSPECT) {
            return Answered.NOTHING;
        } else if (step == Step.KEEP) {
            return kept(asked);
        }
        boolean placing = asked.job().nextHeat() == Purpose.PLACEMENT;
        boolean noPart = asked.form().part().isEmpty() || asked.form().entered().isRefused();
        return placing && noPart ? Answered.NOTHING : onBoard(asked);
    }

    private Answered onBoard(Asked asked) {
        Job job = asked.job();
        BoardReply reply = rooms.boards()
                .mayHeat(asked.form().ask(asked.view().serial(), job.location(), job.nextHeat(), asked.now()));
        AnswerBox box = words.box(reply, asked.form().length(), asked.now());
        return new Answered(
                Optional.of(withPartNotices(asked, box)),
                Optional.of(reply.answer().whole()),
                Optional.of(reply));
    }

    /** Another part than the parts list names is allowed, one that sits on a board can't be placed: both are said. */
    private AnswerBox withPartNotices(Asked asked, AnswerBox box) {
        Optional<Item> scanned = asked.form()
                .part()
                .filter(tag -> asked.job().nextHeat() == Purpose.PLACEMENT)
                .flatMap(tag -> rooms.desk().item(tag, asked.now()))
                .map(ItemView::item);
        Optional<String> other = scanned.flatMap(item -> asked.view()
                .type()
                .flatMap(type -> type.fact().partAt(asked.job().location()))
                .filter(listed -> !listed.equals(item.partType()))
                .map(listed -> words.text("boards.notice.other-part", listed, item.partType())));
        Optional<String> mounted = scanned.flatMap(
                item -> item.board().map(board -> words.text("boards.notice.part-mounted", item.tag(), board)));
        List<String> notices = new ArrayList<>();
        mounted.ifPresent(notices::add);
        other.ifPresent(notices::add);
        notices.addAll(box.notices());
        return new AnswerBox(
                box.verdict(),
                box.sentence(),
                box.aside(),
                notices,
                box.reasons(),
                box.bakes(),
                box.parts(),
                box.rest());
    }

    /** The part that was taken off, before it is balled anew. */
    private Answered kept(Asked asked) {
        Optional<Item> item = asked.job()
                .kept()
                .flatMap(tag -> rooms.desk().item(tag, asked.now()))
                .map(found -> found.item())
                .filter(found -> !found.ended());
        if (item.isEmpty()) {
            return Answered.NOTHING;
        }
        Answer answer = rooms.desk().mayHeat(item.get().tag(), Optional.of(reballing(asked.now())), asked.now());
        AnswerBox box = words.box(answer, Duration.ZERO, asked.now());
        return new Answered(Optional.of(box), Optional.of(answer), Optional.empty());
    }

    static HeatPlan reballing(Instant now) {
        return new HeatPlan(
                now, Duration.ofMinutes(5), Optional.empty(), Optional.of(Purpose.PLACEMENT), Optional.of(true));
    }

    private String line(Asked asked, Answered answered) {
        if (asked.job().isClosed()) {
            return words.text("boards.job.closed");
        }
        return answered.box().isPresent()
                ? ""
                : words.text("boards.line." + asked.job().step().code());
    }

    private String release(Asked asked) {
        String job = Integer.toString(asked.job().number());
        return words.given(
                asked.view().state().openRelease(job, asked.job().nextHeat().code()), asked.now());
    }

    private static boolean mayBeReleased(Answered answered) {
        return answered.reply().isPresent()
                && answered.answer().filter(Release::isPossible).isPresent();
    }

    /** What comes next, and the way back from the last entry. */
    private List<FormPart> told(Asked asked, Answered answered, JobForms forms) {
        Job job = asked.job();
        List<FormPart> all = new ArrayList<>(job.isClosed() ? List.of() : forms(asked, answered, forms));
        asked.view()
                .last()
                .filter(last -> job.entries().contains(last))
                .flatMap(last -> TakeBack.form(words, asked.view(), Integer.toString(job.number())))
                .ifPresent(all::add);
        return all;
    }

    private List<FormPart> forms(Asked asked, Answered answered, JobForms forms) {
        Instant now = asked.now();
        if (asked.view().state().running().isPresent()) {
            return List.of(forms.unbake(now));
        }
        boolean barred = answered.verdict() != Verdict.CLEAR;
        List<FormPart> all = new ArrayList<>();
        switch (asked.job().step()) {
            case BAKE -> {
                all.add(forms.step(barred ? "boards.step.bake.skip" : "boards.step.bake.needless", !barred));
                all.add(barred ? 0 : 1, forms.bake(now, barred));
                all.add(forms.elsewhere(now));
            }
            case REMOVE -> heat(asked, answered, forms, all);
            case KEEP -> {
                all.add(forms.step("boards.step.keep.act", true));
                all.add(forms.reball(now));
            }
            case PLACE -> {
                heat(asked, answered, forms, all);
                all.add(forms.step("boards.step.place.nothing", false));
            }
            default -> all.add(forms.step("boards.step." + asked.job().step().code() + ".act", true));
        }
        return all;
    }

    private static void heat(Asked asked, Answered answered, JobForms forms, List<FormPart> all) {
        if (answered.reply().isEmpty()) {
            return;
        }
        if (answered.verdict() == Verdict.BAKE) {
            all.add(forms.bake(asked.now(), true));
        }
        all.add(forms.heat(asked.form(), answered.verdict(), asked.now()));
    }

    private List<JobPage.StepLine> steps(Job job) {
        return Arrays.stream(Step.values())
                .filter(job::isNeeded)
                .map(step -> new JobPage.StepLine(
                        words.text("boards.step." + step.code()),
                        state(job, step),
                        !job.isClosed() && step == job.step()))
                .toList();
    }

    private String state(Job job, Step step) {
        if (job.isDone(step)) {
            return words.text("boards.step.done");
        }
        return words.text(step == job.step() ? "boards.step.now" : "boards.step.later");
    }

    private List<JobPage.Link> links(Asked asked) {
        List<JobPage.Link> links = new ArrayList<>();
        asked.job().kept().ifPresent(tag -> {
            links.add(new JobPage.Link("/items/" + tag, words.text("boards.job.kept", tag)));
            links.add(new JobPage.Link("/ovens/load?tag=" + tag, words.text("boards.job.kept.bake", tag)));
        });
        return links;
    }

    private List<String> cautions(Asked asked) {
        List<String> cautions = new ArrayList<>();
        Map<Step, List<String>> byStep = Map.of(
                Step.CHECK, List.of("kept", "static"),
                Step.BAKE, List.of("kept", "oven"),
                Step.REMOVE, List.of("hot", "label"),
                Step.KEEP, List.of("hot", "label"),
                Step.PLACE, List.of("hot", "label"),
                Step.CLEAN, List.of("clean", "static"));
        if (!asked.job().isClosed()) {
            byStep.getOrDefault(asked.job().step(), List.of("static"))
                    .forEach(name -> cautions.add(words.text("boards.caution." + name, words.keptOn(asked.view()))));
        }
        return cautions;
    }
}
