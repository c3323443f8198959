package bagclock.boards;

import static bagclock.boards.CaseShop.sent;
import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Tally;
import bagclock.desk.Command;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A part that is taken off to be kept goes on with all that it went through on the board. Passes and hours above 90 C
 * are counted over the part's whole life: J-STD-020 (three reflow passes), J-STD-033D, clause 4.2.7 (S7).
 */
class KeptPartSiteTest {
    private CaseShop shop;

    @BeforeEach
    void open() {
        shop = new CaseShop();
        shop.part("L3-12", "3", "1.2", 260);
        shop.board("KEPT", 125, "L3-12", "L3-12");
    }

    @AfterEach
    void close() {
        shop.close();
    }

    /** A wave, then nine hours at 125 C, both of the whole board. */
    private void waveAndBake() {
        sent(shop.technician()
                .submit("/boards/KEPT/heat?profile=none", "/boards/KEPT/heat", "at", shop.now(), "why", "Wave"));
        shop.clock.passes(Duration.ofHours(1));
        sent(shop.technician()
                .submit(
                        "/boards/KEPT/bake",
                        "/boards/KEPT/bake",
                        "oven",
                        CaseShop.OVEN,
                        "setPoint",
                        "125",
                        "bakeAt",
                        shop.now()));
        shop.clock.passes(Duration.ofHours(9));
        sent(shop.technician().submit("/boards/KEPT/bake", "/boards/KEPT/bake/end", "hours", "9", "at", shop.now()));
    }

    private String takenOff(String location) {
        Visitor technician = shop.technician();
        String job = shop.job(technician, "KEPT", location, OldPart.REUSE);
        shop.step(technician, job);
        shop.heat(technician, job, "?profile=none");
        return technician
                .page(job)
                .select("a[href^=/items/KEPT-]")
                .first()
                .attr("href")
                .substring("/items/".length());
    }

    private PartHistory history(String tag) {
        return shop.desk.evidence(tag, shop.clock.instant()).history();
    }

    private Tally tally(String tag) {
        PartHistory history = history(tag);
        return Tally.of(history.part(), history.timeline(), shop.clock.instant());
    }

    @Test
    void ofUnknownSourceItKeepsTheBoardsHeatsAndBakesAndItsRemoval() {
        waveAndBake();
        String tag = takenOff("U1");

        assertThat(tally(tag).passes()).isEqualTo(2);
        assertThat(tally(tag).bakedAbove90()).isEqualTo(Duration.ofHours(9));
        assertThat(history(tag).timeline().events().get(0)).isInstanceOf(Event.UnknownExposure.class);
        Document page = shop.technician().page("/items/" + tag);
        assertThat(page.select(".facts").text()).contains("It came off board KEPT, U1", "is not known and not counted");
    }

    /** What the board went through after the part left it is not the part's. */
    @Test
    void laterHeatsOfTheBoardAreNotItsOwn() {
        String tag = takenOff("U1");
        shop.clock.passes(Duration.ofHours(1));
        waveAndBake();

        assertThat(tally(tag).passes()).isEqualTo(1);
        assertThat(tally(tag).bakedAbove90()).isEqualTo(Duration.ZERO);
    }

    /** The bake on the board dried it: it goes on inside its life, without another bake. */
    @Test
    void theBakeOnTheBoardCountsForItToo() {
        waveAndBake();
        String tag = takenOff("U2");

        assertThat(shop.desk
                        .mayHeat(tag, Optional.empty(), shop.clock.instant())
                        .floorLife()
                        .usedHours())
                .isLessThan(new java.math.BigDecimal(1));
    }

    @Test
    void ofAKnownSourceItKeepsThemAsBefore() {
        shop.item("R-KEPT", "L3-12", 4);
        shop.tell(new Command.UseUp(shop.header(shop.clock.instant()), "R-KEPT", 1, "WO-1", List.of("KEPT")));
        shop.clock.passes(Duration.ofHours(1));
        waveAndBake();
        String tag = takenOff("U1");

        assertThat(tally(tag).passes()).isEqualTo(2);
        assertThat(tally(tag).bakedAbove90()).isEqualTo(Duration.ofHours(9));
        assertThat(shop.technician().page("/items/" + tag).select(".facts").text())
                .doesNotContain("is not known and not counted");
    }

    /** Another heat that was told too much is taken back before the part is taken off: it is not on the part either. */
    @Test
    void whatWasTakenBackOnTheBoardIsNotOnThePart() {
        sent(shop.technician()
                .submit("/boards/KEPT/heat?profile=none", "/boards/KEPT/heat", "at", shop.now(), "why", "Wave"));
        sent(shop.technician().submit("/boards/KEPT", "/boards/KEPT/take-back"));

        assertThat(tally(takenOff("U1")).passes()).isEqualTo(1);
    }
}
