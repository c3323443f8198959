package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Parts used: how many, for which work order, on which boards. */
final class UseUpForm implements ActForm {
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");

    @Override
    public String name() {
        return "use-up";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of(
                Input.of(entered.field("quantity", words.text("stock.quantity.used")), Input.Kind.NUMBER),
                Input.of(entered.field("workOrder", words.text("stock.work-order")), Input.Kind.SCANNED),
                Input.of(
                        entered.field("boards", words.text("stock.boards"), words.text("stock.boards.hint")),
                        Input.Kind.SCANNED));
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        Optional<Integer> quantity = ActForm.quantity(entered);
        String order = entered.required("workOrder");
        List<String> boards = BETWEEN.splitAsStream(entered.text(FieldNames.BOARDS))
                .filter(one -> !one.isEmpty())
                .toList();
        return ActForm.unlessRefused(
                entered, () -> new Command.UseUp(header, tag, quantity.orElseThrow(), order, boards));
    }
}
