package bagclock.core.exposure;

import bagclock.core.standard.Part;
import java.time.Instant;

/**
 * Everything a part's clock depends on, besides the standard.
 *
 * @param timeline nothing in it is later than the moment
 * @param moment the moment asked about; readings later than it are not used for what was
 */
public record PartHistory(Part part, Timeline timeline, ClimateLog climate, SiteRules rules, Instant moment) {}
