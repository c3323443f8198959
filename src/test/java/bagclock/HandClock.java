package bagclock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that stands still until somebody moves it on. */
public final class HandClock extends Clock {
    private final AtomicReference<Instant> now;

    /** Stands at a moment. */
    public HandClock(Instant now) {
        this.now = new AtomicReference<>(now);
    }

    /** Moves it on. */
    public void passes(Duration time) {
        now.updateAndGet(before -> before.plus(time));
    }

    @Override
    public Instant instant() {
        return now.get();
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("it tells moments only");
    }
}
