package bagclock.demo;

import bagclock.core.Refusal;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.ItemQuery;
import bagclock.readings.Kept;
import bagclock.readings.ZoneReading;
import bagclock.register.Change;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Fills an empty site with the invented shop, so that four weeks of its history end at a given moment. */
public final class HarrowQuay {
    /** How far back the history reaches. */
    public static final Duration PAST = Duration.ofDays(28);

    private final Desk desk;
    private final Instant now;

    private HarrowQuay(Desk desk, Instant now) {
        this.desk = desk;
        this.now = now;
    }

    /**
     * Tells the desk the whole story; a site that has items already is left as it is.
     *
     * @param desk of a site in which nothing is known
     * @param now the story ends at its last full minute
     * @throws IllegalStateException when the desk refuses a part of it
     */
    public static void open(Desk desk, Instant now) {
        if (desk.items(ItemQuery.OPEN, now).total() > 0) {
            return;
        }
        HarrowQuay shop = new HarrowQuay(desk, now.truncatedTo(ChronoUnit.MINUTES));
        shop.register();
        shop.tell(new StockStory(shop.now).tellings());
        new BoardJobs(desk, shop.now).tell();
    }

    private void register() {
        Instant opened = now.minus(PAST);
        Change change = new Change(opened, opened, Team.ENGINEER, 0);
        desk.keep(Places.RULES, change);
        Places.ALL.forEach(place -> desk.keep(place, change));
        Carriers.ALL.forEach(carrier -> desk.keep(carrier, change));
        PartTypes.all().forEach(type -> desk.keep(type, change));
    }

    private void read(Instant fromExclusive, Instant to) {
        List<ZoneReading> readings = Weather.readings(now, fromExclusive, to);
        if (readings.isEmpty()) {
            return;
        }
        Kept kept = desk.add(readings, Team.ENGINEER, to);
        if (!kept.refused().isEmpty()) {
            throw new IllegalStateException("readings refused: " + kept.refused());
        }
    }

    /** In the order in which it was written down, with the readings that had come in by then. */
    private void tell(List<Telling> tellings) {
        Instant read = now.minus(PAST);
        for (Telling telling : tellings) {
            read(read, telling.recordedAt());
            read = telling.recordedAt();
            tell(telling);
        }
        read(read, now);
    }

    private void tell(Telling telling) {
        Command command = telling.command();
        List<Refusal> refusals =
                desk.handle(command, telling.recordedAt()).fold(receipt -> List.of(), refused -> refused);
        if (!refusals.isEmpty()) {
            throw new IllegalStateException(command + " refused: " + refusals);
        }
    }
}
