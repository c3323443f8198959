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

/**
 * How far the answers that were acted on in a period rest on cells from memory that nobody has compared yet.
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

    static Decided of(List<Entry> heats, Standard standard) {
        Map<String, CellKey> memory = standard.cells().stream()
                .filter(cell -> cell.citation().status() == Status.MEMORY)
                .collect(Collectors.toMap(cell -> AnswerText.source(cell.citation()), Cell::key));
        long answers = 0;
        Set<CellKey> cells = new HashSet<>();
        for (Entry heat : heats) {
            Set<CellKey> its = answer(heat)
                    .map(answer -> answer.reasons().stream()
                            .flatMap(reason -> reason.source().stream())
                            .flatMap(source -> Optional.ofNullable(memory.get(source)).stream())
                            .collect(Collectors.toSet()))
                    .orElse(Set.of());
            answers += its.isEmpty() ? 0 : 1;
            cells.addAll(its);
        }
        return new Decided(answers, cells);
    }

    private static Optional<KeptAnswer> answer(Entry heat) {
        return heat.act() instanceof Act.Happened happened
                ? Optional.ofNullable(happened.notes().get(Notes.ANSWER)).map(KeptAnswer::parse)
                : Optional.empty();
    }
}
