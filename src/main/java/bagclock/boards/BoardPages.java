package bagclock.boards;

import bagclock.core.exposure.Tally;
import bagclock.core.heat.BoardLocations;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.desk.BoardAsk;
import bagclock.desk.BoardReply;
import bagclock.desk.BoardView;
import bagclock.ledger.Item;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Secret;
import bagclock.register.BoardType;
import bagclock.register.KnownBoard;
import bagclock.register.Versioned;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Puts boards on pages. */
final class BoardPages {
    static final String LOCATION = "location";
    static final String FATE = "fate";
    static final String TAG = "tag";
    static final String SERIAL = "serial";
    static final String TYPE = "type";
    static final String FROM_FIELD = "field";

    private final Rooms rooms;
    private final BoardWords words;
    private final EntryWords entries;

    BoardPages(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.entries = new EntryWords(words);
    }

    BoardsPage boards(String done, Instant now) {
        List<BoardView> views = rooms.boards().boards(now).stream()
                .flatMap(board -> rooms.boards().board(board.fact().serial(), now).stream())
                .toList();
        return new BoardsPage(
                words.text("boards.title"),
                done,
                views.stream().flatMap(view -> open(view).stream()).toList(),
                views.stream().map(this::line).toList(),
                rooms.boards().types(now).stream()
                        .map(Versioned::fact)
                        .map(type -> new BoardsPage.Line(
                                "/boards/types/" + type.number(), type.number(), type.description()))
                        .toList());
    }

    private List<BoardsPage.Line> open(BoardView view) {
        return Job.all(view.standing()).stream()
                .filter(job -> !job.isClosed())
                .map(job -> new BoardsPage.Line(
                        href(view, job),
                        view.serial() + " " + job.location(),
                        words.text(
                                "boards.job.at-step",
                                job.why(),
                                words.text("boards.step." + job.step().code()))))
                .toList();
    }

    private static String href(BoardView view, Job job) {
        return "/boards/" + view.serial() + "/jobs/" + job.number();
    }

    private BoardsPage.Line line(BoardView view) {
        return new BoardsPage.Line("/boards/" + view.serial(), view.serial(), lead(view));
    }

    private String lead(BoardView view) {
        String type = view.type()
                .map(known -> known.fact().number() + ", " + known.fact().description())
                .orElseGet(() ->
                        words.text("boards.type.missing", view.board().fact().type()));
        boolean field = view.board().fact().fromField();
        return field ? words.text("boards.from-field", type) : type;
    }

    /** A board, with what was typed and why it was not taken. */
    BoardPage board(BoardView view, String done, Entered sent, List<String> refusals, Instant now) {
        BoardReply reply = rooms.boards().mayHeat(whole(view.serial(), now));
        return new BoardPage(
                words.text("boards.board.title", view.serial()),
                view.serial(),
                lead(view),
                view.type().map(type -> type.fact().number()).orElse(""),
                done,
                refusals,
                words.box(reply, Duration.ZERO, now),
                new WholePages(rooms).plan(view, HeatForm.fresh(words.texts(), rooms.wholeProfiles(view, now))),
                Job.all(view.standing()).stream().map(job -> job(view, job)).toList(),
                reply.question().locations().stream()
                        .map(location -> spot(view, reply, location, now))
                        .toList(),
                view.usedUp().stream()
                        .map(item -> new JobPage.Link("/items/" + item.tag(), item.tag() + " " + item.partType()))
                        .toList(),
                forms(view, sent),
                entries.of(view.entries(), now));
    }

    static BoardAsk whole(String serial, Instant now) {
        return new BoardAsk(
                serial,
                "",
                Purpose.WHOLE_BOARD,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Duration.ZERO,
                now);
    }

    private BoardPage.JobLine job(BoardView view, Job job) {
        String state = job.isClosed()
                ? words.text("boards.job.closed")
                : words.text(
                        "boards.job.now", words.text("boards.step." + job.step().code()));
        return new BoardPage.JobLine(href(view, job), words.text("boards.job.line", job.location(), job.why()), state);
    }

    private BoardPage.Spot spot(BoardView view, BoardReply reply, Location location, Instant now) {
        String tag = reply.items().getOrDefault(location.name(), "");
        Tally tally = BoardLocations.timeline(reply.question().board(), location)
                .fold(
                        timeline -> Tally.of(location.part(), timeline, now),
                        refusals ->
                                new Tally(Duration.ZERO, 0, 0, location.part().carrier(), List.of()));
        String part = view.itemAt(location.name())
                .map(Item::partType)
                .or(() -> view.type().flatMap(type -> type.fact().partAt(location.name())))
                .orElse("");
        return new BoardPage.Spot(
                location.name(),
                part,
                tag.isEmpty() ? words.text("boards.parts.no-item") : tag,
                tag.isEmpty() ? "" : "/items/" + tag,
                words.text("boards.of", tally.passes(), location.part().maker().maxReflowPasses()),
                words.hours(tally.bakedAbove90()),
                Integer.toString(location.replacements()));
    }

    private List<FormPart> forms(BoardView view, Entered sent) {
        List<FormPart> forms = new ArrayList<>();
        if (view.type().isPresent()) {
            forms.add(jobForm(view, sent));
        }
        forms.add(mountForm(view, sent));
        forms.add(new FormPart(
                words.text("boards.back"),
                words.text("boards.back.text"),
                "/boards/" + view.serial() + "/back",
                hidden(view),
                List.of(),
                words.text("boards.back.act"),
                false));
        TakeBack.form(words, view, "").ifPresent(forms::add);
        return forms;
    }

    private static List<Hidden> hidden(BoardView view) {
        return List.of(
                new Hidden(JobForms.SEEN, Integer.toString(view.newest())), new Hidden(JobForms.KEY, Secret.token()));
    }

    private FormPart jobForm(BoardView view, Entered sent) {
        List<Choice> fates = Arrays.stream(OldPart.values())
                .map(fate -> new Choice(
                        fate.code(),
                        words.text("boards.fate." + fate.code()),
                        words.text("boards.fate." + fate.code() + ".note")))
                .toList();
        return new FormPart(
                words.text("boards.job.new"),
                words.text("boards.job.new.text"),
                "/boards/" + view.serial() + "/jobs",
                hidden(view),
                List.of(
                        input(Input.Kind.TEXT, sent, LOCATION, "boards.job.location"),
                        input(Input.Kind.TEXT, sent, JobForms.WHY, "boards.job.reason"),
                        new Input(sent.field(FATE, words.text("boards.fate")), Input.Kind.CHOICES, fates)),
                words.text("boards.job.new.act"),
                true);
    }

    private FormPart mountForm(BoardView view, Entered sent) {
        return new FormPart(
                words.text("boards.mount"),
                words.text("boards.mount.text"),
                "/boards/" + view.serial() + "/mount",
                hidden(view),
                List.of(
                        input(Input.Kind.SCANNED, sent, TAG, "boards.mount.tag"),
                        input(Input.Kind.TEXT, sent, "spot", "boards.job.location")),
                words.text("boards.mount.act"),
                false);
    }

    private Input input(Input.Kind kind, Entered sent, String name, String key) {
        return Input.of(kind, sent.field(name, words.text(key), words.text(key + ".hint")));
    }

    /** The form for a board that is not known yet. */
    FormPage fresh(Entered sent, Instant now) {
        List<Choice> types = rooms.boards().types(now).stream()
                .map(Versioned::fact)
                .map(BoardType::number)
                .map(number -> Choice.of(number, number))
                .toList();
        List<Input> inputs = List.of(
                input(Input.Kind.SCANNED, sent, SERIAL, "boards.serial"),
                new Input(
                        sent.field(TYPE, words.text("boards.type"), words.text("boards.type.choose.hint")),
                        Input.Kind.SELECT,
                        types),
                new Input(
                        sent.field(FROM_FIELD, words.text("boards.field")),
                        Input.Kind.BOX,
                        List.of(new Choice(
                                "yes", words.text("boards.field.yes"), words.text("boards.field.yes.note")))));
        return new FormPage(
                words.text("boards.new"),
                words.text("boards.new.lead"),
                "/boards",
                words.text("boards.title"),
                "",
                new FormPart(
                        "",
                        "",
                        "/boards/new",
                        List.of(new Hidden(JobForms.KEY, Secret.token())),
                        inputs,
                        words.text("boards.new.act"),
                        true));
    }

    static KnownBoard known(Entered sent) {
        return new KnownBoard(sent.text(SERIAL), sent.text(TYPE), sent.isChecked(FROM_FIELD));
    }
}
