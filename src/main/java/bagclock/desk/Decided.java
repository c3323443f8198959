package bagclock.desk;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import bagclock.ledger.Act;
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

    static Decided of(List<Entry> heatsAndBakes, Standard standard) {
        Map<String, CellKey> memory = standard.cells().stream()
                .filter(cell -> cell.citation().status() == Status.MEMORY)
                .collect(Collectors.toMap(cell -> AnswerText.source(cell.citation()), Cell::key));
        long answers = 0;
        Set<CellKey> cells = new HashSet<>();
        for (Entry entry : heatsAndBakes) {
            Set<CellKey> its = sources(entry)
                    .flatMap(source -> Optional.ofNullable(memory.get(source)).stream())
                    .collect(Collectors.toSet());
            answers += its.isEmpty() ? 0 : 1;
            cells.addAll(its);
        }
        return new Decided(answers, cells);
    }

    /** What a heat's answer rests on, the bakes that it asked for too; and the cell that a bake was begun by. */
    private static Stream<String> sources(Entry entry) {
        if (!(entry.act() instanceof Act.Happened happened)) {
            return Stream.empty();
        }
        Stream<String> answered =
                Optional.ofNullable(happened.notes().get(Notes.ANSWER)).map(KeptAnswer::parse).stream()
                        .flatMap(answer -> Stream.concat(
                                answer.reasons().stream().flatMap(reason -> reason.source().stream()),
                                answer.bakeCells().stream()));
        return Stream.concat(answered, Optional.ofNullable(happened.notes().get(Notes.BAKE_CELL)).stream());
    }
}
