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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** Draws part types with every fact there, unknown or odd, none of which exclude each other. */
final class SomeParts {
    private static final String[] WORDS = {"", "Quay, \"best\"", "=1+1", "'quoted", "semi;colon", "Größe µ", "@home"};

    private final SplittableRandom random;

    SomeParts(long seed) {
        this.random = new SplittableRandom(seed);
    }

    PartType next(String number) {
        Part part = new Part(
                ratings(),
                body(),
                maker(),
                Optional.empty(),
                carrier(),
                new Part.Prior(time(), random.nextInt(4), random.nextInt(4)));
        PartType.Source source = new PartType.Source(word(), word());
        return new PartType(number, word(), word(), source, part);
    }

    private String word() {
        return WORDS[random.nextInt(WORDS.length)];
    }

    private <T> T oneOf(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return random.nextBoolean() ? Optional.of(value.get()) : Optional.empty();
    }

    private List<Rating> ratings() {
        if (random.nextInt(3) == 0) {
            return List.of(new Rating(maybe(this::level), maybe(() -> new Celsius(245.5))));
        }
        List<Rating> ratings = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            ratings.add(new Rating(maybe(this::level), Optional.of(new Celsius(235 + 12.5 * i))));
        }
        return ratings;
    }

    private Level level() {
        return oneOf(List.of(Level.values()));
    }

    private Body body() {
        return new Body(
                oneOf(List.of(BodyKind.values())),
                maybe(this::length),
                maybe(this::length),
                maybe(this::length),
                maybe(random::nextBoolean),
                maybe(random::nextBoolean),
                maybe(random::nextBoolean));
    }

    private Millimetres length() {
        return new Millimetres(BigDecimal.valueOf(1 + random.nextInt(100_000_000), 6));
    }

    private MakerRules maker() {
        List<MakerBake> bakes = new ArrayList<>();
        for (int i = 0; i < random.nextInt(3); i++) {
            bakes.add(new MakerBake(
                    new Celsius(40 + random.nextInt(1800) / 20.0),
                    time(),
                    maybe(() -> new RelativeHumidity(random.nextInt(50) / 10.0)),
                    maybe(() -> new Celsius(125))));
        }
        List<MakerDerating.Cell> cells = new ArrayList<>();
        for (int i = 0; i < random.nextInt(4); i++) {
            cells.add(new MakerDerating.Cell(new Celsius(20 + 5 * i), new RelativeHumidity(60), time()));
        }
        return new MakerRules(
                maybe(this::time),
                cells.isEmpty() ? Optional.empty() : Optional.of(new MakerDerating(cells)),
                count(),
                bakes,
                random.nextBoolean(),
                maybe(this::time),
                count(),
                random.nextInt(5));
    }

    private OptionalInt count() {
        return random.nextBoolean() ? OptionalInt.of(random.nextInt(30)) : OptionalInt.empty();
    }

    private CarrierLimit carrier() {
        return switch (random.nextInt(3)) {
            case 0 -> new CarrierLimit.None();
            case 1 -> new CarrierLimit.Of(new Celsius(40 + random.nextInt(100)));
            default -> new CarrierLimit.Unknown();
        };
    }

    /** Any whole number of milliseconds, also those that are no decimal number of hours. */
    private Duration time() {
        return Duration.ofMillis(1 + random.nextLong(Duration.ofDays(40).toMillis()));
    }
}
