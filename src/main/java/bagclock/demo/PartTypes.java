package bagclock.demo;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.register.PartType;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The shop's part types: invented numbers, every level, and some facts that nobody knows yet. */
final class PartTypes {
    private static final String ONE = "Supplier Gull";
    private static final String TWO = "Supplier Tern";
    private static final String THREE = "Supplier Heron";

    private PartTypes() {}

    /** A body and what its maker says. */
    private record Plastic(Body body, MakerRules rules) {}

    static List<PartType> all() {
        return List.of(
                type("SNR-1001", ONE, "Sonar receiver front end, 96 balls", "3@260", array("1.4", "10", "10")),
                type("SNR-1002", ONE, "Sonar beam processor, 484 balls", "4@245", array("2.2", "23", "23")),
                type("SNR-1003", TWO, "Sonar transmit driver, 64 leads", "3@245", leaded("2.6")),
                type("SNR-1004", TWO, "Echo converter, 32 pads", "2@260", body(BodyKind.LEADLESS, "0.85")),
                type("SNR-1005", THREE, "Hydrophone preamplifier, 14 leads", "1@260", leaded("1.5")),
                type("TGE-2001", THREE, "Tide gauge pressure module", "5a@235", body(BodyKind.LEADLESS, "1.9")),
                type("TGE-2002", TWO, "Tide gauge clock, 20 pads", "2a@260", body(BodyKind.LEADLESS, "0.9")),
                type("TGE-2003", ONE, "Tide gauge controller, 100 leads", "3@260", leaded("1.4")),
                type("TGE-2004", ONE, "Low-power memory, stacked dies", "3@260", stacked()),
                opticalSensor(),
                type("RDR-3001", ONE, "Radar display controller, 676 balls", "5@245", array("2.1", "27", "27")),
                backlight(),
                type("RDR-3003", TWO, "Radar video memory, 90 balls", "4@260", array("1.2", "13", "8")),
                type("RDR-3004", TWO, "Radar display socket", "2a@245", body(BodyKind.CONNECTOR, "6.0")),
                type("RDR-3005", THREE, "Keypad controller, not measured yet", "3@260", unmeasured(BodyKind.LEADED)),
                type("RDR-3006", THREE, "Graphics processor, label unreadable", "@", array("1.7", "19", "19")),
                type("PWR-4001", TWO, "Supply module, 5.0 mm high", "3@245", body(BodyKind.MODULE, "5.0")),
                type("PWR-4002", TWO, "Regulator, 3 leads", "1@260", leaded("2.0")),
                type("PWR-4003", ONE, "Gate driver, 16 pads", "2@260", body(BodyKind.LEADLESS, "0.75")),
                polymerCapacitor(),
                type("MEM-5001", ONE, "Program memory, 48 leads", "3@260", leaded("1.0")),
                type("MEM-5002", THREE, "Old program memory, 68 leads", "5@225", leaded("3.8")),
                type("MEM-5003", ONE, "Map memory, two ratings", "3@245 4@260", array("1.2", "12", "12")),
                shortLife(),
                type("RAD-6002", TWO, "Radio front end, lands, edges not measured", "4@250", lands()),
                type("OLD-9001", "", "Found in a drawer, nothing known", "@", unmeasured(BodyKind.UNKNOWN)));
    }

    /** Level 6 with the two things that its label must say: a bake, and the time after it. */
    private static PartType opticalSensor() {
        MakerRules rules = maker(Optional.of(Duration.ofHours(6)), OptionalInt.empty(), bake(90, 8, 5));
        return type(
                "TGE-2005", THREE, "Optical water sensor", "6@240", new Plastic(body(BodyKind.LEADLESS, "1.1"), rules));
    }

    /** May be baked once only, and not hot. */
    private static PartType backlight() {
        MakerRules rules = maker(Optional.empty(), OptionalInt.of(1), bake(60, 24, 5));
        return type("RDR-3002", TWO, "Display backlight", "5a@250", new Plastic(body(BodyKind.LED, "1.6"), rules));
    }

    private static PartType polymerCapacitor() {
        MakerRules rules = maker(Optional.empty(), OptionalInt.of(2), bake(40, 168, 5));
        return type("PWR-4004", THREE, "Polymer capacitor", "3@260", new Plastic(body(BodyKind.PASSIVE, "2.8"), rules));
    }

    /** The maker allows six hours only. */
    private static PartType shortLife() {
        MakerRules rules = new MakerRules(
                Optional.of(Duration.ofHours(6)),
                Optional.empty(),
                OptionalInt.of(18),
                List.of(),
                false,
                Optional.empty(),
                OptionalInt.empty(),
                2);
        return type(
                "RAD-6001", TWO, "Radar mixer, maker's floor life 6 h", "5a@240", new Plastic(leaded("1.4"), rules));
    }

    private static MakerRules maker(Optional<Duration> useWithin, OptionalInt maxBakes, MakerBake bake) {
        return new MakerRules(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                List.of(bake),
                false,
                useWithin,
                maxBakes,
                MakerRules.USUAL_REFLOW_PASSES);
    }

    private static MakerBake bake(double celsius, int hours, double maxPercent) {
        return new MakerBake(
                new Celsius(celsius),
                Duration.ofHours(hours),
                Optional.of(new RelativeHumidity(maxPercent)),
                Optional.empty());
    }

    private static PartType type(String number, String maker, String description, String ratings, Body body) {
        return type(number, maker, description, ratings, new Plastic(body, MakerRules.NONE));
    }

    private static PartType type(String number, String maker, String description, String ratings, Plastic plastic) {
        List<Rating> all =
                Arrays.stream(ratings.split(" ", -1)).map(PartTypes::rating).toList();
        Part part = new Part(
                all, plastic.body(), plastic.rules(), Optional.empty(), new CarrierLimit.Unknown(), Part.Prior.NONE);
        String document = maker.isEmpty() ? "" : number + " label";
        return new PartType(number, maker, description, new PartType.Source(document, ""), part);
    }

    /** A level and a peak as on the label, such as {@code 3@260}; {@code @} when nothing is known. */
    private static Rating rating(String text) {
        String[] sides = text.split("@", -1);
        return new Rating(
                Level.parse(sides[0]),
                sides[1].isEmpty() ? Optional.empty() : Optional.of(new Celsius(Double.parseDouble(sides[1]))));
    }

    private static Body leaded(String thicknessMm) {
        return body(BodyKind.LEADED, thicknessMm);
    }

    private static Body body(BodyKind kind, String thicknessMm) {
        return new Body(
                kind,
                Optional.of(Millimetres.of(thicknessMm)),
                Optional.of(Millimetres.of("9")),
                Optional.of(Millimetres.of("9")),
                Optional.of(false),
                Optional.of(false),
                Optional.of(true));
    }

    private static Body array(String thicknessMm, String lengthMm, String widthMm) {
        return new Body(
                BodyKind.ARRAY,
                Optional.of(Millimetres.of(thicknessMm)),
                Optional.of(Millimetres.of(lengthMm)),
                Optional.of(Millimetres.of(widthMm)),
                Optional.of(false),
                Optional.of(false),
                Optional.of(true));
    }

    private static Body stacked() {
        return new Body(
                BodyKind.ARRAY,
                Optional.of(Millimetres.of("1.1")),
                Optional.of(Millimetres.of("11")),
                Optional.of(Millimetres.of("8")),
                Optional.of(true),
                Optional.of(false),
                Optional.of(true));
    }

    private static Body lands() {
        return Body.of(BodyKind.LAND_ARRAY, "1.3");
    }

    private static Body unmeasured(BodyKind kind) {
        return new Body(
                kind,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
