package bagclock.climate;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * How readings count at the site.
 *
 * @param lead with the version that counts
 * @param refusal empty for none
 * @param basedOn the version that is changed; 0 if nobody chose yet
 * @param drier whether cells longer than the part's own life count
 * @param spans how long a reading holds, how long an excursion is excused
 * @param worst temperature and humidity where nothing else is declared
 */
public record SiteRulesPage(
        String title,
        String lead,
        String refusal,
        String basedOn,
        Field drier,
        List<Choice> choices,
        List<Field> spans,
        List<Field> worst)
        implements Page {
    /** Keeps its own copies. */
    public SiteRulesPage {
        choices = List.copyOf(choices);
        spans = List.copyOf(spans);
        worst = List.copyOf(worst);
    }

    @Override
    public String template() {
        return "climate/rules.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
