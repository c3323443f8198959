package bagclock.readings;

import bagclock.core.exposure.Zone;
import java.time.Instant;

/**
 * A file whose readings are to be taken back.
 *
 * @param eventSeq number of the event that says so
 * @param first at or before its first reading
 * @param last at or after its last one
 */
public record TakenBack(Zone zone, String fileId, int eventSeq, Instant first, Instant last) {}
