package bagclock.core.exposure;

import java.util.HashMap;
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

    /** What both know; of two logs of one zone the longer, since both end at the same moment. */
    public ClimateLog with(ClimateLog other) {
        Map<Zone, ZoneLog> logs = new HashMap<>(zones);
        other.zones.forEach((zone, log) -> logs.merge(zone, log, (a, b) -> a.size() >= b.size() ? a : b));
        Map<Zone, Air> airs = new HashMap<>(other.worstCases);
        airs.putAll(worstCases);
        return new ClimateLog(logs, airs, worstCase);
    }

    ZoneLog log(Optional<Zone> zone) {
        return zone.map(name -> zones.getOrDefault(name, ZoneLog.EMPTY)).orElse(ZoneLog.EMPTY);
    }

    Optional<Air> declaredFor(Optional<Zone> zone) {
        return zone.map(worstCases::get).or(() -> worstCase);
    }
}
