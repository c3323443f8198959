package bagclock.core.exposure;

import java.util.List;
import java.util.Optional;

/** The clock of one part at one rating, moved on by events and by time. Mutable, for one thread. */
sealed interface RatingClock permits FloorClock, LevelOneClock, LevelSixClock {
    /** The same clock to go on with; without its trail, which only the answer needs. */
    RatingClock forecast();

    /** An event, in its whereabouts before and after; {@code first} if nothing was told before it. */
    void on(Event event, Whereabouts before, Whereabouts after, boolean first);

    /** Time spent; {@code zone} is where the part stands on the floor. */
    void pass(Span span, Optional<Zone> zone);

    /** The minutes of a heat out of bag or cabinet. */
    default void heat(Span minutes, Optional<Zone> zone) {}

    /** A stay in dry storage is broken off. */
    void breakRest();

    /** The air right after an event, where no time has passed yet. */
    default void look(Span now) {}

    /** Puts this clock to the worse of each value of both. */
    void join(RatingClock other);

    /** Whether some floor life is left and the history known. */
    boolean hasLifeLeft();

    /** Whether floor life, storage and history allow a heat that ends now; timers apart. */
    boolean isInside();

    ClockReading read(Whereabouts where, long momentMs);

    /** Moves on through several spans. */
    default void passAll(List<Span> spans, Optional<Zone> zone) {
        for (Span span : spans) {
            pass(span, zone);
        }
    }
}
