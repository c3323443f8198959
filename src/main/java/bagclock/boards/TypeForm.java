package bagclock.boards;

import bagclock.core.heat.BoardQuestion.OwnBake;
import bagclock.core.quantity.Celsius;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.BoardType;
import bagclock.register.BoardType.KeptOn;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A board type as it is typed. What is left empty stays unknown. */
record TypeForm(Entered entered, Optional<BoardType> type) {
    static final String NUMBER = "number";
    static final String DESCRIPTION = "description";
    static final String BEARS = "bears";
    static final String COATED = "coated";
    static final String KEPT_ON = "kept";
    static final String BAKE_C = "bakeC";
    static final String BAKE_HOURS = "bakeHours";
    static final String BASED_ON = "basedOn";

    private static final String YES = "yes";
    private static final String NO = "no";
    private static final double MOST_C = 300;

    /** Reads what was sent; the locations are those that the type has already. */
    static TypeForm sent(Context ctx, Texts texts, List<BoardType.Spot> spots) {
        Entered entered = Entered.of(ctx, texts);
        String number = entered.required(NUMBER);
        if (!number.isEmpty() && !number.matches("[A-Za-z0-9._-]{1,40}")) {
            entered.refuse(NUMBER, texts.messages().text("boards.serial.malformed"));
        }
        String description = entered.required(DESCRIPTION);
        Optional<Celsius> bears = entered.numberOrNone(BEARS, 20, MOST_C).map(Celsius::new);
        Optional<OwnBake> bake = bake(entered, texts.messages());
        List<KeptOn> kept = kept(entered, ctx, texts.messages());
        return new TypeForm(
                entered,
                entered.isRefused()
                        ? Optional.empty()
                        : Optional.of(new BoardType(
                                number, description, bears, bake, coated(entered.text(COATED)), kept, spots)));
    }

    private static Optional<Boolean> coated(String text) {
        return text.equals(YES) ? Optional.of(true) : text.equals(NO) ? Optional.of(false) : Optional.empty();
    }

    private static Optional<OwnBake> bake(Entered entered, Messages messages) {
        Optional<Double> celsius = entered.numberOrNone(BAKE_C, 40, 150);
        // The bake must last so long: a part of a millisecond asks for a whole one.
        Optional<Duration> hours = entered.hoursOrNone(BAKE_HOURS, 0.1, 1000, Math::ceil);
        if (celsius.isPresent() != hours.isPresent()) {
            entered.refuse(celsius.isPresent() ? BAKE_HOURS : BAKE_C, messages.text("boards.type.bake.both"));
            return Optional.empty();
        }
        return celsius.map(c -> new OwnBake(new Celsius(c), hours.orElseThrow()));
    }

    /** One on each line: what it is; then, after a semicolon, what it bears. */
    private static List<KeptOn> kept(Entered entered, Context ctx, Messages messages) {
        List<KeptOn> kept = new ArrayList<>();
        String lines = Optional.ofNullable(ctx.formParam(KEPT_ON)).orElse("");
        for (String line :
                lines.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
            String[] sides = line.split(";", 2);
            String limit = sides.length == 1 ? "" : sides[1].strip().replace(',', '.');
            if (!limit.matches("(\\d{1,3}(\\.\\d{1,2})?)?") || sides[0].isBlank() || sides[0].indexOf('\t') >= 0) {
                entered.refuse(KEPT_ON, messages.text("boards.type.kept.unreadable", line));
            } else {
                kept.add(new KeptOn(
                        sides[0].strip(),
                        limit.isEmpty() ? Optional.empty() : Optional.of(new Celsius(Double.parseDouble(limit)))));
            }
        }
        return kept;
    }

    /** The values of a type that is to be changed. */
    static Entered of(BoardType type, int version, Texts texts) {
        Map<String, String> values = new HashMap<>();
        values.put(NUMBER, type.number());
        values.put(DESCRIPTION, type.description());
        type.bears().ifPresent(c -> values.put(BEARS, texts.number(c.degrees())));
        type.coated().ifPresent(is -> values.put(COATED, is ? YES : NO));
        List<String> kept = new ArrayList<>();
        type.keptOn()
                .forEach(one -> kept.add(one.what()
                        + one.limit().map(c -> "; " + texts.number(c.degrees())).orElse("")));
        values.put(KEPT_ON, String.join("\n", kept));
        type.ownBake().ifPresent(bake -> {
            values.put(BAKE_C, texts.number(bake.temperature().degrees()));
            values.put(BAKE_HOURS, texts.number(bake.time().toMillis() / 3_600_000.0));
        });
        values.put(BASED_ON, Integer.toString(version));
        return Entered.of(values, texts);
    }

    /** The fields with what was typed. */
    static List<Input> inputs(Entered entered, Messages messages, boolean fresh) {
        List<Input> inputs = new ArrayList<>();
        if (fresh) {
            inputs.add(input(Input.Kind.TEXT, entered, NUMBER, messages));
        }
        inputs.add(input(Input.Kind.TEXT, entered, DESCRIPTION, messages));
        inputs.add(input(Input.Kind.NUMBER, entered, BEARS, messages));
        inputs.add(new Input(
                entered.field(COATED, messages.text("boards.type.coated"), messages.text("boards.type.coated.hint")),
                Input.Kind.CHOICES,
                List.of(
                        Choice.of(NO, messages.text("boards.type.coated.no")),
                        Choice.of(YES, messages.text("boards.type.coated.yes")),
                        Choice.of("", messages.text("boards.type.coated.unknown")))));
        inputs.add(input(Input.Kind.LINES, entered, KEPT_ON, messages));
        inputs.add(input(Input.Kind.NUMBER, entered, BAKE_C, messages));
        inputs.add(input(Input.Kind.NUMBER, entered, BAKE_HOURS, messages));
        return inputs;
    }

    private static Input input(Input.Kind kind, Entered entered, String name, Messages messages) {
        String key = "boards.type." + name;
        return Input.of(kind, entered.field(name, messages.text(key), messages.text(key + ".hint")));
    }
}
