package bagclock.desk;

import static bagclock.desk.TestShop.BENCH;
import static bagclock.desk.TestShop.LOGGED_DRY;
import static bagclock.desk.TestShop.OVEN;
import static bagclock.desk.TestShop.at;
import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Place.CabinetClass;
import bagclock.core.heat.Answer;
import bagclock.core.heat.FindingCode;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.ledger.Act;
import bagclock.ledger.Notes;
import bagclock.platform.OnBothDatabases;
import bagclock.readings.Readings;
import bagclock.register.Calibration;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Cabinets judged by what they held, and what else readings and loggers say of items; J-STD-033D, table 4-3. */
class CabinetReadingsTest extends OnBothDatabases {
    private static final KnownPlace.DryCabinet CABINET =
            new KnownPlace.DryCabinet(LOGGED_DRY, "Logged cabinet", true, CabinetClass.UP_TO_10);

    private TestShop shop;

    @BeforeEach
    void open() {
        shop = new TestShop(database);
    }

    /** An opened part that is in the cabinet from hour 1 on, read every half hour; wet between two hours. */
    private Answer after(double wetFrom, double wetTo) {
        shop.opened(0, "R-1", Level.L3);
        shop.tell(shop.move(1, "R-1", LOGGED_DRY));
        for (double hour = 0.5; hour <= 20; hour += 0.5) {
            shop.read(LOGGED_DRY, hour, 24, hour >= wetFrom && hour < wetTo ? 45 : 4, at(20));
        }
        return shop.desk.mayHeat("R-1", Optional.empty(), at(20));
    }

    private List<ChangedAnswer> changed() {
        return shop.desk.air().changedBy(CABINET, at(0), at(20), 100);
    }

    @Test
    void aShortExcursionIsTheRecoveryThatIsAllowed() {
        Answer answer = after(10, 11);

        assertThat(answer.floorLife().usedHours().doubleValue()).isLessThan(1.0);
        assertThat(changed()).isEmpty();
    }

    @Test
    void aLongerExcursionIsFloorTimeAndTheAlarmNamesTheItem() {
        shop.opened(0, "R-2", Level.L3);
        Answer answer = after(10, 12);

        assertThat(answer.floorLife().usedHours().doubleValue()).isBetween(1.9, 2.1);
        assertThat(changed()).singleElement().satisfies(item -> {
            assertThat(item.tag()).isEqualTo("R-1");
            assertThat(item.held().floorLife().usedHours().doubleValue()).isLessThan(1.0);
            assertThat(item.now().floorLife()).isEqualTo(answer.floorLife());
        });
    }

    @Test
    void aBagOpenedAboveTheSitesLimitIsRecordedSo() {
        shop.desk.keep(
                new KnownPlace.FloorZone(BENCH, "Bench", true, Optional.empty(), Optional.of(Air.of(27, 55))),
                TestShop.change(1));
        shop.read(BENCH, 0, 24, 61, at(0));
        shop.opened(0.2, "R-1", Level.L3);
        shop.read(BENCH, 1, 24, 50, at(1));
        shop.opened(1.2, "R-2", Level.L3);

        assertThat(noteAtOpening("R-1")).isEqualTo("24.0 C 61.0 %RH, limit 27.0 C 55.0 %RH");
        assertThat(noteAtOpening("R-2")).isEmpty();
        OpeningAir air = new OpeningAir(new Register(), new Readings());
        assertThat(database.<Integer>read(tx -> air.closed(tx, at(0.2)).size())).isOne();
        assertThat(database.<Integer>read(tx -> air.closed(tx, at(1.2)).size())).isZero();
    }

    private String noteAtOpening(String tag) {
        HistoryLine line = shop.desk.item(tag, at(5)).orElseThrow().lines().get(1);
        return ((Act.Happened) line.entry().act()).notes().getOrDefault(Notes.ABOVE_OPENING_LIMIT, "");
    }

    @Test
    void anOvenPastItsCalibrationIsNamedWhereItWasUsed() {
        shop.opened(0, "R-1", Level.L3);
        shop.opened(0, "R-2", Level.L3);
        shop.tell(new Command.StartBake(shop.header(2), "R-1", OVEN, new Celsius(125), Optional.empty()));
        shop.tell(new Command.EndBake(shop.header(12), "R-1", Optional.empty()));
        LocalDate today = at(13).atOffset(ZoneOffset.UTC).toLocalDate();

        assertThat(isNamed("R-1")).isFalse();
        calibrate(today);
        assertThat(isNamed("R-1")).isFalse();
        calibrate(today.minusDays(1));
        assertThat(isNamed("R-1")).isTrue();
        assertThat(isNamed("R-2")).isFalse();
    }

    private void calibrate(LocalDate due) {
        shop.desk.keep(new Calibration(Calibration.Kind.OVEN, OVEN, Optional.of(due)), TestShop.change(0));
    }

    private boolean isNamed(String tag) {
        return shop.desk.mayHeat(tag, Optional.empty(), at(13)).has(FindingCode.CALIBRATION_PAST_DUE);
    }
}
