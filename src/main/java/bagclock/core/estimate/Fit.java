package bagclock.core.estimate;

import bagclock.core.diffusion.Constant;
import bagclock.core.diffusion.Slab;
import bagclock.core.quantity.Millimetres;
import bagclock.core.standard.Level;
import java.math.BigDecimal;
import java.util.Optional;

/** The slab that stands for a level in the class of 3.1 mm and above. */
enum Fit {
    LEVEL_2A(Level.L2A, true, Constant.DEPTH_2A, Constant.SURFACE_2A),
    LEVEL_3(Level.L3, true, Constant.DEPTH_3, Constant.SURFACE_3),
    LEVEL_4(Level.L4, false, Constant.DEPTH_4, Constant.SURFACE_4),
    LEVEL_5(Level.L5, false, Constant.DEPTH_5, Constant.SURFACE_5),
    LEVEL_5A(Level.L5A, false, Constant.DEPTH_5A, Constant.SURFACE_5A);

    private final Level level;
    private final boolean sound;
    private final Constant depth;
    private final Constant surface;

    Fit(Level level, boolean sound, Constant depth, Constant surface) {
        this.level = level;
        this.sound = sound;
        this.depth = depth;
        this.surface = surface;
    }

    static Optional<Fit> of(Optional<Level> level) {
        for (Fit fit : values()) {
            if (level.filter(one -> one == fit.level).isPresent()) {
                return Optional.of(fit);
            }
        }
        return Optional.empty();
    }

    /** Whether its figures may be shown; else only warnings. */
    boolean isSound() {
        return sound;
    }

    Slab slab() {
        return new Slab(new Millimetres(BigDecimal.valueOf(depth.value())), surface.value());
    }
}
