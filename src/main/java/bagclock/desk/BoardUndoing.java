package bagclock.desk;

import bagclock.ledger.Act;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.Entry;
import bagclock.ledger.Ledger;
import bagclock.platform.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds what an entry of a board wrote on items, and how that is taken back. */
final class BoardUndoing {
    private final Ledger ledger = new Ledger();

    /** Commands that take back every item's entry that still stands, the newest first. */
    List<Command> undoing(Transaction tx, BoardEntry entry, Command.Header header) {
        List<Command> commands = new ArrayList<>();
        written(tx, entry)
                .forEach(line -> commands.add(
                        0,
                        new Command.TakeBack(
                                new Command.Header(
                                        header.who(), header.happenedAt(), header.key() + "/" + commands.size()),
                                line.tag(),
                                line.seq())));
        return commands;
    }

    /**
     * One act may stand in several lines: those after the first have its key with a number more. A split is taken back
     * in both ledgers by its first.
     */
    private Stream<Entry> written(Transaction tx, BoardEntry entry) {
        return counted(tx, number -> BoardEntry.itemKey(entry.serial(), entry.seq(), number), 1)
                .flatMap(first -> Stream.concat(
                        Stream.of(first),
                        counted(tx, number -> first.stamp().key() + "/" + number, 2)
                                .filter(line -> !(line.act() instanceof Act.SplitFrom))))
                .filter(line -> ledger.history(tx, line.tag()).stands(line.seq()));
    }

    private interface Key {
        String of(int number);
    }

    private Stream<Entry> counted(Transaction tx, Key key, int first) {
        return IntStream.iterate(first, number -> number + 1)
                .mapToObj(number -> ledger.byKey(tx, key.of(number)))
                .takeWhile(Optional::isPresent)
                .flatMap(Optional::stream);
    }
}
