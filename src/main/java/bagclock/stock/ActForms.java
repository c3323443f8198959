package bagclock.stock;

import bagclock.desk.Command;
import bagclock.ledger.Item;
import bagclock.platform.NotThere;
import java.util.List;
import java.util.Set;

/** Every form, in the order in which an item's page offers them. */
final class ActForms {
    static final ActForm RECEIVE = new ReceiveForm();

    private static final List<ActForm> OF_ITEMS = List.of(
            new OpenForm(),
            new MoveForm(),
            new ResealForm(),
            new SplitForm(),
            new JoinForm(),
            new CarrierForm(),
            new MountForm(),
            new ElsewhereForm(),
            new UseUpForm(),
            new NoteForm("wet", Command.Wet::new),
            new NoteForm("unknown", Command.EnterUnknownExposure::new));

    private ActForms() {}

    private static final Set<String> IN_A_BAG = Set.of("open", "move", "wet", "unknown");

    /** The acts that are possible where the item is; what the desk thinks of them is its own matter. */
    static List<ActForm> of(Item item) {
        return switch (item.where()) {
            case BAG -> only(true);
            case OVEN, GONE -> List.of();
            case FLOOR, CABINET, BOARD -> only(false);
        };
    }

    private static List<ActForm> only(boolean inBag) {
        return OF_ITEMS.stream()
                .filter(form ->
                        inBag ? IN_A_BAG.contains(form.name()) : !form.name().equals("open"))
                .toList();
    }

    static ActForm named(String name) {
        return OF_ITEMS.stream()
                .filter(form -> form.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotThere("no act " + name));
    }
}
