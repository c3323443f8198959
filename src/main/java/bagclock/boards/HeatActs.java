package bagclock.boards;

import bagclock.core.exposure.Tally;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardAsk;
import bagclock.desk.BoardReply;
import bagclock.desk.BoardSource;
import bagclock.desk.BoardView;
import bagclock.desk.Command;
import bagclock.desk.ElsewhereTold;
import bagclock.desk.Origin;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardNotes;
import bagclock.ledger.Item;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a heat or a bake of a board means for the items on it, as commands for the desk. */
final class HeatActs {
    private static final int LONGEST_TAG = 40;

    private final BoardView view;
    private final Command.Header header;
    private final String scrapped;
    private final List<Command> commands = new ArrayList<>();
    private final Map<String, Long> quantities = new HashMap<>();
    private final Map<String, String> told = new HashMap<>();

    /**
     * Acts of one sending.
     *
     * @param scrapped the words that stand where a scrapped part's work order would
     */
    HeatActs(BoardView view, Command.Header header, String scrapped) {
        this.view = view;
        this.header = header;
        this.scrapped = scrapped;
    }

    List<Command> commands() {
        return commands;
    }

    Map<String, String> told() {
        return told;
    }

    /** Each command's own key, so that the item's entry leads back to the board's. */
    private Command.Header next() {
        String key = BoardEntry.itemKey(view.serial(), view.newest() + 1, commands.size() + 1);
        return new Command.Header(header.who(), header.happenedAt(), key);
    }

    /** The heat was done; every body that passed 200 C, or may have, counts it. */
    HeatActs heat(BoardReply reply, BoardAsk ask, Optional<Celsius> measured, String job) {
        List<String> peaks = new ArrayList<>();
        for (Location location : reply.question().locations()) {
            boolean target = !ask.location().isEmpty() && location.name().equals(ask.location());
            Optional<Celsius> peak = target ? measured.or(location::peakBody) : location.peakBody();
            if (!target && !Tally.isPass(peak)) {
                continue;
            }
            peaks.add(location.name() + "\t"
                    + peak.map(c -> Double.toString(c.degrees())).orElse(""));
            Optional.ofNullable(reply.items().get(location.name()))
                    .filter(tag -> !target)
                    .ifPresent(tag -> commands.add(heated(tag, neighbour(ask), peak)));
            if (target) {
                told.put(
                        BoardNotes.PEAK,
                        peak.map(c -> Double.toString(c.degrees())).orElse(""));
                worked(reply, ask, peak, job);
            }
        }
        told.put(BoardNotes.PEAKS, String.join("\n", peaks));
        return this;
    }

    private static Purpose neighbour(BoardAsk ask) {
        return ask.purpose() == Purpose.WHOLE_BOARD ? Purpose.WHOLE_BOARD : Purpose.PLACEMENT;
    }

    private Command heated(String tag, Purpose purpose, Optional<Celsius> peak) {
        boolean local = purpose != Purpose.WHOLE_BOARD;
        HeatPlan plan =
                new HeatPlan(header.happenedAt(), Duration.ZERO, peak, Optional.of(purpose), Optional.of(local));
        return new Command.Heat(next(), tag, plan, peak);
    }

    private void worked(BoardReply reply, BoardAsk ask, Optional<Celsius> peak, String job) {
        Optional<String> tag = Optional.ofNullable(reply.items().get(ask.location()));
        switch (ask.purpose()) {
            case REMOVAL_SCRAP -> tag.ifPresent(old -> off(old, ask, peak, true));
            case REMOVAL_REUSE -> off(tag.orElseGet(() -> received(reply, ask, job)), ask, peak, false);
            case PLACEMENT -> tag.ifPresent(fresh -> on(fresh, ask, peak, job));
            case WHOLE_BOARD -> tag.ifPresent(one -> commands.add(heated(one, Purpose.WHOLE_BOARD, peak)));
        }
    }

    private void off(String tag, BoardAsk ask, Optional<Celsius> peak, boolean scrap) {
        told.put(BoardNotes.ITEM, tag);
        commands.add(heated(tag, ask.purpose(), peak));
        commands.add(new Command.Remove(next(), tag, Optional.empty()));
        if (scrap) {
            commands.add(new Command.UseUp(next(), tag, 1, scrapped, List.of()));
        }
    }

    /**
     * The part had no item: it gets one, with the history of the item that was used up for the board where one fits, and
     * with what it went through on the board; what was before is not known otherwise.
     */
    private String received(BoardReply reply, BoardAsk ask, String job) {
        String tag = tag(ask.location() + "-" + job);
        String partNumber =
                view.type().flatMap(type -> type.fact().partAt(ask.location())).orElse("");
        BoardSource source = reply.sources().get(ask.location());
        if (source != null) {
            commands.add(new Command.Recover(next(), tag, partNumber, source, view.serial(), ask.location()));
            return tag;
        }
        Origin origin = new Origin.Unknown(Optional.empty());
        commands.add(new Command.Receive(next(), tag, partNumber, 1, Optional.empty(), origin));
        commands.add(new Command.Mount(next(), tag, view.serial(), ask.location(), Optional.empty()));
        return tag;
    }

    private String tag(String end) {
        String tag = view.serial() + "-" + end;
        return tag.length() <= LONGEST_TAG ? tag : tag.substring(tag.length() - LONGEST_TAG);
    }

    /** Of a reel or tray one part is split off first. */
    private void on(String from, BoardAsk ask, Optional<Celsius> peak, String job) {
        String tag = from;
        if (isMore(from)) {
            tag = tag(ask.location() + "-" + job + "n");
            commands.add(new Command.Split(next(), from, 1, tag));
        }
        told.put(BoardNotes.ITEM, tag);
        commands.add(heated(tag, Purpose.PLACEMENT, peak));
        mount(tag, ask.location());
    }

    private boolean isMore(String tag) {
        return quantities.getOrDefault(tag, 1L) > 1;
    }

    /** How many parts the item has from which one is placed. */
    HeatActs taking(Item item) {
        quantities.put(item.tag(), item.quantity());
        return this;
    }

    /** The item sits on the board from now on, and bears what the board bears. */
    HeatActs mount(String tag, String location) {
        commands.add(new Command.Mount(next(), tag, view.serial(), location, Optional.empty()));
        Optional<Celsius> limit = view.type().flatMap(type -> type.fact().bakeLimit());
        commands.add(new Command.LimitCarrier(next(), tag, limit));
        return this;
    }

    /** The part that was taken off is balled anew. */
    HeatActs reball(String tag, Optional<Celsius> measured) {
        commands.add(heated(tag, Purpose.PLACEMENT, measured));
        return this;
    }

    /** The board goes into an oven with all that is on it. */
    HeatActs bake(BakeForm.Into into) {
        String oven = into.oven().code();
        view.items().stream()
                .filter(item -> item.where() != Item.Where.OVEN)
                .forEach(item ->
                        commands.add(new Command.StartBake(next(), item.tag(), oven, into.setPoint(), into.shown())));
        return this;
    }

    /** The board comes out of the oven. */
    HeatActs unbake(Duration atTemperature) {
        view.items().stream()
                .filter(item -> item.where() == Item.Where.OVEN)
                .forEach(item -> commands.add(new Command.EndBake(next(), item.tag(), Optional.of(atTemperature))));
        return this;
    }

    /** The board was baked in an oven that this shop does not know. */
    HeatActs bakedElsewhere(ElsewhereTold told) {
        view.items()
                .forEach(item -> commands.add(
                        new Command.BakedElsewhere(next(), item.tag(), told.oven(), told.temperature(), told.time())));
        return this;
    }

    /** The board was out of the house. */
    HeatActs cameBack() {
        view.items().forEach(item -> commands.add(new Command.EnterUnknownExposure(next(), item.tag())));
        return this;
    }
}
