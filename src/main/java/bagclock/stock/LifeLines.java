package bagclock.stock;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.TrailEntry;
import bagclock.core.heat.Answer;
import bagclock.core.standard.Life;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Draws the line of life of one item. */
final class LifeLines {
    private static final double USED_TOP = 70;
    private static final double USED_HEIGHT = 60;
    private static final int TICKS = 4;

    private final Words words;
    private final TimeAxis axis;
    private final Instant from;
    private final Instant now;

    private LifeLines(Words words, TimeAxis axis) {
        this.words = words;
        this.axis = axis;
        this.from = axis.from();
        this.now = axis.now();
    }

    static LifeLine of(Timeline timeline, Answer answer, Words words, Instant now) {
        return new LifeLines(words, TimeAxis.of(timeline, now)).draw(timeline, answer);
    }

    private LifeLine draw(Timeline timeline, Answer answer) {
        List<LifeLine.Stay> stays = new ArrayList<>();
        List<LifeLine.Heat> heats = new ArrayList<>();
        List<Event> events = timeline.events();
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            Instant end = i + 1 < events.size() ? events.get(i + 1).at() : now;
            if (event instanceof Event.Heated heated) {
                heats.add(new LifeLine.Heat(axis.x(event.at()), words.text("stock.life.heat", at(heated.at()))));
            }
            if (end.isAfter(event.at()) && end.isAfter(from)) {
                stays.add(stay(timeline.upTo(event.at()).whereabouts().place(), event.at(), end));
            }
        }
        String told = stays.stream().map(LifeLine.Stay::words).collect(Collectors.joining(" "));
        return new LifeLine(told, stays, heats, used(answer), ticks());
    }

    private LifeLine.Stay stay(Place place, Instant start, Instant end) {
        String kind = kind(place);
        double x = axis.x(start);
        String text = words.text("stock.life." + kind, at(start), at(end));
        return new LifeLine.Stay(kind, x, Math.max(1, axis.x(end) - x), text);
    }

    private String at(Instant moment) {
        return words.texts().at(moment, now);
    }

    private static String kind(Place place) {
        if (place instanceof Place.Bag bag) {
            return bag.dryPack() ? "sealed" : "floor";
        } else if (place instanceof Place.Cabinet) {
            return "cabinet";
        }
        return place instanceof Place.Oven ? "bake" : "floor";
    }

    /** Used share since the part was last dry, from 0 at the bottom to the whole life at the top. */
    private String used(Answer answer) {
        Optional<Life> total = answer.floorLife().total().map(life -> life.value());
        if (total.isEmpty() || answer.trail().isEmpty()) {
            return "";
        }
        double whole = Math.max(
                answer.floorLife().totalHours().orElseThrow().doubleValue(),
                answer.floorLife().usedHours().doubleValue());
        double sum = 0;
        StringBuilder points = new StringBuilder();
        for (TrailEntry entry : answer.trail()) {
            points.append(point(entry.from(), sum / whole));
            sum += entry.used().hoursOf(total.get()).doubleValue();
            points.append(point(entry.to(), sum / whole));
        }
        return points.toString().strip();
    }

    private String point(Instant moment, double share) {
        return String.format(Locale.ROOT, "%.1f,%.1f ", axis.x(moment), USED_TOP + USED_HEIGHT * (1 - share));
    }

    private List<LifeLine.Tick> ticks() {
        List<LifeLine.Tick> ticks = new ArrayList<>();
        long whole = Duration.between(from, now).toMillis();
        for (int i = 0; i < TICKS; i++) {
            Instant moment = from.plusMillis(whole * i / TICKS);
            ticks.add(new LifeLine.Tick(axis.x(moment), at(moment)));
        }
        return ticks;
    }
}
