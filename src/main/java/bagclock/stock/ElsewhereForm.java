package bagclock.stock;

import bagclock.desk.Command;
import bagclock.desk.ElsewhereTold;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;

/** Baked in an oven that this shop does not know. */
final class ElsewhereForm implements ActForm {
    private static final String OVEN = "oven";
    private static final String DEGREES = "degrees";
    private static final String HOURS = "hours";

    @Override
    public String name() {
        return "elsewhere";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of(
                input(entered, words, OVEN, Input.Kind.TEXT),
                input(entered, words, DEGREES, Input.Kind.NUMBER),
                input(entered, words, HOURS, Input.Kind.NUMBER));
    }

    private static Input input(Entered entered, Words words, String name, Input.Kind kind) {
        String key = "elsewhere." + name;
        return Input.of(entered.field(name, words.text(key), words.text(key + ".hint")), kind);
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        return ElsewhereTold.read(entered, new ElsewhereTold.Fields(OVEN, DEGREES, HOURS))
                .map(told -> new Command.BakedElsewhere(header, tag, told.oven(), told.temperature(), told.time()));
    }
}
