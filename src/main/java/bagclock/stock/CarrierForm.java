package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;

/** Into or onto another known carrier. */
final class CarrierForm implements ActForm {
    @Override
    public String name() {
        return "carrier";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        List<Choice> kinds = offer.carriers().stream()
                .map(kind -> Choice.of(kind.name(), kind.name()))
                .toList();
        return List.of(new Input(entered.field("carrier", words.text("stock.carrier")), Input.Kind.CHOICES, kinds));
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        String carrier = entered.required("carrier");
        return ActForm.unlessRefused(entered, () -> new Command.ChangeCarrier(header, tag, carrier));
    }
}
