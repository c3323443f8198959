package bagclock.boards;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.BoardType;
import bagclock.register.HeatProfile;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A heat profile as it is typed. */
record ProfileForm(Entered entered, Optional<HeatProfile> profile) {
    static final String KIND = "kind";
    static final String LOCATION = "location";
    static final String TOOL = "tool";
    static final String PART = "part";
    static final String NEIGHBOURS = "neighbours";
    static final String ELSEWHERE = "elsewhere";
    static final String MINUTES = "minutes";
    static final String MEASURED_ON = "measuredOn";
    static final String MEASURED_BY = "measuredBy";

    private static final double MOST_C = 400;

    /** Reads what was sent. */
    static ProfileForm sent(Context ctx, Texts texts, BoardType type, LocalDate today) {
        Entered entered = Entered.of(ctx, texts);
        Messages messages = texts.messages();
        Optional<HeatProfile.Kind> kind = kind(entered, messages);
        String location = location(entered, type, kind);
        String tool = entered.required(TOOL);
        Optional<Celsius> part = entered.numberOrNone(PART, 20, MOST_C).map(Celsius::new);
        Map<String, Celsius> neighbours = neighbours(
                entered, Optional.ofNullable(ctx.formParam(NEIGHBOURS)).orElse(""), type, messages);
        Optional<Celsius> elsewhere =
                entered.numberOrNone(ELSEWHERE, 20, MOST_C).map(Celsius::new);
        Optional<Double> minutes = entered.number(MINUTES, 0.1, 1440);
        Optional<LocalDate> on = date(entered, messages, today);
        String by = entered.required(MEASURED_BY);
        if (entered.isRefused()) {
            return new ProfileForm(entered, Optional.empty());
        }
        Duration length = Duration.ofMillis((long) Math.ceil(minutes.orElseThrow() * 60_000));
        return new ProfileForm(
                entered,
                Optional.of(new HeatProfile(
                        "",
                        type.number(),
                        location,
                        kind.orElseThrow(),
                        tool,
                        part,
                        neighbours,
                        elsewhere,
                        length,
                        on.orElseThrow(),
                        by)));
    }

    private static Optional<HeatProfile.Kind> kind(Entered entered, Messages messages) {
        Optional<HeatProfile.Kind> kind = Arrays.stream(HeatProfile.Kind.values())
                .filter(one -> one.name().equals(entered.text(KIND)))
                .findFirst();
        if (kind.isEmpty()) {
            entered.refuse(KIND, messages.text("entered.choose"));
        }
        return kind;
    }

    private static String location(Entered entered, BoardType type, Optional<HeatProfile.Kind> kind) {
        boolean whole = kind.filter(one -> one == HeatProfile.Kind.WHOLE_BOARD).isPresent();
        String location = entered.text(LOCATION);
        if (!whole && type.partAt(location).isEmpty()) {
            entered.refuse(
                    LOCATION, entered.texts().refusal(Refusal.of(Reason.LOCATION_UNKNOWN, location, type.number())));
        }
        return whole ? "" : location;
    }

    /** One on each line: the location, a blank, and the peak. */
    private static Map<String, Celsius> neighbours(Entered entered, String text, BoardType type, Messages messages) {
        Map<String, Celsius> peaks = new TreeMap<>();
        for (String line :
                text.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
            String[] sides = line.replace(',', '.').split("[\\s:;=]+");
            boolean readable = sides.length == 2 && sides[1].matches("\\d{2,3}(\\.\\d{1,2})?");
            if (!readable || Double.parseDouble(sides[1]) > MOST_C) {
                entered.refuse(NEIGHBOURS, messages.text("boards.profile.neighbours.unreadable", line));
            } else if (type.partAt(sides[0]).isEmpty()) {
                entered.refuse(
                        NEIGHBOURS,
                        entered.texts().refusal(Refusal.of(Reason.LOCATION_UNKNOWN, sides[0], type.number())));
            } else {
                peaks.put(sides[0], new Celsius(Double.parseDouble(sides[1])));
            }
        }
        return peaks;
    }

    private static Optional<LocalDate> date(Entered entered, Messages messages, LocalDate today) {
        if (entered.required(MEASURED_ON).isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate date = LocalDate.parse(entered.text(MEASURED_ON));
            if (!date.isAfter(today)) {
                return Optional.of(date);
            }
        } catch (DateTimeException notADate) {
            entered.refuse(MEASURED_ON, messages.text("entered.day"));
            return Optional.empty();
        }
        entered.refuse(MEASURED_ON, messages.text("boards.profile.date.future"));
        return Optional.empty();
    }

    /** The fields with what was typed. */
    static List<Input> inputs(Entered entered, Messages messages) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input(
                entered.field(KIND, messages.text("boards.profile.kind")),
                Input.Kind.CHOICES,
                Arrays.stream(HeatProfile.Kind.values())
                        .map(kind -> Choice.of(kind.name(), messages.text("boards.profile.choice." + kind.name())))
                        .toList()));
        inputs.add(input(Input.Kind.TEXT, entered, LOCATION, messages));
        inputs.add(input(Input.Kind.TEXT, entered, TOOL, messages));
        inputs.add(input(Input.Kind.NUMBER, entered, PART, messages));
        inputs.add(input(Input.Kind.LINES, entered, NEIGHBOURS, messages));
        inputs.add(input(Input.Kind.NUMBER, entered, ELSEWHERE, messages));
        inputs.add(input(Input.Kind.NUMBER, entered, MINUTES, messages));
        inputs.add(input(Input.Kind.DATE, entered, MEASURED_ON, messages));
        inputs.add(input(Input.Kind.TEXT, entered, MEASURED_BY, messages));
        return inputs;
    }

    private static Input input(Input.Kind kind, Entered entered, String name, Messages messages) {
        String key = "boards.profile." + name;
        return Input.of(kind, entered.field(name, messages.text(key), messages.text(key + ".hint")));
    }
}
