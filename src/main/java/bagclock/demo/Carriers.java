package bagclock.demo;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.CarrierLimit;
import bagclock.register.CarrierKind;
import java.util.List;

/** What parts are in and on. */
final class Carriers {
    static final String REEL = "reel, unmarked";
    static final String WARM_REEL = "reel marked 65 C";
    static final String TRAY = "tray marked 150 C";
    static final String COOL_TRAY = "tray, unmarked";
    static final String TUBE = "tube, unmarked";
    static final String LOOSE = "loose on foil";

    static final List<CarrierKind> ALL = List.of(
            new CarrierKind(REEL, new CarrierLimit.Unknown()),
            new CarrierKind(WARM_REEL, new CarrierLimit.Of(new Celsius(65))),
            new CarrierKind(TRAY, new CarrierLimit.Of(new Celsius(150))),
            new CarrierKind(COOL_TRAY, new CarrierLimit.Unknown()),
            new CarrierKind(TUBE, new CarrierLimit.Unknown()),
            new CarrierKind(LOOSE, new CarrierLimit.None()));

    private Carriers() {}
}
