package bagclock.parts;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import bagclock.parts.Doubt.Code;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The maker's bakes against the table, the limit of 96 h above 90 C (J-STD-033D, clause 4.2.7; S7) and each other. */
final class BakeDoubts {
    private static final Celsius COUNTED_ABOVE = new Celsius(90);

    private final Part part;
    private final List<BakeTimes.Row> rows;
    private final Duration mostAbove90;
    private final List<Doubt> found = new ArrayList<>();

    private BakeDoubts(Part part, List<BakeTimes.Row> rows, Duration mostAbove90) {
        this.part = part;
        this.mostAbove90 = mostAbove90;
        this.rows = rows;
    }

    static List<Doubt> about(Part part, Optional<Level> level, Standard standard) {
        List<BakeTimes.Row> rows = level.filter(Level::hasFloorLife)
                .map(one -> new BakeTimes(standard, part.body()).rows(one, BakeColumn.OVER_72H))
                .orElse(List.of());
        BakeDoubts doubts = new BakeDoubts(part, rows, standard.limits().mostAbove90());
        part.maker().bakes().forEach(doubts::bake);
        doubts.alone(level);
        return doubts.found;
    }

    private void bake(MakerBake bake) {
        Celsius temperature = bake.temperature();
        rows.stream()
                .filter(row -> !row.temperature().isAbove(temperature))
                .findFirst()
                .map(row -> row.time().value())
                .filter(tabled -> bake.time().compareTo(tabled) < 0)
                .ifPresent(tabled -> doubt(Code.BAKE_SHORTER, temperature, bake.time(), tabled));
        if (!temperature.isAbove(COUNTED_ABOVE) && bake.maxHumidity().isEmpty()) {
            doubt(Code.BAKE_WITHOUT_HUMIDITY, temperature);
        }
        Duration all = part.prior().bakedAbove90().plus(bake.time());
        if (temperature.isAbove(COUNTED_ABOVE) && all.compareTo(mostAbove90) > 0) {
            doubt(Code.BAKE_NEVER_ALLOWED, temperature, all, mostAbove90);
        }
        bake.carrierLimit()
                .filter(temperature::isAbove)
                .ifPresent(limit -> doubt(Code.CARRIER_BELOW_BAKE, limit, temperature));
        if (part.carrier() instanceof CarrierLimit.Of stated && temperature.isAbove(stated.limit())) {
            found.add(Doubt.of(Column.CARRIER, Code.CARRIER_BELOW_BAKE, stated.limit(), temperature));
        }
    }

    private void alone(Optional<Level> level) {
        MakerRules maker = part.maker();
        if (maker.bakes().isEmpty() && maker.tableToo()) {
            found.add(Doubt.of(Column.TABLE_TOO, Code.TABLE_TOO_ALONE));
        }
        boolean six = level.filter(one -> one == Level.L6).isPresent();
        if (maker.bakes().isEmpty() && maker.useWithin().isPresent() && !six) {
            found.add(Doubt.of(Column.USE_WITHIN, Code.USE_WITHIN_ALONE));
        }
    }

    private void doubt(Code code, Object... parts) {
        found.add(Doubt.of(Column.BAKES, code, parts));
    }
}
