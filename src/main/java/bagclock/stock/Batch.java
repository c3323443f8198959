package bagclock.stock;

import bagclock.core.Refusal;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.Receipt;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Many items told the desk at once, each by itself: what one is refused stops no other.
 *
 * @param done what was written down
 * @param refused what was not, and why
 */
record Batch(List<Receipt> done, List<Refused> refused) {
    /** An item that stays as it was. */
    record Refused(String tag, List<Refusal> why) {}

    Batch {
        done = List.copyOf(done);
        refused = List.copyOf(refused);
    }

    /** Brings items to a place. */
    static Batch move(Desk desk, List<String> tags, String place, Command.Header header) {
        Instant now = header.happenedAt();
        List<Receipt> done = new ArrayList<>();
        List<Refused> refused = new ArrayList<>();
        for (String tag : tags) {
            Command.Header own = new Command.Header(header.who(), now, header.key() + "/" + tag);
            desk.handle(new Command.Move(own, tag, place), now)
                    .fold(
                            receipt -> {
                                done.add(receipt);
                                return tag;
                            },
                            why -> {
                                refused.add(new Refused(tag, why));
                                return tag;
                            });
        }
        return new Batch(done, refused);
    }
}
