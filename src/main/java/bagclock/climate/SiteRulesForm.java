package bagclock.climate;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.SiteRules;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.HouseRules;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The site's rules for readings, as typed. */
final class SiteRulesForm {
    static final String BASED_ON = "basedOn";

    private static final String DRIER = "drier";
    private static final String YES = "yes";
    private static final String NO = "no";
    private static final String GAP = "gapMinutes";
    private static final String EXCURSION = "excursionMinutes";
    private static final String WORST = "worst";

    /** A day without a reading is no log any more. */
    private static final int LONGEST_GAP_MIN = 24 * 60;

    /** Rule of J-STD-033D's short excursions as the site reads it: one hour at most. */
    private static final int LONGEST_EXCURSION_MIN = 60;

    private SiteRulesForm() {}

    static Map<String, String> values(HouseRules rules, int version, Texts texts) {
        Map<String, String> values = new HashMap<>();
        values.put(DRIER, rules.rules().useDrierThan60() ? YES : NO);
        values.put(GAP, Long.toString(rules.rules().maxReadingGap().toMinutes()));
        values.put(EXCURSION, Long.toString(rules.rules().excursion().toMinutes()));
        rules.worstCase().ifPresent(air -> {
            values.put(WORST + "C", texts.number(air.temperature().degrees()));
            values.put(WORST + "Percent", texts.number(air.humidity().percent()));
        });
        values.put(BASED_ON, Integer.toString(version));
        return values;
    }

    /** The rules; empty when something is wrong, which is noted by field. */
    static Optional<HouseRules> read(Entered entered, Messages messages) {
        boolean drier = entered.required(DRIER).equals(YES);
        Optional<Integer> gap = entered.count(GAP, 1, LONGEST_GAP_MIN);
        Optional<Integer> excursion = entered.count(EXCURSION, 0, LONGEST_EXCURSION_MIN);
        Optional<Air> worst = PlaceForm.air(entered, WORST, messages);
        return entered.isRefused()
                ? Optional.empty()
                : Optional.of(new HouseRules(
                        new SiteRules(
                                drier,
                                Duration.ofMinutes(gap.orElseThrow()),
                                Duration.ofMinutes(excursion.orElseThrow())),
                        worst));
    }

    /** The page with what was typed. */
    static SiteRulesPage page(Entered entered, String lead, String refusal, Messages messages) {
        return new SiteRulesPage(
                messages.text("climate.rules"),
                lead,
                refusal,
                entered.text(BASED_ON),
                field(entered, DRIER, messages),
                List.of(
                        Choice.of(NO, messages.text("climate.rules.drier.no")),
                        Choice.of(YES, messages.text("climate.rules.drier.yes"))),
                Stream.of(GAP, EXCURSION)
                        .map(name -> field(entered, name, messages))
                        .toList(),
                Stream.of(WORST + "C", WORST + "Percent")
                        .map(name -> field(entered, name, messages))
                        .toList());
    }

    private static Field field(Entered entered, String name, Messages messages) {
        String key = "climate.rules." + name;
        return entered.field(name, messages.text(key), messages.text(key + ".hint"));
    }
}
