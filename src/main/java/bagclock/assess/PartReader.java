package bagclock.assess;

import bagclock.assess.Fields.Range;
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
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Reads the "part" of a request; what is left out stays unknown. */
final class PartReader {
    private static final String NO_CARRIER = "none";

    private PartReader() {}

    static Part read(Fields part) {
        Part read =
                new Part(ratings(part), body(part), maker(part), celsius(part, "maxBakeC"), carrier(part), prior(part));
        part.done();
        return read;
    }

    private static List<Rating> ratings(Fields part) {
        List<Rating> ratings =
                part.list("ratings").stream().map(PartReader::rating).toList();
        boolean single = part.has("level") || part.has("classificationC");
        if (!ratings.isEmpty() && single) {
            part.problem("ratings", "cannot stand beside level or classificationC");
        }
        Rating alone = new Rating(part.word("level", Level::parse), celsius(part, "classificationC"));
        return ratings.isEmpty() ? List.of(alone) : ratings;
    }

    private static Rating rating(Fields fields) {
        Rating rating = new Rating(fields.word("level", Level::parse), celsius(fields, "peakC"));
        fields.done();
        return rating;
    }

    private static Body body(Fields part) {
        return new Body(
                part.word("body", BodyKind::parse).orElse(BodyKind.UNKNOWN),
                millimetres(part, "thicknessMm"),
                millimetres(part, "lengthMm"),
                millimetres(part, "widthMm"),
                part.flag("stackedDie"),
                part.flag("blockingPlanes"),
                part.flag("leadFree"));
    }

    private static MakerRules maker(Fields part) {
        return new MakerRules(
                life(part, "floorLifeHours"),
                derating(part),
                part.count("shelfMonths", Range.COUNT),
                part.list("makerBakes").stream()
                        .flatMap(bake -> bake(bake).stream())
                        .toList(),
                part.flag("tableToo").orElse(false),
                life(part, "useWithinHours"),
                part.count("maxBakes", Range.COUNT),
                part.count("maxReflowPasses", Range.COUNT).orElse(MakerRules.USUAL_REFLOW_PASSES));
    }

    private static Optional<MakerDerating> derating(Fields part) {
        List<MakerDerating.Cell> cells = part.list("floorLifeTable").stream()
                .flatMap(cell -> cell(cell).stream())
                .toList();
        return cells.isEmpty() ? Optional.empty() : Optional.of(new MakerDerating(cells));
    }

    private static Optional<MakerDerating.Cell> cell(Fields cell) {
        Optional<Celsius> temperature = required(cell, "temperatureC", celsius(cell, "temperatureC"));
        Optional<RelativeHumidity> humidity = required(cell, "rhPercent", percent(cell, "rhPercent"));
        Optional<Duration> hours = required(cell, "hours", life(cell, "hours"));
        cell.done();
        return temperature.flatMap(t -> humidity.flatMap(h -> hours.map(life -> new MakerDerating.Cell(t, h, life))));
    }

    private static Optional<MakerBake> bake(Fields bake) {
        Optional<Celsius> temperature = required(bake, "temperatureC", celsius(bake, "temperatureC"));
        Optional<Duration> hours = required(bake, "hours", bake.hours("hours", Range.HOURS, RoundingMode.CEILING));
        Optional<RelativeHumidity> humidity = percent(bake, "maxRhPercent");
        Optional<Celsius> carrier = celsius(bake, "carrierMaxC");
        bake.done();
        return temperature.flatMap(t -> hours.map(time -> new MakerBake(t, time, humidity, carrier)));
    }

    static <T> Optional<T> required(Fields fields, String name, Optional<T> value) {
        if (value.isEmpty() && !fields.has(name)) {
            fields.problem(name, "is required");
        }
        return value;
    }

    private static Part.Prior prior(Fields part) {
        return new Part.Prior(
                part.hours("bakedHoursOver90C", Range.HOURS_OR_NONE, RoundingMode.CEILING)
                        .orElse(Duration.ZERO),
                part.count("bakes", Range.COUNT).orElse(0),
                part.count("reflowPasses", Range.COUNT).orElse(0));
    }

    /** A number, the word "none", or nothing for unknown. */
    static CarrierLimit carrier(Fields fields) {
        if (fields.textually("carrierMaxC")) {
            Optional<CarrierLimit> none = fields.word(
                    "carrierMaxC",
                    word -> word.equals(NO_CARRIER) ? Optional.of(new CarrierLimit.None()) : Optional.empty());
            return none.orElse(new CarrierLimit.Unknown());
        }
        return celsius(fields, "carrierMaxC")
                .<CarrierLimit>map(CarrierLimit.Of::new)
                .orElse(new CarrierLimit.Unknown());
    }

    static Optional<Celsius> celsius(Fields fields, String name) {
        return fields.number(name, Range.CELSIUS, Celsius::new);
    }

    static Optional<RelativeHumidity> percent(Fields fields, String name) {
        return fields.number(name, Range.PERCENT, RelativeHumidity::new);
    }

    private static Optional<Millimetres> millimetres(Fields fields, String name) {
        return fields.number(name, Range.MILLIMETRES).map(Millimetres::new);
    }

    /** A life is rounded down, so that rounding never lengthens it. */
    private static Optional<Duration> life(Fields fields, String name) {
        return fields.hours(name, Range.HOURS, RoundingMode.FLOOR);
    }
}
