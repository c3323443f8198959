package bagclock.core.exposure;

import java.util.Map;
import java.util.Optional;

/**
 * What is known of the air at a site.
 *
 * @param zones the readings of each logged zone
 * @param worstCases the declared worst case of single zones, where it differs from the site's
 * @param worstCase the site's declared worst case, which also is the air of the room that a cabinet stands in; empty if
 *     none was declared, then unread time lies outside the tables
 */
public record ClimateLog(Map<Zone, ZoneLog> zones, Map<Zone, Air> worstCases, Optional<Air> worstCase) {
    /** Nothing known. */
    public static final ClimateLog NONE = new ClimateLog(Map.of(), Map.of(), Optional.empty());

    /** Keeps its own copies. */
    public ClimateLog {
        zones = Map.copyOf(zones);
        worstCases = Map.copyOf(worstCases);
    }

    /** No readings, one worst case for the whole site. */
    public static ClimateLog declared(Air worstCase) {
        return new ClimateLog(Map.of(), Map.of(), Optional.of(worstCase));
    }

    ZoneLog log(Optional<Zone> zone) {
        return zone.map(name -> zones.getOrDefault(name, ZoneLog.EMPTY)).orElse(ZoneLog.EMPTY);
    }

    Optional<Air> declaredFor(Optional<Zone> zone) {
        return zone.map(worstCases::get).or(() -> worstCase);
    }
}
