package bagclock.boards;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.core.standard.Rating;
import bagclock.platform.Field;
import bagclock.register.BoardRules;
import bagclock.register.BoardType;
import bagclock.register.HeatProfile;
import bagclock.register.KnownBoard;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Puts board types, their parts lists and heat profiles into words. */
final class TypePages {
    private static final int MOST_SHOWN = 50;

    private final Rooms rooms;
    private final BoardWords words;

    TypePages(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
    }

    TypePage page(BoardType type, String done, Instant now) {
        List<TypePage.Line> lines = lines(type, now);
        return new TypePage(
                words.text("boards.type.title", type.number()),
                type.number(),
                type.description(),
                done,
                facts(type, now),
                lines,
                words.text("boards.type.count", type.spots().size(), lines.size()),
                profiles(type, now),
                rooms.boards().boards(now).stream()
                        .map(Versioned::fact)
                        .filter(board -> board.type().equals(type.number()))
                        .map(KnownBoard::serial)
                        .map(serial -> new TypePage.Board(serial, "/boards/" + serial))
                        .toList());
    }

    /** What it bears in a bake, and what stays on it. */
    List<TypePage.Fact> facts(BoardType type, Instant now) {
        List<TypePage.Fact> facts = new ArrayList<>();
        facts.add(fact("boards.type.bears.is", temperature(type.bears())));
        facts.add(fact("boards.type.limit", temperature(type.bakeLimit())));
        facts.add(fact(
                "boards.type.own-bake",
                type.ownBake()
                        .map(bake -> words.text(
                                "boards.type.own-bake.is",
                                words.hours(bake.time()),
                                words.texts().temperature(bake.temperature())))
                        .orElseGet(() -> words.text("boards.type.own-bake.none"))));
        facts.add(fact("boards.type.coated", coated(type)));
        facts.add(fact(
                "boards.type.kept",
                type.keptOn().isEmpty()
                        ? words.text("boards.type.kept.none")
                        : type.keptOn().stream()
                                .map(kept -> kept.what() + " (" + temperature(kept.limit()) + ")")
                                .collect(Collectors.joining(", "))));
        facts.add(fact(
                "boards.rules.within",
                rooms.boards()
                        .rules(now)
                        .fact()
                        .useWithin()
                        .map(words::hours)
                        .orElseGet(() -> words.text("boards.rules.within.none"))));
        return facts;
    }

    private String coated(BoardType type) {
        return type.coated()
                .map(is -> words.text(is ? "boards.type.coated.yes" : "boards.type.coated.no"))
                .orElseGet(() -> words.text("boards.type.coated.unknown"));
    }

    private TypePage.Fact fact(String key, String value) {
        return new TypePage.Fact(words.text(key), value);
    }

    String temperature(Optional<Celsius> celsius) {
        return celsius.map(words.texts()::temperature).orElseGet(() -> words.text("boards.unknown"));
    }

    private List<TypePage.Line> lines(BoardType type, Instant now) {
        Map<String, List<String>> byPart = new LinkedHashMap<>();
        type.spots()
                .forEach(spot -> byPart.computeIfAbsent(spot.partNumber(), part -> new ArrayList<>())
                        .add(spot.location()));
        List<TypePage.Line> lines = new ArrayList<>();
        byPart.forEach((part, locations) -> lines.add(line(part, locations, now)));
        return lines;
    }

    private TypePage.Line line(String part, List<String> locations, Instant now) {
        Optional<PartType> known = rooms.store().partType(part, now);
        String state = known.map(this::level).orElseGet(() -> words.text("boards.type.part.unknown"));
        return new TypePage.Line(
                part,
                known.isPresent() ? "/parts/type?number=" + URLEncoder.encode(part, StandardCharsets.UTF_8) : "",
                known.map(PartType::description).orElse(""),
                String.join(", ", locations),
                state);
    }

    private String level(PartType type) {
        String levels = type.part().ratings().stream()
                .map(Rating::level)
                .flatMap(Optional::stream)
                .map(Level::code)
                .collect(Collectors.joining(", "));
        return levels.isEmpty()
                ? words.text("boards.type.part.level-unknown")
                : words.text("boards.type.part.level", levels);
    }

    private List<TypePage.Profile> profiles(BoardType type, Instant now) {
        BoardRules rules = rooms.boards().rules(now).fact();
        LocalDate today = now.atZone(words.texts().zone()).toLocalDate();
        return rooms.boards().profiles(type.number(), now).stream()
                .map(Versioned::fact)
                .map(profile -> new TypePage.Profile(
                        profile.id(),
                        what(profile),
                        profile.tool(),
                        peaks(profile),
                        words.text("boards.profile.measured", profile.measuredOn(), profile.measuredBy()),
                        profile.isOld(today, rules) ? words.text("boards.profile.old", rules.profileMonths()) : ""))
                .toList();
    }

    /** What the profile is for, in a few words. */
    String what(HeatProfile profile) {
        return words.text("boards.profile.kind." + profile.kind().name(), profile.location());
    }

    private String peaks(HeatProfile profile) {
        List<String> peaks = new ArrayList<>();
        profile.partPeak()
                .ifPresent(peak ->
                        peaks.add(profile.location() + " " + words.texts().temperature(peak)));
        new TreeMap<>(profile.neighbours())
                .forEach((spot, peak) -> peaks.add(spot + " " + words.texts().temperature(peak)));
        profile.elsewhere()
                .ifPresent(peak -> peaks.add(
                        words.text("boards.profile.elsewhere.is", words.texts().temperature(peak))));
        return String.join(", ", peaks);
    }

    PartsPage parts(BoardType type, int basedOn, String text) {
        return parts(type, basedOn, text, "", List.of());
    }

    /** Nothing was sent. */
    PartsPage missing(BoardType type, int basedOn) {
        return parts(type, basedOn, "", words.text("boards.parts.nothing"), List.of());
    }

    private PartsPage parts(BoardType type, int basedOn, String text, String refusal, List<String> unknown) {
        return new PartsPage(
                words.text("boards.parts.title", type.number()),
                type.number(),
                basedOn,
                text(text),
                refusal,
                List.of(),
                "",
                unknown,
                "");
    }

    /** What can't be read, and what is not known; the good lines are offered. */
    PartsPage unread(BoardType type, int basedOn, String text, PartsList list, List<String> unknown) {
        List<PartsPage.Bad> bad = list.bad().stream()
                .limit(MOST_SHOWN)
                .map(line -> new PartsPage.Bad(
                        Long.toString(line.line()), line.column(), words.texts().refusal(line.refusal())))
                .toList();
        int more = list.bad().size() - bad.size();
        String refusal = list.bad().isEmpty()
                ? words.text("boards.parts.unknown-types", unknown.size())
                : words.text("boards.parts.bad", list.bad().size());
        return new PartsPage(
                words.text("boards.parts.title", type.number()),
                type.number(),
                basedOn,
                text(text),
                refusal,
                bad,
                more == 0 ? "" : words.text("boards.parts.more", more),
                unknown,
                list.good().isEmpty() ? "" : offer(list, unknown));
    }

    private String offer(PartsList list, List<String> unknown) {
        return unknown.isEmpty()
                ? words.text("boards.parts.keep-good", list.good().size())
                : words.text("boards.parts.keep-and-create", list.good().size(), unknown.size());
    }

    private Field text(String text) {
        return Field.of("text", words.text("boards.parts.text"), text).hinting(words.text("boards.parts.text.hint"));
    }
}
