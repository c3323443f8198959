package bagclock.parts;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What can't be right, whatever the maker's document says: two of the facts exclude each other. */
final class Impossible {
    private Impossible() {}

    static List<Fault> in(Part part) {
        List<Fault> faults = new ArrayList<>();
        ratings(part.ratings(), faults);
        part.maker().bakes().forEach(bake -> bake(bake, part, faults));
        part.maker().derating().ifPresent(table -> cells(table, faults));
        return faults;
    }

    private static void ratings(List<Rating> ratings, List<Fault> faults) {
        if (ratings.size() > 1
                && ratings.stream().anyMatch(rating -> rating.peak().isEmpty())) {
            faults.add(new Fault(Column.MORE_RATINGS, Refusal.of(Reason.RATING_WITHOUT_PEAK)));
        }
        Set<Celsius> peaks = new HashSet<>();
        ratings.stream()
                .flatMap(rating -> rating.peak().stream())
                .filter(peak -> !peaks.add(peak))
                .forEach(peak -> faults.add(new Fault(Column.MORE_RATINGS, Refusal.of(Reason.RATING_TWICE, peak))));
    }

    private static void bake(MakerBake bake, Part part, List<Fault> faults) {
        part.maxBake()
                .filter(limit -> bake.temperature().isAbove(limit))
                .ifPresent(limit -> faults.add(
                        new Fault(Column.BAKES, Refusal.of(Reason.BAKE_ABOVE_OWN_LIMIT, bake.temperature(), limit))));
        Optional<Celsius> peak = part.ratings().stream()
                .flatMap(rating -> rating.peak().stream())
                .max(Comparator.naturalOrder());
        peak.filter(highest -> bake.temperature().isAbove(highest))
                .ifPresent(highest -> faults.add(
                        new Fault(Column.BAKES, Refusal.of(Reason.BAKE_ABOVE_PEAK, bake.temperature(), highest))));
    }

    private static void cells(MakerDerating table, List<Fault> faults) {
        Set<List<Object>> seen = new HashSet<>();
        for (MakerDerating.Cell cell : table.cells()) {
            if (!seen.add(List.of(cell.temperature(), cell.humidity()))) {
                faults.add(
                        new Fault(Column.DERATING, Refusal.of(Reason.CELL_TWICE, cell.temperature(), cell.humidity())));
            }
        }
    }
}
