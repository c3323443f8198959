package bagclock.core.oven;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From what was planned to what will be: keeps what it can of a plan and takes in what is new at once. To make it better at
 * a price for each lot that is moved, see {@link ShopInMinutes#anchored}.
 */
public final class Replan {
    private final ShopInMinutes minutes;

    /** For a shop whose every free lot fits an oven. */
    public Replan(Shop shop) {
        this.minutes = ShopInMinutes.of(shop);
    }

    /** The shop as the engines see it. */
    public ShopInMinutes minutes() {
        return minutes;
    }

    /** A plan from nothing, at once. */
    public Found fresh() {
        return new Dispatch()
                .plan(minutes.problem())
                .orElseThrow(() -> new IllegalStateException("a lot that was taken in has no time"));
    }

    /** What is left of a plan, each lot that it lacks put where it costs least. */
    public Found inserted(Plan before) {
        Problem problem = minutes.problem();
        Sketch sketch = minutes.sketch(before);
        Insertion insertion = new Insertion(problem);
        for (int lot : minutes.missing(sketch)) {
            Optional<Sketch> more = insertion.insert(sketch, lot);
            if (more.isEmpty()) {
                return fresh();
            }
            sketch = more.get();
        }
        return new Found(sketch, new Decoder(problem).score(sketch), new Alone(problem).bounds());
    }

    /** A lot that has another oven, or starts more than an hour earlier or later. */
    public record Moved(String lot, Place before, Place after) {}

    /** An oven, and when a lot goes into it. */
    public record Place(String oven, Instant inAt) {}

    /** The lots that two plans have in common, and that the second moves. */
    public static List<Moved> moved(Plan before, Plan after) {
        List<Moved> moved = new ArrayList<>();
        for (Run run : before.runs()) {
            for (Run.Stay stay : run.stays()) {
                after.runOf(stay.lot()).ifPresent(other -> {
                    Instant inAt = after.stay(stay.lot()).orElseThrow().inAt();
                    Duration shift = Duration.between(stay.inAt(), inAt).abs();
                    boolean isSteady =
                            other.oven().equals(run.oven()) && shift.toMinutes() <= Problem.Anchor.STEADY_MIN;
                    if (!isSteady) {
                        Place from = new Place(run.oven(), stay.inAt());
                        moved.add(new Moved(stay.lot(), from, new Place(other.oven(), inAt)));
                    }
                });
            }
        }
        return moved;
    }
}
