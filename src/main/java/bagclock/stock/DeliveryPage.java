package bagclock.stock;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;
import java.util.Optional;

/**
 * Many bags received one after another: what is equal for all stands in the form and stays there.
 *
 * @param received tags of this delivery, for the form: separated by commas
 * @param label the maker's label of the bag that is received next
 * @param bags the same, newest first
 * @param labels address of their labels; empty without any
 */
public record DeliveryPage(
        String title,
        String key,
        CounterPage.Told told,
        Field code,
        List<Input> inputs,
        Optional<ActPage.LabelPart> label,
        String received,
        List<Bag> bags,
        String labels)
        implements Page {
    /** A bag that was received, and what is in it. */
    public record Bag(String tag, String words) {}

    @Override
    public String template() {
        return "stock/delivery.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
