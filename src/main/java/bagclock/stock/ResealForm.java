package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;

/** Closing a bag again. */
final class ResealForm implements ActForm {
    private static final String YES = "yes";

    @Override
    public String name() {
        return "reseal";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of(
                new Input(
                        entered.field("desiccant", words.text("stock.desiccant")),
                        Input.Kind.CHOICES,
                        ActForm.yesOrNo(words)),
                new Input(entered.field("card", words.text("stock.card")), Input.Kind.CHOICES, ActForm.yesOrNo(words)));
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        boolean desiccant = entered.required("desiccant").equals(YES);
        boolean card = entered.required("card").equals(YES);
        return ActForm.unlessRefused(entered, () -> new Command.Reseal(header, tag, desiccant, card));
    }
}
