package bagclock.desk;

import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.heat.Answer;
import bagclock.core.heat.Assess;
import bagclock.core.heat.Question;
import bagclock.platform.Transaction;
import bagclock.register.KnownPlace;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the items whose answer the excursions of a cabinet changed: by the answer had it held its class. */
final class Excursions {
    private final Standards standards;
    private final Gathering gathering;

    Excursions(Standards standards, Gathering gathering) {
        this.standards = standards;
        this.gathering = gathering;
    }

    List<ChangedAnswer> of(Transaction tx, KnownPlace.DryCabinet cabinet, List<String> tags, Instant moment) {
        List<ChangedAnswer> changed = new ArrayList<>();
        for (String tag : tags) {
            PartHistory history = gathering.of(tx, tag, moment).history();
            Answer now = answer(tx, history);
            Answer held = answer(tx, held(history, cabinet));
            if (now.verdict() != held.verdict() || !now.floorLife().equals(held.floorLife())) {
                changed.add(new ChangedAnswer(tag, held, now));
            }
        }
        return changed;
    }

    private Answer answer(Transaction tx, PartHistory history) {
        return Assess.of(standards.at(tx, history.moment()), new Question(history, Optional.empty()));
    }

    private static PartHistory held(PartHistory history, KnownPlace.DryCabinet cabinet) {
        ClimateLog climate = history.climate();
        Map<Zone, ZoneLog> zones = new HashMap<>(climate.zones());
        zones.computeIfPresent(
                cabinet.zone(), (zone, log) -> log.noWetterThan(cabinet.limit().limit()));
        return new PartHistory(
                history.part(),
                history.timeline(),
                new ClimateLog(zones, climate.worstCases(), climate.worstCase()),
                history.rules(),
                history.moment());
    }
}
