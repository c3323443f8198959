package bagclock.demo;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Place.CabinetClass;
import bagclock.core.exposure.SiteRules;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import bagclock.register.KnownPlace.BakeOven;
import bagclock.register.KnownPlace.DryCabinet;
import bagclock.register.KnownPlace.FloorZone;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** The shop's rooms, cabinets and ovens. */
final class Places {
    static final String DOCK = "DOCK";
    static final String STORES = "STORES";
    static final String BENCH = "BENCH-1";
    static final String LINE = "LINE";
    static final String SHED = "SHED";
    static final String DRY_5 = "DRY-5";
    static final String DRY_10 = "DRY-10";
    static final String TALL_OVEN = "OVEN-1";
    static final String COOL_OVEN = "OVEN-2";
    static final String BENCH_OVEN = "OVEN-3";

    /** Warmer or wetter than this the shop opens no bags. */
    static final Air OPEN_BAGS_UP_TO = Air.of(27, 55);

    private static final Optional<Air> AT_WORST = Optional.of(Air.LIMIT_30_60);
    private static final Optional<RelativeHumidity> DRY = Optional.of(new RelativeHumidity(5));

    static final HouseRules RULES = new HouseRules(SiteRules.USUAL, AT_WORST);

    static final List<KnownPlace> ALL = List.of(
            zone(DOCK, "Receiving dock"),
            zone(STORES, "Stores"),
            zone(BENCH, "Sonar bench"),
            zone(LINE, "Placement line"),
            new FloorZone(SHED, "Boat shed bench", false, Optional.of(Air.of(30, 70)), Optional.of(OPEN_BAGS_UP_TO)),
            new DryCabinet(DRY_5, "Dry cabinet by the line", true, CabinetClass.UP_TO_5),
            new DryCabinet(DRY_10, "Dry cabinet in the stores", false, CabinetClass.UP_TO_10),
            new BakeOven(TALL_OVEN, "Tall oven", 8, new Celsius(40), new Celsius(150), DRY, Duration.ofMinutes(45)),
            new BakeOven(COOL_OVEN, "Low-heat oven", 12, new Celsius(35), new Celsius(95), DRY, Duration.ofMinutes(30)),
            new BakeOven(
                    BENCH_OVEN,
                    "Bench oven",
                    4,
                    new Celsius(40),
                    new Celsius(130),
                    Optional.empty(),
                    Duration.ofMinutes(20)));

    private Places() {}

    private static FloorZone zone(String code, String name) {
        return new FloorZone(code, name, true, AT_WORST, Optional.of(OPEN_BAGS_UP_TO));
    }
}
