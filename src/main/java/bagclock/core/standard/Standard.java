package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The tables of one edition, with a site's own values where it has any. Immutable. Every answer carries where it
 * stands.
 */
public final class Standard {
    private final Edition edition;
    private final TableFiles files;
    private final List<Cited<Optional<Life>>> floorLives;
    private final DeratingTable derating;
    private final List<Cited<Duration>> userBakes;
    private final List<Cited<Duration>> largeArrayBakes;
    private final List<Cited<Optional<Integer>>> bakeLimits;
    private final List<Cited<Duration>> supplierBakes;
    private final List<Cited<Optional<Integer>>> restFigures;
    private final Classification leadFree;
    private final Classification tinLead;
    private final SiteLimits limits;

    private Standard(Edition edition, TableFiles files) {
        this.edition = edition;
        this.files = files;
        this.floorLives = files.sheet(Table.FLOOR_LIFE).values(CellText::hours);
        this.derating =
                new DeratingTable(files.sheet(Table.DERATED_FLOOR_LIFE).values(CellText::days), floorLife(Level.L2));
        this.userBakes = files.sheet(Table.USER_BAKE).values(CellText::time);
        this.largeArrayBakes = files.sheet(Table.LARGE_ARRAY_BAKE).values(CellText::time);
        this.bakeLimits = files.sheet(Table.BAKE_LIMITS).values(CellText::wholeOrNone);
        this.supplierBakes = files.sheet(Table.SUPPLIER_BAKE).values(CellText::time);
        this.restFigures = files.sheet(Table.DRY_REST).values(CellText::wholeOrNone);
        this.leadFree = Classification.leadFree(
                files.sheet(Table.CLASSIFICATION_LEAD_FREE).values(CellText::celsius));
        this.tinLead = Classification.tinLead(
                files.sheet(Table.CLASSIFICATION_TIN_LEAD).values(CellText::celsius));
        this.limits = SiteLimits.RULES;
    }

    private Standard(Standard tables, SiteLimits limits) {
        this.edition = tables.edition;
        this.files = tables.files;
        this.floorLives = tables.floorLives;
        this.derating = tables.derating;
        this.userBakes = tables.userBakes;
        this.largeArrayBakes = tables.largeArrayBakes;
        this.bakeLimits = tables.bakeLimits;
        this.supplierBakes = tables.supplierBakes;
        this.restFigures = tables.restFigures;
        this.leadFree = tables.leadFree;
        this.tinLead = tables.tinLead;
        this.limits = limits;
    }

    /** Reads the files of an edition; refuses with {@link BrokenTable} what is not exactly as it must be. */
    public static Standard load(Edition edition) {
        return new Standard(edition, TableFiles.read(edition));
    }

    /**
     * The edition with a site's own values and the standard's limits; values given to an earlier call are forgotten.
     * Refuses with {@link IllegalArgumentException} a cell that is not there and a text that its table can't hold.
     */
    public Standard with(SiteValues site) {
        return new Standard(edition, TableFiles.read(edition).with(site));
    }

    /** The same tables with a site's own limits; limits given to an earlier call are forgotten. */
    public Standard within(SiteLimits limits) {
        return new Standard(this, limits);
    }

    /** The limits that count: the standard's, or the site's stricter ones. */
    public SiteLimits limits() {
        return limits;
    }

    /** The edition that every answer rests on. */
    public Edition edition() {
        return edition;
    }

    /** Every cell as its table holds it, site values in place; table by table in printed order. */
    public List<Cell> cells() {
        return files.cells();
    }

    /** How many cells are from memory and not yet confirmed by the site. */
    public long memoryCells() {
        return cells().stream()
                .filter(cell -> cell.citation().status() == Status.MEMORY)
                .count();
    }

    /** What the ids in citations stand for. */
    public List<Source> sources() {
        return files.sources();
    }

    /**
     * Floor life at or below 30 C / 60 %RH (table 5-1); unlimited for level 1. Refuses level 6 with
     * {@link IllegalArgumentException}: its time is printed on the label.
     */
    public Cited<Life> floorLife(Level level) {
        Cited<Optional<Life>> cell = floorLives.get(Table.FLOOR_LIFE.line(level.code()));
        return new Cited<>(
                cell.value()
                        .orElseThrow(() -> new IllegalArgumentException(
                                "level " + level.code() + " has no floor life of its own, its label has")),
                cell.citation());
    }

    /**
     * Floor life in this air (table 7-1): the cell of the next warmer column and the next wetter row, never
     * interpolated; below 20 C the cell at 20 C; empty above 35 C or 90 %RH. Level 2 is scaled from 2a (inference).
     * Refuses levels 1 and 6 with {@link IllegalArgumentException}.
     */
    public Optional<Cited<Life>> derated(
            DeratingClass thickness, Level level, Celsius temperature, RelativeHumidity humidity) {
        return derating.cell(thickness, level, temperature, humidity);
    }

    /** The shortest cell of a class and level (table 7-1). Refuses levels 1 and 6 as {@link #derated} does. */
    public Optional<Cited<Life>> shortestDerated(DeratingClass thickness, Level level) {
        return derating.shortest(thickness, level);
    }

    /**
     * Time at temperature of the user's bake (table 4-1). Refuses with {@link IllegalArgumentException} levels 1 and 6
     * and a column other than 125, 90 and 40 C.
     */
    public Cited<Duration> bake(BakeRow row, Level level, int columnC, BakeColumn column) {
        return userBakes.get(Table.USER_BAKE.line(row.key(), level.code(), Integer.toString(columnC), column.key()));
    }

    /** The user's bake at 125 C of an array with an edge above 17 mm or of stacked dies (table 4-1), both columns. */
    public Cited<Duration> largeArrayBake() {
        return largeArrayBakes.get(0);
    }

    /** Highest humidity in the oven (table 4-1), empty where none is asked for. Columns as in {@link #bake}. */
    public Optional<RelativeHumidity> bakeHumidity(int columnC) {
        return bakeLimit(columnC, "oven %RH").value().map(CellText::humidity);
    }

    /** How many degrees the oven may go above its set-point (table 4-1). Columns as in {@link #bake}. */
    public Cited<Integer> bakeToleranceC(int columnC) {
        return bakeLimit(columnC, "above set-point C").map(Optional::orElseThrow);
    }

    private Cited<Optional<Integer>> bakeLimit(int columnC, String limit) {
        return bakeLimits.get(Table.BAKE_LIMITS.line(Integer.toString(columnC), limit));
    }

    /** The bake at 125 C before dry-packing (table 4-2); empty above 4.5 mm and for levels without a row. */
    public Optional<Cited<Duration>> supplierBake(Millimetres thickness, Level level) {
        if (!level.hasFloorLife()) {
            return Optional.empty();
        }
        return BakeRow.of(thickness)
                .map(row -> supplierBakes.get(Table.SUPPLIER_BAKE.line(row.key(), level.code(), "125")));
    }

    /** How dry storage acts on this level (table 4-3). Refuses levels 1 and 6 with {@link IllegalArgumentException}. */
    public RestRule restRule(Level level) {
        String levels = Table.DRY_REST.axis(0).keys().stream()
                .filter(key -> List.of(key.split(" ", -1)).contains(level.code()))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("the dry storage table has no row for level " + level.code()));
        return new RestRule(
                Duration.ofHours(
                        restFigure(levels, "exposure at most h").value().orElseThrow()),
                restFigure(levels, "rest factor").value().orElseThrow(),
                CellText.humidity(restFigure(levels, "rest at most %RH").value().orElseThrow()),
                restFigure(levels, "pause at most %RH").value().map(CellText::humidity),
                restFigure(levels, "rest factor").citation());
    }

    private Cited<Optional<Integer>> restFigure(String levels, String figure) {
        return restFigures.get(Table.DRY_REST.line(levels, figure));
    }

    /**
     * Highest peak body temperature (J-STD-020): the lowest cell that is still possible for what is known; exactly
     * 2.5 mm takes the lower row.
     *
     * @param leadFree whether it is rated for lead-free soldering; empty takes the lower of both tables
     * @param volumeMm3 body volume in cubic millimetres, without leads and balls
     */
    public Cited<Celsius> classification(
            Optional<Boolean> leadFree, Optional<Millimetres> thickness, Optional<BigDecimal> volumeMm3) {
        boolean mayBeLeadFree = leadFree.orElse(true);
        boolean mayBeTinLead = !leadFree.orElse(false);
        return Classification.lowest(Stream.concat(
                mayBeLeadFree ? this.leadFree.possible(thickness, volumeMm3) : Stream.empty(),
                mayBeTinLead ? this.tinLead.possible(thickness, volumeMm3) : Stream.empty()));
    }
}
