package bagclock.core.exposure;

import bagclock.core.standard.Cited;
import bagclock.core.standard.Level;
import bagclock.core.standard.Life;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import java.util.Optional;

/** How long a part at one of levels 2 to 5a lasts on the floor in which air, for running sums over many parts. */
public final class FloorRate {
    private final LifeRules lives;

    private FloorRate(LifeRules lives) {
        this.lives = lives;
    }

    /** Refuses levels without a floor life with {@link IllegalArgumentException}. */
    public static FloorRate of(Standard standard, Part part, Level level, SiteRules rules) {
        if (!level.hasFloorLife()) {
            throw new IllegalArgumentException("level " + level.code() + " has no floor life");
        }
        return new FloorRate(new LifeRules(standard, part, level, rules));
    }

    /** Whether each moment counts by its own air alone; else the whole exposure decides, and sums can't tell. */
    public boolean isSteady() {
        return !lives.lengthens();
    }

    /** Life in this air; empty outside the table. */
    public Optional<Life> in(Air air) {
        return lives.strict(air).map(Cited::value);
    }
}
