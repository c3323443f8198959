package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Other items put into this one, wholly. */
final class JoinForm implements ActForm {
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");

    @Override
    public String name() {
        return "join";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of(Input.of(
                entered.field("others", words.text("stock.others"), words.text("stock.others.hint")),
                Input.Kind.SCANNED));
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        String others = entered.required("others");
        return ActForm.unlessRefused(
                entered,
                () -> new Command.Join(
                        header,
                        tag,
                        BETWEEN.splitAsStream(others)
                                .filter(one -> !one.isEmpty())
                                .toList()));
    }
}
