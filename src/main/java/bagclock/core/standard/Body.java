package bagclock.core.standard;

import bagclock.core.quantity.Millimetres;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * The plastic body of a part; every fact may be unknown.
 *
 * @param thickness body thickness
 * @param length one edge seen from above
 * @param width the other edge seen from above
 * @param stackedDie whether dies are stacked inside
 * @param blockingPlanes whether planes inside keep moisture from leaving
 * @param leadFree whether the part is rated for lead-free soldering
 */
public record Body(
        BodyKind kind,
        Optional<Millimetres> thickness,
        Optional<Millimetres> length,
        Optional<Millimetres> width,
        Optional<Boolean> stackedDie,
        Optional<Boolean> blockingPlanes,
        Optional<Boolean> leadFree) {
    private static final Millimetres LARGE_EDGE = Millimetres.of("17");
    private static final Millimetres THICK_ARRAY = Millimetres.of("1.0");

    /** A body of which only the kind and the thickness are known. */
    public static Body of(BodyKind kind, String thicknessMm) {
        return new Body(
                kind,
                Optional.of(Millimetres.of(thicknessMm)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Length x width x thickness in cubic millimetres, empty if one is unknown. */
    public Optional<BigDecimal> volumeMm3() {
        return length.flatMap(l -> width.flatMap(
                w -> thickness.map(t -> l.value().multiply(w.value()).multiply(t.value()))));
    }

    /**
     * The classes of the derating table that the body may belong to; the shortest of their cells counts. Ball arrays
     * have their own limit at 1.0 mm; the table names lead-frame families whatever their thickness, so that all but
     * ball arrays and leadless bodies count in the thickest class too.
     */
    public Set<DeratingClass> deratingClasses() {
        if (thickness.isEmpty()) {
            return EnumSet.allOf(DeratingClass.class);
        }
        DeratingClass byThickness = DeratingClass.of(thickness.get());
        return switch (kind) {
            case ARRAY ->
                EnumSet.of(thickness.get().compareTo(THICK_ARRAY) >= 0 ? DeratingClass.THICK : DeratingClass.THIN);
            case LEADLESS -> EnumSet.of(byThickness);
            default -> EnumSet.of(byThickness, DeratingClass.THICK);
        };
    }

    /** Balls, lands, or a kind that is not known. */
    public boolean mayBeArray() {
        return kind.isArray() || kind == BodyKind.UNKNOWN;
    }

    /** Stacked as stated; not stated, an array counts as stacked (inference: stacking is a matter of array packages). */
    public boolean countsAsStacked() {
        return stackedDie.orElse(mayBeArray());
    }

    /** Some known edge is longer than 17 mm. */
    public boolean hasLargeEdge() {
        return isLarge(length) || isLarge(width);
    }

    /** Not known whether an edge is longer than 17 mm. */
    public boolean edgesUnknown() {
        return !hasLargeEdge() && (length.isEmpty() || width.isEmpty());
    }

    private static boolean isLarge(Optional<Millimetres> edge) {
        return edge.filter(e -> e.isAbove(LARGE_EDGE)).isPresent();
    }
}
