package bagclock.core.heat;

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
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A part for tests. Unless told otherwise: a leadless body of 1.2 mm, 7 x 7 mm, rated 260 C, in no carrier. */
final class PartUnderTest {
    private final List<Rating> ratings = new ArrayList<>();
    private BodyKind kind = BodyKind.LEADLESS;
    private Optional<Millimetres> thickness = Optional.of(Millimetres.of("1.2"));
    private Optional<Millimetres> length = Optional.of(Millimetres.of("7"));
    private Optional<Millimetres> width = Optional.of(Millimetres.of("7"));
    private Optional<Boolean> stacked = Optional.of(false);
    private Optional<Boolean> blocking = Optional.of(false);
    private Optional<Boolean> leadFree = Optional.of(true);
    private Optional<Duration> floorLife = Optional.empty();
    private Optional<MakerDerating> derating = Optional.empty();
    private OptionalInt shelfMonths = OptionalInt.empty();
    private final List<MakerBake> bakes = new ArrayList<>();
    private boolean tableToo;
    private Optional<Duration> useWithin = Optional.empty();
    private OptionalInt maxBakes = OptionalInt.empty();
    private int maxPasses = MakerRules.USUAL_REFLOW_PASSES;
    private Optional<Celsius> maxBake = Optional.empty();
    private CarrierLimit carrier = new CarrierLimit.None();
    private Part.Prior prior = Part.Prior.NONE;

    private PartUnderTest() {}

    static PartUnderTest level(String code) {
        return rated(code, 260);
    }

    static PartUnderTest levelUnknown() {
        PartUnderTest part = new PartUnderTest();
        part.ratings.add(new Rating(Optional.empty(), Optional.of(new Celsius(260))));
        return part;
    }

    static PartUnderTest rated(String level, double peakC) {
        return new PartUnderTest().andRated(level, peakC);
    }

    /** Its label names no peak: the body's class counts. */
    static PartUnderTest withoutRatedPeak(String level) {
        PartUnderTest part = new PartUnderTest();
        part.ratings.add(new Rating(Level.parse(level), Optional.empty()));
        return part;
    }

    PartUnderTest andRated(String level, double peakC) {
        ratings.add(Rating.of(Level.parse(level).orElseThrow(), new Celsius(peakC)));
        return this;
    }

    PartUnderTest body(BodyKind of, String thicknessMm) {
        kind = of;
        thickness = Optional.of(Millimetres.of(thicknessMm));
        return this;
    }

    PartUnderTest kind(BodyKind of) {
        kind = of;
        return this;
    }

    PartUnderTest thick(String mm) {
        return body(kind, mm);
    }

    PartUnderTest thicknessUnknown() {
        thickness = Optional.empty();
        return this;
    }

    PartUnderTest edges(String lengthMm, String widthMm) {
        length = Optional.of(lengthMm).filter(mm -> !mm.isEmpty()).map(Millimetres::of);
        width = Optional.of(widthMm).filter(mm -> !mm.isEmpty()).map(Millimetres::of);
        return this;
    }

    PartUnderTest stacked(Optional<Boolean> is) {
        stacked = is;
        return this;
    }

    PartUnderTest blocking(Optional<Boolean> is) {
        blocking = is;
        return this;
    }

    PartUnderTest leadFree(Optional<Boolean> is) {
        leadFree = is;
        return this;
    }

    PartUnderTest makersLife(double hours) {
        floorLife = Optional.of(Story.hours(hours));
        return this;
    }

    /** Triples of C, %RH, hours. */
    PartUnderTest makersTable(double... cells) {
        List<MakerDerating.Cell> list = new ArrayList<>();
        for (int i = 0; i < cells.length; i += 3) {
            list.add(new MakerDerating.Cell(
                    new Celsius(cells[i]), new RelativeHumidity(cells[i + 1]), Story.hours(cells[i + 2])));
        }
        derating = Optional.of(new MakerDerating(list));
        return this;
    }

    PartUnderTest shelfMonths(int months) {
        shelfMonths = OptionalInt.of(months);
        return this;
    }

    PartUnderTest makersBake(double celsius, double hours) {
        return makersBake(celsius, hours, Optional.empty(), Optional.empty());
    }

    PartUnderTest makersBake(double celsius, double hours, Optional<Double> rhPercent, Optional<Double> carrierC) {
        bakes.add(new MakerBake(
                new Celsius(celsius),
                Story.hours(hours),
                rhPercent.map(RelativeHumidity::new),
                carrierC.map(Celsius::new)));
        return this;
    }

    PartUnderTest tableToo() {
        tableToo = true;
        return this;
    }

    PartUnderTest useWithin(double hours) {
        useWithin = Optional.of(Story.hours(hours));
        return this;
    }

    PartUnderTest maxBakes(int times) {
        maxBakes = OptionalInt.of(times);
        return this;
    }

    PartUnderTest maxPasses(int passes) {
        maxPasses = passes;
        return this;
    }

    PartUnderTest maxBakeC(double celsius) {
        maxBake = Optional.of(new Celsius(celsius));
        return this;
    }

    PartUnderTest in(CarrierLimit limit) {
        carrier = limit;
        return this;
    }

    PartUnderTest inCarrierOf(double celsius) {
        return in(new CarrierLimit.Of(new Celsius(celsius)));
    }

    PartUnderTest before(double bakedHours, int bakesBegun, int passes) {
        prior = new Part.Prior(Story.hours(bakedHours), bakesBegun, passes);
        return this;
    }

    Part get() {
        Body body = new Body(kind, thickness, length, width, stacked, blocking, leadFree);
        MakerRules maker =
                new MakerRules(floorLife, derating, shelfMonths, bakes, tableToo, useWithin, maxBakes, maxPasses);
        return new Part(ratings, body, maker, maxBake, carrier, prior);
    }
}
