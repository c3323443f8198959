package bagclock.demo;

import bagclock.core.exposure.HumidityCard;
import bagclock.core.heat.HeatPlan;
import bagclock.core.quantity.Celsius;
import bagclock.desk.Command;
import bagclock.desk.Origin;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What happened to one item, told in order: {@code at} sets the time, every other word is one command. */
final class ItemStory {
    static final HumidityCard ALL_DRY = new HumidityCard(Map.of(5.0, true, 10.0, true, 60.0, true));
    static final HumidityCard WET = new HumidityCard(Map.of(5.0, false, 10.0, false, 60.0, true));

    private static final Duration TO_WRITE_IT_DOWN = Duration.ofSeconds(20);

    private final Instant now;
    private final String tag;
    private final List<Telling> tellings = new ArrayList<>();
    private Instant happenedAt;
    private Instant recordedAt;

    ItemStory(Instant now, String tag) {
        this.now = now;
        this.tag = tag;
        this.happenedAt = now;
        this.recordedAt = now;
    }

    List<Telling> tellings() {
        return tellings;
    }

    /** How long before the end of the story the next things happen, such as {@code P2DT3H}. */
    ItemStory at(String ago) {
        happenedAt = ago(ago);
        recordedAt = happenedAt.plus(TO_WRITE_IT_DOWN);
        return this;
    }

    /** The next thing is written down this long before the end only. */
    ItemStory writtenDown(String ago) {
        recordedAt = ago(ago);
        return this;
    }

    private Instant ago(String ago) {
        return now.minus(Duration.parse(ago));
    }

    /** In a dry pack that its maker closed this many days before it came. */
    ItemStory comes(String partNumber, long quantity, String carrier, int sealedDays) {
        Instant sealedAt = happenedAt.minus(Duration.ofDays(sealedDays));
        return comes(partNumber, quantity, carrier, new Origin.DryPack(sealedAt, OptionalInt.empty()));
    }

    ItemStory comes(String partNumber, long quantity, String carrier, Origin origin) {
        return tell(new Command.Receive(header(Team.CLERK), tag, partNumber, quantity, Optional.of(carrier), origin));
    }

    ItemStory comesLoose(String partNumber, long quantity, String carrier, String place) {
        return comes(partNumber, quantity, carrier, new Origin.Unknown(Optional.of(place)));
    }

    /** Bag sound, every spot dry. */
    ItemStory opened(String place) {
        return opened(place, ALL_DRY, true);
    }

    ItemStory opened(String place, HumidityCard card, boolean sound) {
        return tell(open(place, card, sound));
    }

    private Command.Open open(String place, HumidityCard card, boolean sound) {
        return new Command.Open(
                header(Team.CLERK),
                tag,
                Optional.of(card),
                Optional.of(happenedAt),
                Optional.of(sound),
                place,
                Optional.empty());
    }

    /** The entry with this number said something else about an opening. */
    ItemStory correctedOpening(int seq, String place, HumidityCard card) {
        return tell(new Command.Correct(header(Team.ENGINEER), tag, seq, open(place, card, true)));
    }

    ItemStory takenBack(int seq) {
        return tell(new Command.TakeBack(header(Team.TECHNICIAN), tag, seq));
    }

    ItemStory to(String place) {
        return tell(new Command.Move(header(Team.CLERK), tag, place));
    }

    ItemStory resealed(boolean fresh) {
        return tell(new Command.Reseal(header(Team.CLERK), tag, fresh, fresh));
    }

    ItemStory splitOff(long quantity, String childTag) {
        return tell(new Command.Split(header(Team.CLERK), tag, quantity, childTag));
    }

    ItemStory joinedBy(String other) {
        return tell(new Command.Join(header(Team.CLERK), tag, List.of(other)));
    }

    ItemStory into(String oven, double celsius) {
        return tell(new Command.StartBake(header(Team.PLANNER), tag, oven, new Celsius(celsius), Optional.empty()));
    }

    ItemStory outAfter(int hours) {
        return tell(new Command.EndBake(header(Team.PLANNER), tag, Optional.of(Duration.ofHours(hours))));
    }

    ItemStory mountedOn(String board, String location, String place) {
        return tell(new Command.Mount(header(Team.TECHNICIAN), tag, board, location, Optional.of(place)));
    }

    ItemStory removed(String place) {
        return tell(new Command.Remove(header(Team.TECHNICIAN), tag, Optional.of(place)));
    }

    ItemStory boardBears(double celsius) {
        return tell(new Command.LimitCarrier(header(Team.ENGINEER), tag, Optional.of(new Celsius(celsius))));
    }

    ItemStory heated(HeatPlan.Purpose purpose, double peakC) {
        HeatPlan plan = new HeatPlan(
                happenedAt,
                Duration.ofMinutes(12),
                Optional.of(new Celsius(peakC)),
                Optional.of(purpose),
                Optional.empty());
        return tell(new Command.Heat(header(Team.TECHNICIAN), tag, plan, Optional.of(new Celsius(peakC))));
    }

    ItemStory wetted() {
        return tell(new Command.Wet(header(Team.TECHNICIAN), tag));
    }

    ItemStory carrierIs(String carrier) {
        return tell(new Command.ChangeCarrier(header(Team.CLERK), tag, carrier));
    }

    ItemStory used(long quantity, String workOrder, String... boards) {
        return tell(new Command.UseUp(header(Team.TECHNICIAN), tag, quantity, workOrder, List.of(boards)));
    }

    private Command.Header header(String who) {
        return new Command.Header(who, happenedAt, "demo " + tag + " " + (tellings.size() + 1));
    }

    private ItemStory tell(Command command) {
        tellings.add(new Telling(recordedAt.isAfter(now) ? now : recordedAt, command));
        recordedAt = recordedAt.plus(TO_WRITE_IT_DOWN);
        return this;
    }
}
