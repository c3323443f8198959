package bagclock.readings;

import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;

/** A reading, where it was taken, and the line of its file. */
public record ZoneReading(Zone zone, Reading reading, long line) {}
