package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;

/** Parts taken out into a child with its own tag. */
final class SplitForm implements ActForm {
    @Override
    public String name() {
        return "split";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of(
                Input.of(entered.field("quantity", words.text("stock.quantity.out")), Input.Kind.NUMBER),
                Input.of(
                        entered.field("child", words.text("stock.child"), words.text("stock.tag.hint")),
                        Input.Kind.SCANNED));
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        Optional<Integer> quantity = ActForm.quantity(entered);
        return ActForm.unlessRefused(
                entered, () -> new Command.Split(header, tag, quantity.orElseThrow(), entered.text(FieldNames.CHILD)));
    }
}
