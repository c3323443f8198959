package bagclock.desk;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import bagclock.ledger.Act;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardNotes;
import bagclock.ledger.Entry;
import bagclock.ledger.Notes;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How far the heats and bakes of a period rest on cells from memory that nobody has compared yet.
 *
 * @param answers how many rest on such a cell
 * @param cells the cells
 */
public record Decided(long answers, Set<CellKey> cells) {
    /** How far back pages look. */
    public static final Duration LATELY = Duration.ofDays(14);

    /** Keeps its own copy. */
    public Decided {
        cells = Set.copyOf(cells);
    }

    /** What was decided on one item or board, and the cells that it rested on. */
    private record Done(String group, Stream<String> sources) {}

    /** A board's heat or bake and what it wrote on items are one. */
    static Decided of(List<Entry> onItems, List<BoardEntry> onBoards, Standard standard) {
        Map<String, CellKey> memory = standard.cells().stream()
                .filter(cell -> cell.citation().status() == Status.MEMORY)
                .collect(Collectors.toMap(cell -> AnswerText.source(cell.citation()), Cell::key));
        Set<String> answers = new HashSet<>();
        Set<CellKey> cells = new HashSet<>();
        Stream.concat(onItems.stream().map(Decided::done), onBoards.stream().map(Decided::done))
                .forEach(done -> done.sources()
                        .flatMap(source -> Optional.ofNullable(memory.get(source)).stream())
                        .forEach(cell -> {
                            answers.add(done.group());
                            cells.add(cell);
                        }));
        return new Decided(answers.size(), cells);
    }

    private static Done done(Entry entry) {
        return new Done(BoardEntry.groupOf(entry.stamp().key()), sources(entry));
    }

    /** The cells of bakes that the board's answer asked for, and those by which a bake of it counts. */
    private static Done done(BoardEntry entry) {
        return new Done(
                entry.group(),
                Stream.concat(
                        answered(entry.say(Notes.ANSWER)),
                        entry.say(BoardNotes.BAKE_CELLS).stream().flatMap(String::lines)));
    }

    /** What a heat's answer rests on, the bakes that it asked for too; and the cell that a bake was begun by. */
    private static Stream<String> sources(Entry entry) {
        if (!(entry.act() instanceof Act.Happened happened)) {
            return Stream.empty();
        }
        return Stream.concat(
                answered(Optional.ofNullable(happened.notes().get(Notes.ANSWER))),
                Optional.ofNullable(happened.notes().get(Notes.BAKE_CELL)).stream());
    }

    private static Stream<String> answered(Optional<String> kept) {
        return kept.map(KeptAnswer::parse).stream()
                .flatMap(answer -> Stream.concat(
                        answer.reasons().stream().flatMap(reason -> reason.source().stream()),
                        answer.bakeCells().stream()));
    }
}
