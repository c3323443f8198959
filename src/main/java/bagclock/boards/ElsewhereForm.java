package bagclock.boards;

import bagclock.desk.BoardView;
import bagclock.desk.ElsewhereTold;
import bagclock.ledger.BoardNotes;
import bagclock.platform.Entered;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A bake of a board in an oven that this shop does not know, as it is typed; in a job or outside one. */
final class ElsewhereForm {
    static final String OVEN = "elsewhereOven";
    static final String DEGREES = "elsewhereC";
    static final String HOURS = "elsewhereHours";
    static final String AT = "elsewhereAt";

    private static final List<String> FIELDS = List.of(OVEN, DEGREES, HOURS, AT);

    private final BoardWords words;
    private final BoardView view;
    private final Entered sent;

    ElsewhereForm(BoardWords words, BoardView view, Entered sent) {
        this.words = words;
        this.view = view;
        this.sent = sent;
    }

    /** What was told, and when the board was back. */
    record Told(ElsewhereTold bake, Instant endedAt) {
        Map<String, String> notes() {
            return Map.of(
                    BoardNotes.OVEN,
                    bake.oven(),
                    BoardNotes.SET_POINT,
                    Double.toString(bake.temperature().degrees()),
                    BoardNotes.AT_TEMPERATURE,
                    bake.time().toString());
        }
    }

    /** What was typed, as a step of the board's bake; empty when something is wrong, which is noted by field. */
    Optional<BakeStep> step(Instant now) {
        Optional<ElsewhereTold> bake = ElsewhereTold.read(sent, new ElsewhereTold.Fields(OVEN, DEGREES, HOURS));
        Optional<Instant> at = TypedMoment.of(sent, AT, view, now);
        return sent.isRefused()
                ? Optional.empty()
                : Optional.of(BakeStep.of(new Told(bake.orElseThrow(), at.orElseThrow())));
    }

    /** The form, with what the bake counts for in words. */
    FormPart part(String action, List<Hidden> hidden, Instant now) {
        return new FormPart(
                words.text("stock.elsewhere"),
                words.text("stock.elsewhere.lead"),
                action,
                hidden,
                List.of(
                        input(Input.Kind.TEXT, OVEN, "elsewhere.oven"),
                        input(Input.Kind.NUMBER, DEGREES, "elsewhere.degrees"),
                        input(Input.Kind.NUMBER, HOURS, "elsewhere.hours"),
                        JobForms.moment(words, sent, AT, "stock.elsewhere.at", now)),
                words.text("elsewhere.act"),
                false,
                FIELDS.stream()
                        .allMatch(name ->
                                sent.text(name).isEmpty() && sent.error(name).isEmpty()));
    }

    private Input input(Input.Kind kind, String name, String key) {
        return Input.of(kind, sent.field(name, words.text(key), words.text(key + ".hint")));
    }
}
