package bagclock.boards;

import bagclock.core.heat.BoardLimits;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.desk.BoardView;
import bagclock.ledger.BoardNotes;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A bake of a board as it is typed, in a job or outside one: into an oven, and out again. */
final class BakeForm {
    static final String OVEN = "oven";
    static final String SET_POINT = "setPoint";
    static final String HUMIDITY = "humidity";
    static final String ANYWAY = "anyway";
    static final String HOURS = "hours";

    /** Two forms stand on one page, so their fields have names of their own. */
    static final String IN_AT = "bakeAt";

    private final Rooms rooms;
    private final BoardWords words;
    private final BoardView view;
    private final Entered sent;

    BakeForm(Rooms rooms, BoardView view, Entered sent) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.view = view;
        this.sent = sent;
    }

    /** The board went into an oven. */
    record Into(BakeOven oven, Celsius setPoint, Optional<RelativeHumidity> shown, Instant at) {
        Map<String, String> told() {
            Map<String, String> told = new HashMap<>();
            told.put(BoardNotes.OVEN, oven.code());
            told.put(BoardNotes.SET_POINT, Double.toString(setPoint.degrees()));
            shown.or(oven::holds).ifPresent(rh -> told.put(BoardNotes.HUMIDITY, Double.toString(rh.percent())));
            return told;
        }
    }

    /** The board came out after so long at temperature. */
    record Out(Duration hours, Instant at) {}

    /**
     * What was typed; empty when something is wrong, which is noted by field. Hotter than what is known to be borne is
     * taken only when it is said twice: what happened is written down, but not by a slip.
     */
    Optional<Into> into(Instant now) {
        Optional<BakeOven> oven = rooms.store().ovens(now).stream()
                .filter(one -> one.code().equals(sent.text(OVEN)))
                .findFirst();
        if (oven.isEmpty()) {
            sent.refuse(OVEN, words.text("entered.choose"));
        }
        Optional<Celsius> setPoint = sent.number(SET_POINT, 35, 300).map(Celsius::new);
        setPoint.ifPresent(point -> oven.ifPresent(one -> reach(one, point)));
        setPoint.filter(point -> !sent.isChecked(ANYWAY))
                .filter(point -> !limits(now).bear(point))
                .ifPresent(point -> sent.refuse(SET_POINT, words.text("boards.bake.hotter")));
        Optional<RelativeHumidity> shown = sent.numberOrNone(HUMIDITY, 0, 100).map(RelativeHumidity::new);
        Optional<Instant> at = TypedMoment.of(sent, IN_AT, view, now);
        return sent.isRefused()
                ? Optional.empty()
                : Optional.of(new Into(oven.orElseThrow(), setPoint.orElseThrow(), shown, at.orElseThrow()));
    }

    private void reach(BakeOven oven, Celsius point) {
        if (!oven.reaches(point)) {
            String lowest = words.texts().number(oven.lowest().degrees());
            String highest = words.texts().number(oven.highest().degrees());
            sent.refuse(SET_POINT, words.text("entered.range", lowest, highest));
        }
    }

    private BoardLimits limits(Instant now) {
        return BoardLimits.of(
                rooms.boards().mayHeat(BoardPages.whole(view.serial(), now)).question());
    }

    /** What was typed; empty when something is wrong, which is noted by field. */
    Optional<Out> out(Instant now) {
        Optional<Instant> at = TypedMoment.of(sent, HeatForm.AT, view, now);
        Optional<Duration> hours = sent.hours(HOURS, 0, 10_000, Math::floor);
        Optional<Duration> stay = at.flatMap(end -> view.state().running().map(run -> Duration.between(run.at(), end)));
        hours.ifPresent(time -> stay.filter(longest -> time.compareTo(longest) > 0)
                .ifPresent(longest -> sent.refuse(HOURS, words.text("boards.job.hours.more", words.hours(longest)))));
        return sent.isRefused() ? Optional.empty() : Optional.of(new Out(hours.orElseThrow(), at.orElseThrow()));
    }

    /** The form that says that the board is in an oven. */
    FormPart into(String action, List<Hidden> hidden, Instant now, boolean first) {
        List<Choice> ovens = rooms.store().ovens(now).stream()
                .map(oven -> Choice.of(oven.code(), oven.name()))
                .toList();
        List<Input> inputs = new ArrayList<>(List.of(
                new Input(sent.field(OVEN, words.text("boards.job.oven")), Input.Kind.SELECT, ovens),
                number(SET_POINT),
                number(HUMIDITY),
                JobForms.moment(words, sent, IN_AT, now)));
        if (sent.error(SET_POINT).equals(words.text("boards.bake.hotter"))) {
            Choice yes = Choice.of("yes", words.text("boards.bake.anyway.yes"));
            inputs.add(
                    2, new Input(sent.field(ANYWAY, words.text("boards.bake.anyway")), Input.Kind.BOX, List.of(yes)));
        }
        return new FormPart(
                words.text("boards.job.bake"),
                words.text("boards.job.bake.text"),
                action,
                hidden,
                inputs,
                words.text("boards.job.bake.act"),
                first);
    }

    /** The form that says that it is out again. */
    FormPart out(String action, List<Hidden> hidden, Instant now) {
        return new FormPart(
                words.text("boards.job.unbake"),
                words.text("boards.job.unbake.text"),
                action,
                hidden,
                List.of(number(HOURS), JobForms.moment(words, sent, HeatForm.AT, now)),
                words.text("boards.job.unbake.act"),
                true);
    }

    private Input number(String name) {
        String key = "boards.job." + name;
        return Input.of(Input.Kind.NUMBER, sent.field(name, words.text(key), words.text(key + ".hint")));
    }
}
