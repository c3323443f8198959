package bagclock.core.standard;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a part's maker says of it; each rule wins over the standard's.
 *
 * @param floorLife the maker's own floor life
 * @param derating the maker's own derating table
 * @param shelfMonths months that a sealed bag is trusted; the standard's 12 if empty
 * @param bakes replace the bake table unless {@code tableToo}
 * @param tableToo whether the table's bakes are allowed beside the maker's
 * @param useWithin level 6: the label's time after a bake; others: life after a maker's bake
 * @param maxBakes how often the part may be baked
 * @param maxReflowPasses heats above 200 C that the part may see
 */
public record MakerRules(
        Optional<Duration> floorLife,
        Optional<MakerDerating> derating,
        OptionalInt shelfMonths,
        List<MakerBake> bakes,
        boolean tableToo,
        Optional<Duration> useWithin,
        OptionalInt maxBakes,
        int maxReflowPasses) {
    /** Heats that a part may see unless its maker says otherwise; J-STD-020. */
    public static final int USUAL_REFLOW_PASSES = 3;

    /** Months that a dry pack is trusted unless the label says otherwise; J-STD-033D. */
    public static final int USUAL_SHELF_MONTHS = 12;

    /** A maker who says nothing. */
    public static final MakerRules NONE = new MakerRules(
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            List.of(),
            false,
            Optional.empty(),
            OptionalInt.empty(),
            USUAL_REFLOW_PASSES);

    /** Keeps its own copy of the bakes. */
    public MakerRules {
        bakes = List.copyOf(bakes);
    }

    /** Whether the standard's bake table holds for this part. */
    public boolean tableCounts() {
        return bakes.isEmpty() || tableToo;
    }
}
