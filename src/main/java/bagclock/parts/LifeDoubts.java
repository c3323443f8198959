package bagclock.parts;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Level;
import bagclock.core.standard.Life;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import bagclock.parts.Doubt.Code;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The maker's floor life and derating table against the level's. */
final class LifeDoubts {
    private static final Celsius WARM = new Celsius(30);
    private static final RelativeHumidity DAMP = new RelativeHumidity(60);

    private LifeDoubts() {}

    static List<Doubt> about(Part part, Optional<Level> level, Standard standard) {
        List<Doubt> found = new ArrayList<>();
        Optional<Duration> life = part.maker().floorLife();
        Optional<MakerDerating> table = part.maker().derating();
        Optional<Level> clockless = level.filter(one -> !one.hasFloorLife());
        Optional<Level> clocked = level.filter(Level::hasFloorLife);
        boolean unused = clockless.isPresent() && (life.isPresent() || table.isPresent());
        if (unused) {
            Column column = life.isPresent() ? Column.FLOOR_LIFE : Column.DERATING;
            found.add(Doubt.of(column, Code.LIFE_NOT_USED, clockless.get().code()));
        }
        if (life.isPresent() && table.isPresent()) {
            found.add(Doubt.of(Column.FLOOR_LIFE, Code.LIFE_AND_TABLE));
        }
        clocked.ifPresent(one -> {
            Life standards = standard.floorLife(one).value();
            life.flatMap(own -> compared(own, one, standards)).ifPresent(found::add);
            table.ifPresent(own -> found.addAll(table(own, one, standards)));
        });
        table.ifPresent(own -> found.addAll(rising(own)));
        return found;
    }

    private static Optional<Doubt> compared(Duration own, Level level, Life standards) {
        int order = Life.of(own).compareTo(standards);
        if (order == 0) {
            return Optional.empty();
        }
        Code code = order > 0 ? Code.LIFE_LONGER : Code.LIFE_SHORTER;
        return Optional.of(Doubt.of(Column.FLOOR_LIFE, code, own, level.code(), duration(standards)));
    }

    private static List<Doubt> table(MakerDerating own, Level level, Life standards) {
        Optional<Duration> at3060 = own.life(WARM, DAMP);
        if (at3060.isEmpty()) {
            return List.of(Doubt.of(Column.DERATING, Code.TABLE_WITHOUT_30_60));
        }
        return Life.of(at3060.get()).compareTo(standards) > 0
                ? List.of(Doubt.of(
                        Column.DERATING, Code.TABLE_LIFE_LONGER, at3060.get(), level.code(), duration(standards)))
                : List.of();
    }

    /** Cells that are longer than one that is as cool and as dry or more so: the shorter counts, as in the core. */
    private static List<Doubt> rising(MakerDerating own) {
        return own.cells().stream()
                .filter(cell -> own.cells().stream()
                        .anyMatch(
                                milder -> isMilder(milder, cell) && cell.life().compareTo(milder.life()) > 0))
                .map(cell -> Doubt.of(Column.DERATING, Code.CELL_LONGER, cell.temperature(), cell.humidity()))
                .toList();
    }

    private static boolean isMilder(MakerDerating.Cell milder, MakerDerating.Cell cell) {
        return !milder.temperature().isAbove(cell.temperature())
                && !milder.humidity().isAbove(cell.humidity());
    }

    /** Lives of levels 2 to 5a are whole hours in the table. */
    private static Duration duration(Life life) {
        return Duration.ofMillis(life.numeratorMs() / life.denominator());
    }
}
