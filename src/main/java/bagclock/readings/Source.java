package bagclock.readings;

import java.time.Instant;

/** Who entered readings, and when. */
public record Source(String who, Instant recordedAt) {}
