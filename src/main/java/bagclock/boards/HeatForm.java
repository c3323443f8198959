package bagclock.boards;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardAsk;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import bagclock.register.HeatProfile;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A heat on a board as it is typed: by which profile, how hot, how long, with which new part.
 *
 * @param profiles those that fit the heat, newest measurement first
 */
record HeatForm(Entered entered, List<HeatProfile> profiles) {
    static final String PROFILE = "profile";
    static final String PEAK = "peak";
    static final String MINUTES = "minutes";
    static final String PART = "part";
    static final String AT = "at";
    static final String MEASURED = "measured";

    /** Stands for going by no profile. */
    static final String NO_PROFILE = "none";

    private static final Duration USUAL_LENGTH = Duration.ofMinutes(5);

    /** Reads the plan from the address; the newest fitting profile is chosen unless another one, or none, was. */
    static HeatForm asked(Context ctx, Texts texts, List<HeatProfile> profiles) {
        Map<String, String> values = new HashMap<>();
        ctx.queryParamMap().forEach((name, all) -> values.put(name, String.join(",", all)));
        profiles.stream().findFirst().ifPresent(first -> values.putIfAbsent(PROFILE, first.id()));
        return new HeatForm(Entered.of(values, texts), profiles);
    }

    /** Nothing was asked yet. */
    static HeatForm fresh(Texts texts, List<HeatProfile> profiles) {
        return new HeatForm(Entered.of(Map.of(), texts), profiles);
    }

    /** Reads the plan that goes with a sent form. */
    static HeatForm sent(Context ctx, Texts texts, List<HeatProfile> profiles) {
        return new HeatForm(Entered.of(ctx, texts), profiles);
    }

    /** The plan as it goes with a form that tells of the heat. */
    List<Hidden> hidden() {
        return Stream.of(PROFILE, PEAK, MINUTES, PART)
                .map(name -> new Hidden(name, entered.text(name)))
                .toList();
    }

    /** The plan as it stands in an address. */
    String query() {
        String pairs = Stream.of(PROFILE, PEAK, MINUTES, PART)
                .filter(name -> !entered.text(name).isEmpty())
                .map(name -> name + "=" + URLEncoder.encode(entered.text(name), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return pairs.isEmpty() ? "" : "?" + pairs;
    }

    Optional<HeatProfile> profile() {
        return profiles.stream()
                .filter(one -> one.id().equals(entered.text(PROFILE)))
                .findFirst();
    }

    Duration length() {
        return entered.numberOrNone(MINUTES, 0, 1440)
                .map(minutes -> Duration.ofMillis((long) Math.ceil(minutes * 60_000)))
                .or(() -> profile().map(HeatProfile::length))
                .orElse(USUAL_LENGTH);
    }

    Optional<String> part() {
        return Optional.of(entered.text(PART)).filter(tag -> !tag.isEmpty());
    }

    Optional<Celsius> peak() {
        return entered.numberOrNone(PEAK, 20, 400).map(Celsius::new);
    }

    BoardAsk ask(String serial, String location, Purpose purpose, Instant at) {
        return new BoardAsk(
                serial,
                location,
                purpose,
                purpose == Purpose.PLACEMENT ? part() : Optional.empty(),
                profile().map(HeatProfile::id),
                peak(),
                length(),
                at);
    }
}
