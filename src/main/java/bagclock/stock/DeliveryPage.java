package bagclock.stock;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Many bags received one after another: what is equal for all stands in the form and stays there.
 *
 * @param received tags of this delivery, for the form: separated by commas
 * @param tags the same, newest first
 * @param labels address of their labels; empty without any
 */
public record DeliveryPage(
        String title,
        String key,
        CounterPage.Told told,
        Field code,
        List<Input> inputs,
        String received,
        List<String> tags,
        String labels)
        implements Page {
    @Override
    public String template() {
        return "stock/delivery.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
