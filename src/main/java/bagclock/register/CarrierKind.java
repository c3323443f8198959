package bagclock.register;

import bagclock.core.standard.CarrierLimit;

/** A kind of reel, tray or tube, and what it bears. */
public record CarrierKind(String name, CarrierLimit limit) {}
