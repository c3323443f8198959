package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** Something that needs only a time: wetted, or an exposure that nobody knows. */
record NoteForm(String name, BiFunction<Command.Header, String, Command> command) implements ActForm {
    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of();
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        return ActForm.unlessRefused(entered, () -> command.apply(header, tag));
    }
}
