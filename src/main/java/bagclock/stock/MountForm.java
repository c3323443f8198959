package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Entered;
import java.util.List;
import java.util.Optional;

/** Soldered onto a board. */
final class MountForm implements ActForm {
    @Override
    public String name() {
        return "mount";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        return List.of(
                Input.of(entered.field("board", words.text("stock.board")), Input.Kind.SCANNED),
                Input.of(entered.field("location", words.text("stock.location")), Input.Kind.TEXT));
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        String board = entered.required("board");
        String location = entered.required("location");
        return ActForm.unlessRefused(entered, () -> new Command.Mount(header, tag, board, location, Optional.empty()));
    }
}
