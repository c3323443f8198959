package bagclock.core.exposure;

import bagclock.core.exposure.Span.Basis;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Cited;
import bagclock.core.standard.DeratingClass;
import bagclock.core.standard.Level;
import bagclock.core.standard.Life;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import java.util.Optional;
import java.util.Set;

/** How long a part at one rating lasts in which air: the maker's word, the derating table, the site's rule. */
final class LifeRules {
    private static final RelativeHumidity TEN_PERCENT = new RelativeHumidity(10);
    /** Dry storage of unknown temperature counts as this warm, the warmest column of table 7-1. */
    private static final Celsius UNKNOWN_TEMPERATURE = new Celsius(35);

    private final Standard standard;
    private final Part part;
    private final Level level;
    private final boolean useDrier;
    private final Set<DeratingClass> classes;
    private final Cited<Life> own;

    LifeRules(Standard standard, Part part, Level level, SiteRules rules) {
        this.standard = standard;
        this.part = part;
        this.level = level;
        this.useDrier = rules.useDrierThan60();
        this.classes = part.body().deratingClasses();
        this.own = ownLife();
    }

    private Cited<Life> ownLife() {
        Optional<Cited<Life>> stated = part.maker().floorLife().map(life -> byMaker(Life.of(life), "floor life"));
        Optional<Cited<Life>> tabled = part.maker()
                .derating()
                .flatMap(table -> makerCell(table, Air.LIMIT_30_60))
                .or(() -> part.maker().derating().map(table -> standard.floorLife(level)));
        if (stated.isPresent() && tabled.isPresent()) {
            return shorter(stated.get(), tabled.get());
        }
        return stated.or(() -> tabled).orElseGet(() -> standard.floorLife(level));
    }

    /** The part's floor life at or below 30 C / 60 %RH: the total of the answer. */
    Cited<Life> own() {
        return own;
    }

    /** The shorter of the part's and the level's life, from which the 72 h of the bake column count. */
    Life lifeForColumn() {
        return Life.shorterOf(own.value(), standard.floorLife(level).value());
    }

    /** Life in this air, never longer than the own life; empty outside the table. */
    Optional<Cited<Life>> strict(Air air) {
        if (part.maker().derating().isEmpty() && !air.isAbove3060()) {
            return Optional.of(own);
        }
        return cell(air).map(cell -> shorter(own, cell));
    }

    /** Whether cells longer than the own life can count at all. */
    boolean lengthens() {
        return part.maker().derating().isPresent()
                || (useDrier && part.maker().floorLife().isEmpty());
    }

    /** Whether longer cells still count after time in this air. */
    boolean staysLenient(Optional<Air> air, Basis basis) {
        boolean known = basis == Basis.READ
                || (basis == Basis.DECLARED && part.maker().derating().isPresent());
        return known
                && air.flatMap(this::cell)
                        .filter(cell -> cell.value().compareTo(own.value()) >= 0)
                        .isPresent();
    }

    /** Life in this air where longer cells count: only at or below 30 C / 60 %RH, never beyond a maker's life. */
    Optional<Cited<Life>> lenient(Air air) {
        if (air.isAbove3060()) {
            return strict(air);
        }
        Optional<Cited<Life>> cell = cell(air);
        Optional<Cited<Life>> stated = part.maker().floorLife().map(life -> byMaker(Life.of(life), "floor life"));
        return stated.isPresent() ? cell.map(c -> shorter(stated.get(), c)) : cell;
    }

    /** The class's shortest cell: the rate of an excused spell outside the table. */
    Cited<Life> shortest() {
        if (part.maker().derating().isPresent()) {
            return part.maker().derating().get().cells().stream()
                    .map(cell -> byMaker(Life.of(cell.life()), "derating"))
                    .reduce(own, LifeRules::shorter);
        }
        return classes.stream()
                .flatMap(c -> standard.shortestDerated(c, level).stream())
                .reduce(own, LifeRules::shorter);
    }

    /** The 10 % cell at a cabinet's temperature, empty above 35 C. */
    Optional<Cited<Life>> atTenPercent(Optional<Air> air) {
        Celsius temperature = air.map(Air::temperature).orElse(UNKNOWN_TEMPERATURE);
        Air ten = new Air(temperature, TEN_PERCENT);
        Optional<Cited<Life>> tabled = tableCell(ten);
        if (part.maker().derating().isEmpty() || tabled.isEmpty()) {
            return tabled;
        }
        return makerCell(part.maker().derating().get(), ten)
                .or(() -> tabled.map(cell -> level.runsOnOnceExposed() ? shorter(own, cell) : cell));
    }

    private Optional<Cited<Life>> cell(Air air) {
        return part.maker().derating().isPresent()
                ? makerCell(part.maker().derating().get(), air)
                : tableCell(air);
    }

    private Optional<Cited<Life>> tableCell(Air air) {
        Optional<Cited<Life>> shortest = Optional.empty();
        for (DeratingClass candidate : classes) {
            Optional<Cited<Life>> cell = standard.derated(candidate, level, air.temperature(), air.humidity());
            if (cell.isEmpty()) {
                return cell;
            }
            shortest = shortest.isEmpty() ? cell : Optional.of(shorter(shortest.get(), cell.get()));
        }
        return shortest;
    }

    private static Optional<Cited<Life>> makerCell(MakerDerating table, Air air) {
        return table.life(air.temperature(), air.humidity()).map(life -> byMaker(Life.of(life), "derating"));
    }

    private static Cited<Life> byMaker(Life life, String what) {
        return new Cited<>(life, new Citation("maker's rule for the part", what, "", "", Status.SEEN, ""));
    }

    private static Cited<Life> shorter(Cited<Life> one, Cited<Life> other) {
        return other.value().compareTo(one.value()) < 0 ? other : one;
    }
}
