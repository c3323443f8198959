package bagclock.parts;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.register.PartType;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A part type as text by column; {@link PartReading} reads it back as the very same part type. */
final class PartWriting {
    static final String YES = "yes";
    static final String NO = "no";
    static final String NO_CARRIER = "none";
    static final String UNKNOWN_LEVEL = "unknown";

    private PartWriting() {}

    static Map<Column, String> of(PartType type) {
        Map<Column, String> texts = new EnumMap<>(Column.class);
        texts.put(Column.NUMBER, type.number());
        texts.put(Column.MAKER, type.maker());
        texts.put(Column.DESCRIPTION, type.description());
        texts.put(Column.DOCUMENT, type.source().document());
        texts.put(Column.REVISION, type.source().revision());
        rated(texts, type.part());
        body(texts, type.part().body());
        made(texts, type.part().maker());
        texts.put(
                Column.BAKE_LIMIT,
                type.part().maxBake().map(PartWriting::celsius).orElse(""));
        texts.put(Column.CARRIER, carrier(type.part().carrier()));
        Part.Prior prior = type.part().prior();
        texts.put(Column.BAKED_BEFORE, Hours.ofBake(prior.bakedAbove90()));
        texts.put(Column.BAKES_BEFORE, Integer.toString(prior.bakes()));
        texts.put(Column.PASSES_BEFORE, Integer.toString(prior.passes()));
        return texts;
    }

    private static void rated(Map<Column, String> texts, Part part) {
        List<Rating> ratings = part.ratings();
        texts.put(Column.LEVEL, ratings.get(0).level().map(Level::code).orElse(""));
        texts.put(Column.PEAK, ratings.get(0).peak().map(PartWriting::celsius).orElse(""));
        texts.put(
                Column.MORE_RATINGS,
                ratings.stream().skip(1).map(PartWriting::rating).collect(Collectors.joining("; ")));
    }

    private static String rating(Rating rating) {
        return rating.level().map(Level::code).orElse(UNKNOWN_LEVEL) + "@"
                + rating.peak().map(PartWriting::celsius).orElse("");
    }

    private static void body(Map<Column, String> texts, Body body) {
        texts.put(
                Column.BODY, body.kind() == BodyKind.UNKNOWN ? "" : body.kind().code());
        texts.put(Column.THICKNESS, millimetres(body.thickness()));
        texts.put(Column.LENGTH, millimetres(body.length()));
        texts.put(Column.WIDTH, millimetres(body.width()));
        texts.put(Column.STACKED_DIE, flag(body.stackedDie()));
        texts.put(Column.BLOCKING_PLANES, flag(body.blockingPlanes()));
        texts.put(Column.LEAD_FREE, flag(body.leadFree()));
    }

    private static void made(Map<Column, String> texts, MakerRules maker) {
        texts.put(Column.FLOOR_LIFE, life(maker.floorLife()));
        texts.put(
                Column.DERATING,
                maker.derating().map(MakerDerating::cells).orElse(List.of()).stream()
                        .map(PartWriting::cell)
                        .collect(Collectors.joining("; ")));
        texts.put(Column.SHELF, count(maker.shelfMonths()));
        texts.put(Column.BAKES, maker.bakes().stream().map(PartWriting::bake).collect(Collectors.joining("; ")));
        texts.put(Column.TABLE_TOO, maker.tableToo() ? YES : NO);
        texts.put(Column.USE_WITHIN, life(maker.useWithin()));
        texts.put(Column.MOST_BAKES, count(maker.maxBakes()));
        texts.put(Column.MOST_PASSES, Integer.toString(maker.maxReflowPasses()));
    }

    /** For example {@code 90 C 48 h 5 %RH carrier 125 C}. */
    static String bake(MakerBake bake) {
        return celsius(bake.temperature()) + " C " + Hours.ofBake(bake.time()) + " h"
                + bake.maxHumidity().map(most -> " " + percent(most) + " %RH").orElse("")
                + bake.carrierLimit()
                        .map(limit -> " carrier " + celsius(limit) + " C")
                        .orElse("");
    }

    /** For example {@code 30 C 60 %RH 168 h}. */
    static String cell(MakerDerating.Cell cell) {
        return celsius(cell.temperature()) + " C " + percent(cell.humidity()) + " %RH " + Hours.ofLife(cell.life())
                + " h";
    }

    private static String carrier(CarrierLimit carrier) {
        return carrier instanceof CarrierLimit.None
                ? NO_CARRIER
                : carrier.borne().map(PartWriting::celsius).orElse("");
    }

    private static String celsius(Celsius temperature) {
        return Hours.plain(BigDecimal.valueOf(temperature.degrees()));
    }

    private static String percent(RelativeHumidity humidity) {
        return Hours.plain(BigDecimal.valueOf(humidity.percent()));
    }

    private static String millimetres(Optional<Millimetres> length) {
        return length.map(value -> Hours.plain(value.value())).orElse("");
    }

    private static String life(Optional<Duration> life) {
        return life.map(Hours::ofLife).orElse("");
    }

    private static String flag(Optional<Boolean> flag) {
        return flag.map(is -> is ? YES : NO).orElse("");
    }

    private static String count(OptionalInt count) {
        return count.isPresent() ? Integer.toString(count.getAsInt()) : "";
    }
}
