package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The form of one thing that a clerk tells the desk: its fields, and the command that they say. */
interface ActForm {
    /** Part of the address, and of the keys of its words. */
    String name();

    /** The fields as entered, beside the time, which every form has. */
    List<Input> inputs(Entered entered, Offer offer, Words words);

    /** The command; empty when something is wrong, which is noted by field. */
    Optional<Command> read(Entered entered, Command.Header header, String tag);

    /** What stands in the fields before anything was entered. */
    default Map<String, String> atFirst() {
        return Map.of();
    }

    /** Yes and no as large choices. */
    static List<Choice> yesOrNo(Words words) {
        return List.of(Choice.of("yes", words.text("stock.yes")), Choice.of("no", words.text("stock.no")));
    }

    /** A required quantity of parts. */
    static Optional<Integer> quantity(Entered entered) {
        return entered.count("quantity", 1, 1_000_000);
    }

    /** The command, unless a field was refused. */
    static Optional<Command> unlessRefused(Entered entered, java.util.function.Supplier<Command> command) {
        return entered.isRefused() ? Optional.empty() : Optional.of(command.get());
    }
}
