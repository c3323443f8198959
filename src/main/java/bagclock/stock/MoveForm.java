package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;

/** To a zone or a cabinet. */
final class MoveForm implements ActForm {
    @Override
    public String name() {
        return "move";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of(
                new Input(entered.field("place", words.text("stock.place")), Input.Kind.CHOICES, offer.storage(words)));
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        String place = entered.required("place");
        return ActForm.unlessRefused(entered, () -> new Command.Move(header, tag, place));
    }
}
