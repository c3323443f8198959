package bagclock.core.estimate;

import bagclock.core.diffusion.Content;
import bagclock.core.diffusion.Diffusivity;
import bagclock.core.diffusion.Slab;
import bagclock.core.diffusion.Soak;
import bagclock.core.exposure.Air;
import java.time.Duration;

/** The content at the end of a floor life at 30 C / 60 %RH, by each diffusivity, and contents as shares of it. */
final class Limit {
    private static final int LOOKS = 48;
    private static final int HALVINGS = 16;

    private final Duration life;
    private final Content low;
    private final Content high;

    private Limit(Duration life, Content low, Content high) {
        this.life = life;
        this.low = low;
        this.high = high;
    }

    static Limit of(Slab slab, Duration life) {
        Soak soak = Soak.in(slab, life, Air.LIMIT_30_60.temperature(), Air.LIMIT_30_60.humidity());
        return new Limit(life, soak.content(Diffusivity.LOW), soak.content(Diffusivity.HIGH));
    }

    Band mean(Content inLow, Content inHigh) {
        return new Band(inLow.meanPercent() / low.meanPercent(), inHigh.meanPercent() / high.meanPercent());
    }

    Band sealedFace(Content inLow, Content inHigh) {
        return new Band(
                inLow.sealedFacePercent() / low.sealedFacePercent(),
                inHigh.sealedFacePercent() / high.sealedFacePercent());
    }

    /** Time at 30 C / 60 %RH until the sealed face reaches the limit, by the worse diffusivity; at most the life. */
    Duration leftAfter(Soak soak) {
        long lastMs = 0;
        for (int i = 0; i <= LOOKS; i++) {
            long ms = life.toMillis() * i / LOOKS;
            if (isReached(soak, ms)) {
                return i == 0 ? Duration.ZERO : between(soak, lastMs, ms);
            }
            lastMs = ms;
        }
        return life;
    }

    private Duration between(Soak soak, long insideMs, long reachedMs) {
        long inside = insideMs;
        long reached = reachedMs;
        for (int i = 0; i < HALVINGS; i++) {
            long middle = (inside + reached) / 2;
            if (isReached(soak, middle)) {
                reached = middle;
            } else {
                inside = middle;
            }
        }
        return Duration.ofMillis(inside);
    }

    private boolean isReached(Soak soak, long ms) {
        Soak later = soak.then(Duration.ofMillis(ms), Air.LIMIT_30_60.temperature(), Air.LIMIT_30_60.humidity());
        return later.content(Diffusivity.LOW).sealedFacePercent() >= low.sealedFacePercent()
                || later.content(Diffusivity.HIGH).sealedFacePercent() >= high.sealedFacePercent();
    }
}
