package bagclock.core.heat;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.Timeline;
import bagclock.core.heat.Assumption.Fact;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names every fact that was missing and what was taken in its place. */
final class Assumptions {
    private final List<Assumption> found = new ArrayList<>();

    private Assumptions() {}

    static List<Assumption> of(Question question, CountingRating counting) {
        Assumptions assumptions = new Assumptions();
        Part part = question.history().part();
        assumptions.part(part, counting);
        assumptions.body(part.body());
        assumptions.history(question.history().timeline());
        if (question.history().climate().worstCase().isEmpty()) {
            assumptions.add(Fact.WORST_CASE, "outside the table where no reading holds");
        }
        question.heat().ifPresent(assumptions::heat);
        return assumptions.found;
    }

    private void add(Fact fact, String as) {
        Assumption assumption = new Assumption(fact, as);
        if (!found.contains(assumption)) {
            found.add(assumption);
        }
    }

    private void missing(Optional<?> value, Fact fact, String as) {
        if (value.isEmpty()) {
            add(fact, as);
        }
    }

    private void part(Part part, CountingRating counting) {
        missing(counting.rating().level(), Fact.LEVEL, "unknown");
        if (counting.rating().peak().isEmpty()) {
            double peak = counting.peak().value().degrees();
            add(Fact.CLASSIFICATION, String.valueOf(peak));
            missing(part.body().leadFree(), Fact.LEAD_FREE, "the lower of both tables");
        }
        if (part.carrier() instanceof CarrierLimit.Unknown) {
            add(Fact.CARRIER, String.valueOf(CarrierLimit.UNMARKED.degrees()));
        }
        missing(
                part.maxBake(),
                Fact.BAKE_LIMIT,
                BakeMenu.partLimit(part)
                        .map(limit -> String.valueOf(limit.degrees()))
                        .orElse("only the maker's bake"));
    }

    private void body(Body body) {
        missing(body.thickness(), Fact.THICKNESS, "the shortest life of every class it may belong to");
        if (body.kind() == BodyKind.UNKNOWN) {
            add(Fact.BODY, "any kind");
        }
        if (body.mayBeArray()) {
            missing(body.stackedDie(), Fact.STACKED_DIE, "stacked");
            missing(body.blockingPlanes(), Fact.BLOCKING_PLANES, "blocking");
            if (body.edgesUnknown()) {
                add(Fact.EDGES, "above 17 mm");
            }
        }
    }

    private void history(Timeline timeline) {
        if (timeline.events().isEmpty()) {
            add(Fact.HISTORY, "unknown exposure");
        }
        timeline.events().forEach(this::event);
    }

    private void event(Event event) {
        if (event instanceof Event.Opened opened) {
            missing(opened.card(), Fact.CARD, "none");
            missing(opened.sound(), Fact.BAG, "damaged");
            missing(opened.cardReadAt(), Fact.CARD_READ_AT, "at the opening");
        } else if (event instanceof Event.ToDryStorage storage) {
            missing(storage.maxHumidity(), Fact.STORAGE_HUMIDITY, "not dry storage");
        } else if (event instanceof Event.BakeEnded ended) {
            missing(ended.atTemperature(), Fact.TIME_AT_TEMPERATURE, "none");
        } else if (event instanceof Event.Heated heated) {
            missing(heated.peakBody(), Fact.PAST_PEAK, "above 200");
        } else if (event instanceof Event.BakeStarted bake && bake.temperature().degrees() < 125) {
            missing(bake.maxHumidity(), Fact.OVEN_HUMIDITY, "not shown");
        }
    }

    private void heat(HeatPlan heat) {
        missing(heat.peakBody(), Fact.HEAT_PEAK, "the rated peak");
        missing(heat.purpose(), Fact.HEAT_PURPOSE, "the part counts");
        boolean removal = heat.purpose().filter(HeatPlan.Purpose::isRemoval).isPresent();
        if (!removal) {
            missing(heat.local(), Fact.HEAT_LOCAL, "not local");
        }
    }
}
