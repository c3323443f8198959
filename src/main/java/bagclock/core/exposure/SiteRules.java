package bagclock.core.exposure;

import java.time.Duration;

/**
 * A site's own choices.
 *
 * @param useDrierThan60 whether cells longer than the part's own life count
 * @param maxReadingGap how long a reading holds
 * @param excursion spells above 30 C / 60 %RH no longer than this change neither bake column nor reset; 0 to 60 min
 */
public record SiteRules(boolean useDrierThan60, Duration maxReadingGap, Duration excursion) {
    /** What counts unless a site says otherwise: 2 h, no excursions excused. */
    public static final SiteRules USUAL = new SiteRules(false, Duration.ofHours(2), Duration.ZERO);
}
