package bagclock.desk;

import bagclock.core.exposure.PartHistory;
import java.util.SortedMap;

/**
 * Everything that an answer about an item is worked out from.
 *
 * @param versions of every fact, by its name
 * @param sha256 over all of it, in hexadecimal
 */
public record Evidence(PartHistory history, SortedMap<String, Integer> versions, String sha256) {}
