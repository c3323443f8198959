package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.oven.Fault.Law;
import bagclock.core.oven.Run.Stay;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each law by itself: a lawful plan, and what breaks just that one. */
class PlanCheckTest {
    private static final Instant NOW = Instant.parse("2026-03-12T06:00:00Z");
    private static final Celsius HOT = new Celsius(125);
    private static final Celsius MID = new Celsius(90);

    private static Instant at(double hours) {
        return NOW.plus(Duration.ofMinutes(Math.round(hours * 60)));
    }

    private static Duration hours(int hours) {
        return Duration.ofHours(hours);
    }

    /** Half an hour to heat up and to cool down, half an hour between runs, two between temperatures. */
    private static Oven oven(String code, int positions, Optional<RelativeHumidity> holds, Optional<Celsius> last) {
        ChangeOvers changes =
                new ChangeOvers(new ChangeOvers.Change(Duration.ofMinutes(30), 0), change(hours(2)), Map.of());
        List<Span> out = List.of(new Span(at(100), at(110)));
        Duration half = Duration.ofMinutes(30);
        return new Oven(
                code,
                new Celsius(40),
                new Celsius(130),
                positions,
                holds,
                new Oven.Habits(half, half, changes, last, out));
    }

    private static ChangeOvers.Change change(Duration time) {
        return new ChangeOvers.Change(time, 0);
    }

    private static Lot lot(String tag, int positions, double readyInH, Set<String> ovens) {
        List<Programme> programmes = List.of(
                new Programme(HOT, hours(8), hours(12), Optional.empty()),
                new Programme(MID, hours(20), hours(30), Optional.of(new RelativeHumidity(5))));
        return new Lot(tag, positions, programmes, ovens, new Lot.Wish(at(readyInH), Optional.empty(), 1));
    }

    private static final Run FROZEN = run("DRY", HOT, -2, 8, "RUNNING");

    /** Two ovens, of which one holds 5 % RH and is running; three lots; doors are opened in the first 20, then 16 h of a day. */
    private static Shop shop() {
        return new Shop(
                NOW,
                List.of(
                        oven("DRY", 3, Optional.of(new RelativeHumidity(5)), Optional.of(HOT)),
                        oven("WET", 2, Optional.empty(), Optional.empty())),
                List.of(
                        lot("A", 1, 0, Set.of()),
                        lot("B", 1, 1, Set.of()),
                        lot("C", 2, 0, Set.of("DRY")),
                        lot("RUNNING", 1, 0, Set.of())),
                List.of(FROZEN),
                new Shop.Customs(
                        List.of(new Span(at(0), at(20)), new Span(at(24), at(40)), new Span(at(48), at(64))),
                        Optional.empty(),
                        Aim.STAGES));
    }

    private static Run run(String oven, Celsius temperature, double from, double to, String... lots) {
        return new Run(
                oven,
                temperature,
                Stream.of(lots).map(lot -> new Stay(lot, at(from), at(to))).toList());
    }

    private static final Run TWO = run("WET", HOT, 1, 10, "A", "B");
    private static final Run LARGE = run("DRY", HOT, 25, 34, "C");

    private static Set<Law> broken(Run... runs) {
        Set<Law> laws = EnumSet.noneOf(Law.class);
        PlanCheck.faults(shop(), new Plan(List.of(runs))).forEach(fault -> laws.add(fault.law()));
        return laws;
    }

    @Test
    void aLawfulPlanHasNoFault() {
        assertThat(broken(FROZEN, TWO, LARGE)).isEmpty();
    }

    static Stream<Arguments> broken() {
        Run alone = run("WET", HOT, 1, 10, "A");
        return Stream.of(
                breaks(Law.EVERY_LOT, FROZEN, alone, LARGE),
                breaks(Law.ONCE, FROZEN, TWO, LARGE, run("WET", HOT, 25, 34, "A")),
                breaks(Law.KNOWN, FROZEN, TWO, LARGE, run("WET", HOT, 25, 34, "NOBODY")),
                breaks(Law.KNOWN, FROZEN, alone, LARGE, run("GONE", HOT, 25, 34, "B")),
                breaks(Law.FROZEN, run("DRY", HOT, 0.5, 9.5, "RUNNING"), TWO, LARGE),
                breaks(Law.NO_OVERLAP, FROZEN, TWO, run("DRY", HOT, 7, 16, "C")),
                breaks(Law.NO_OVERLAP, FROZEN, TWO, run("DRY", HOT, 8.4, 17.4, "C")),
                breaks(Law.NO_OVERLAP, FROZEN, alone, LARGE, run("DRY", MID, 35, 56, "B")),
                breaks(Law.POSITIONS, FROZEN, run("DRY", HOT, 25, 34, "A", "B", "C")),
                breaks(Law.PROGRAMME, FROZEN, alone, LARGE, run("WET", MID, 13, 34, "B")),
                breaks(Law.PROGRAMME, FROZEN, alone, LARGE, run("WET", new Celsius(110), 25, 34, "B")),
                breaks(Law.PROGRAMME, FROZEN, TWO, run("WET", HOT, 25, 34, "C")),
                breaks(Law.LEAST, FROZEN, run("WET", HOT, 1, 9.9, "A", "B"), LARGE),
                breaks(Law.MOST, FROZEN, run("WET", HOT, 1, 14.1, "A", "B"), LARGE),
                breaks(Law.READY, FROZEN, run("WET", HOT, 0.9, 10, "A", "B"), LARGE),
                breaks(Law.IN_SERVICE, FROZEN, TWO, run("DRY", HOT, 95, 104, "C")),
                breaks(Law.IN_SERVICE, FROZEN, TWO, run("DRY", HOT, 110.4, 119.4, "C")),
                breaks(Law.ATTENDED, FROZEN, TWO, run("DRY", HOT, 20.1, 29.1, "C")),
                breaks(Law.ATTENDED, FROZEN, TWO, run("DRY", HOT, 14.5, 23.5, "C")),
                breaks(Law.TOGETHER, FROZEN, LARGE, apart()));
    }

    /** A comes out before B. */
    private static Run apart() {
        return new Run("WET", HOT, List.of(new Stay("A", at(1), at(10)), new Stay("B", at(1), at(11))));
    }

    private static Arguments breaks(Law law, Run... runs) {
        return Arguments.of(law, List.of(runs));
    }

    @ParameterizedTest(name = "{0} {index}")
    @MethodSource("broken")
    void whatBreaksOneLawIsNamedByIt(Law law, List<Run> runs) {
        assertThat(broken(runs.toArray(Run[]::new))).containsExactly(law);
    }

    @Test
    void whatBeginsBeforeNowIsNamedAmongOthers() {
        assertThat(broken(FROZEN, run("WET", HOT, -1, 8, "A"), run("WET", HOT, 25, 34, "B"), LARGE))
                .contains(Law.NOT_BEFORE_NOW);
    }

    @Test
    void everyOtherLawIsTried() {
        EnumSet<Law> tried = EnumSet.of(Law.NOT_BEFORE_NOW);
        broken().forEach(one -> tried.add((Law) one.get()[0]));
        assertThat(tried).containsExactlyInAnyOrder(Law.values());
    }

    @Test
    void anOpenedDoorTakesFromWhatStaysIn() {
        Shop open = shop();
        Shop doors = new Shop(
                NOW,
                open.ovens(),
                open.lots(),
                open.frozen(),
                new Shop.Customs(open.customs().attended(), Optional.of(Duration.ofMinutes(30)), Aim.STAGES));
        Run tooShort = new Run("WET", HOT, List.of(new Stay("A", at(1), at(10)), new Stay("B", at(1), at(10.4))));
        Run enough = new Run("WET", HOT, List.of(new Stay("A", at(1), at(10)), new Stay("B", at(1), at(10.5))));

        assertThat(PlanCheck.faults(doors, new Plan(List.of(FROZEN, tooShort, LARGE))))
                .containsExactly(new Fault(Law.LEAST, List.of("B", "WET")));
        assertThat(PlanCheck.faults(doors, new Plan(List.of(FROZEN, enough, LARGE))))
                .isEmpty();
    }
}
