package bagclock.demo;

import static bagclock.demo.Carriers.COOL_TRAY;
import static bagclock.demo.Carriers.LOOSE;
import static bagclock.demo.Carriers.REEL;
import static bagclock.demo.Carriers.TRAY;
import static bagclock.demo.Carriers.TUBE;
import static bagclock.demo.Carriers.WARM_REEL;
import static bagclock.demo.Places.BENCH;
import static bagclock.demo.Places.BENCH_OVEN;
import static bagclock.demo.Places.COOL_OVEN;
import static bagclock.demo.Places.DOCK;
import static bagclock.demo.Places.DRY_10;
import static bagclock.demo.Places.DRY_5;
import static bagclock.demo.Places.LINE;
import static bagclock.demo.Places.SHED;
import static bagclock.demo.Places.STORES;
import static bagclock.demo.Places.TALL_OVEN;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.desk.Origin;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What happened to the shop's reels, trays and boards, in the order in which it was written down. */
final class StockStory {
    private final Instant now;
    private final List<ItemStory> items = new ArrayList<>();

    StockStory(Instant now) {
        this.now = now;
    }

    List<Telling> tellings() {
        closedBags();
        openReels();
        dryStorage();
        tooLongOrTooDamp();
        factsMissing();
        ovensNow();
        ovensBefore();
        shortAndMakersBakes();
        splitAndJoined();
        levelSixAndOne();
        corrections();
        new BoardStory(this).tell();
        return items.stream()
                .flatMap(item -> item.tellings().stream())
                .sorted(Comparator.comparing(Telling::recordedAt))
                .toList();
    }

    ItemStory item(String tag) {
        ItemStory story = new ItemStory(now, tag);
        items.add(story);
        return story;
    }

    private void closedBags() {
        item("R-401").at("P20D").comes("SNR-1001", 500, REEL, 60);
        item("R-402").at("P26D").comes("TGE-2003", 1000, REEL, 430);
        item("T-403").at("P12D").comes("RDR-3001", 24, TRAY, 35);
        item("R-404").at("P6D").comes("PWR-4003", 3000, REEL, 90);
        item("R-405")
                .at("P18D")
                .comes("MEM-5001", 800, REEL, 40)
                .at("P17D")
                .opened(LINE)
                .at("P16DT22H")
                .resealed(true);
        item("R-406")
                .at("P15D")
                .comes("RDR-3004", 200, TUBE, 80)
                .at("P13D")
                .opened(STORES)
                .at("P12DT20H")
                .resealed(false);
    }

    private void openReels() {
        item("R-407").at("P19D").comes("SNR-1001", 500, REEL, 50).at("P2DT3H").opened(LINE);
        item("R-408").at("P24D").comes("TGE-2002", 700, REEL, 30).at("P10D").opened(STORES);
        item("R-409").at("P22D").comes("SNR-1004", 1500, REEL, 70).at("P14D").opened(BENCH);
        item("T-410").at("P9D").comes("RDR-3003", 60, TRAY, 20).at("P1DT20H").opened(LINE);
        item("T-411").at("P9D").comes("MEM-5002", 40, TUBE, 200).at("P1DT22H").opened(BENCH);
        item("R-412").at("P4D").comes("TGE-2003", 1000, REEL, 25).at("PT3H").opened(SHED);
        item("T-413").at("P3D").comes("MEM-5003", 90, TRAY, 15).at("P1DT6H").opened(LINE);
    }

    private void dryStorage() {
        item("R-414")
                .at("P21D")
                .comes("MEM-5001", 800, REEL, 44)
                .at("P10D")
                .opened(BENCH)
                .at("P8DT18H")
                .to(DRY_10);
        item("T-415")
                .at("P11D")
                .comes("TGE-2004", 120, TRAY, 33)
                .at("P6D")
                .opened(LINE)
                .at("P5DT4H")
                .to(DRY_5);
        item("T-416")
                .at("P8D")
                .comes("TGE-2001", 36, COOL_TRAY, 28)
                .at("P1DT5H")
                .opened(LINE)
                .at("P1D")
                .to(DRY_5);
        item("T-417")
                .at("P7D")
                .comes("RAD-6001", 50, COOL_TRAY, 28)
                .at("P1DT7H")
                .opened(BENCH)
                .at("P1D")
                .to(DRY_5);
    }

    private void tooLongOrTooDamp() {
        item("T-418").at("P20D").comes("SNR-1003", 75, TRAY, 60).at("P9D").opened(LINE);
        item("T-419").at("P14D").comes("SNR-1002", 18, TRAY, 21).at("P4D").opened(BENCH);
        item("R-420").at("P11D").comes("RDR-3002", 400, WARM_REEL, 31).at("P3D").opened(LINE);
        item("R-421").at("P5D").comes("TGE-2003", 1000, REEL, 18).at("P1DT2H").opened(DOCK, ItemStory.WET, true);
        item("T-422").at("P2DT5H").comesLoose("SNR-1001", 35, TRAY, DOCK);
        item("T-423")
                .at("P20D")
                .comes("MEM-5001", 96, TRAY, 26)
                .at("P14DT12H")
                .opened(BENCH)
                .at("P10D")
                .to(DRY_10);
        item("T-424")
                .at("P6D")
                .comes("RDR-3003", 30, TRAY, 40)
                .at("P1DT1H")
                .opened(LINE)
                .at("PT9H")
                .wetted();
        item("R-425").at("P5D").comes("MEM-5001", 500, REEL, 12).at("PT20H").opened(DOCK, ItemStory.ALL_DRY, false);
    }

    private void factsMissing() {
        item("T-426").at("P16D").comes("RDR-3006", 12, TRAY, 45).at("P3DT2H").opened(BENCH);
        item("R-427").at("P23D").comes("RDR-3005", 300, REEL, 55).at("P9DT4H").opened(STORES);
        item("T-428").at("P18D").comes("PWR-4001", 20, TRAY, 20).at("P8DT12H").opened(LINE);
        item("T-429").at("P10D").comes("RAD-6002", 45, TRAY, 30).at("P3DT20H").opened(BENCH);
        item("X-430").at("P13D").comesLoose("OLD-9001", 7, LOOSE, STORES);
    }

    private void ovensNow() {
        item("T-431")
                .at("P21D")
                .comes("SNR-1003", 40, TRAY, 60)
                .at("P9DT6H")
                .opened(LINE)
                .at("PT9H")
                .into(TALL_OVEN, 125);
        item("T-432")
                .at("P12D")
                .comes("SNR-1002", 12, TRAY, 24)
                .at("P4DT8H")
                .opened(BENCH)
                .at("PT9H")
                .into(TALL_OVEN, 125);
        item("R-433")
                .at("P13D")
                .comes("RDR-3002", 250, WARM_REEL, 20)
                .at("P4D")
                .opened(LINE)
                .at("P1DT2H")
                .into(COOL_OVEN, 60);
    }

    private void ovensBefore() {
        item("T-434")
                .at("P22D")
                .comes("RDR-3001", 24, TRAY, 40)
                .at("P9D")
                .opened(BENCH)
                .at("P5DT18H")
                .into(TALL_OVEN, 125)
                .at("P3DT17H")
                .outAfter(48)
                .at("P3DT16H")
                .to(DRY_5);
        item("T-435")
                .at("P20D")
                .comes("SNR-1003", 60, TRAY, 66)
                .at("P13D")
                .opened(LINE)
                .at("P5DT18H")
                .into(TALL_OVEN, 125)
                .at("P3DT17H")
                .outAfter(48)
                .at("P3DT15H")
                .to(LINE);
    }

    private void shortAndMakersBakes() {
        item("T-436")
                .at("P19D")
                .comes("RDR-3003", 24, TRAY, 30)
                .at("P5D")
                .opened(BENCH)
                .at("P1DT12H")
                .into(BENCH_OVEN, 125)
                .at("P1DT8H")
                .outAfter(3)
                .at("P1DT7H")
                .to(BENCH);
        item("R-437")
                .at("P25D")
                .comes("RDR-3002", 120, WARM_REEL, 50)
                .at("P18D")
                .opened(LINE)
                .at("P15D")
                .into(COOL_OVEN, 60)
                .at("P13DT23H")
                .outAfter(24)
                .at("P13DT22H")
                .to(LINE);
    }

    private void splitAndJoined() {
        item("R-438")
                .at("P17D")
                .comes("SNR-1004", 2000, REEL, 62)
                .at("P5DT4H")
                .opened(STORES)
                .at("P5D")
                .splitOff(250, "R-439")
                .at("P2D")
                .used(120, "WO-3118", "HQB-0231", "HQB-0232");
        items.add(
                new ItemStory(now, "R-439").at("P4DT22H").to(BENCH).at("PT30H").used(20, "WO-3121", "HQB-0240"));
        item("T-440")
                .at("P15D")
                .comes("TGE-2004", 60, TRAY, 33)
                .at("P3D")
                .opened(LINE)
                .at("P1DT3H")
                .joinedBy("T-441");
        item("T-441").at("P15D").comes("TGE-2004", 25, TRAY, 33).at("P4D").opened(LINE);
        item("R-442")
                .at("P27D")
                .comes("PWR-4003", 50, REEL, 45)
                .at("P20D")
                .opened(LINE)
                .at("P19D")
                .used(50, "WO-3090", "HQB-0198");
    }

    private void levelSixAndOne() {
        item("T-443")
                .at("P6D")
                .comes("TGE-2005", 10, TRAY, 21)
                .at("P1DT4H")
                .opened(BENCH)
                .at("PT14H")
                .into(COOL_OVEN, 90)
                .at("PT4H")
                .outAfter(8)
                .at("PT3H50M")
                .to(LINE);
        item("T-444").at("P6D").comes("TGE-2005", 15, TRAY, 21).at("PT26H").opened(BENCH);
        item("R-445").at("P20D").comes("PWR-4002", 900, REEL, 100).at("P18D").opened(STORES);
        item("R-446")
                .at("P20D")
                .comes(
                        "SNR-1005",
                        400,
                        REEL,
                        new Origin.LeftDryPack(now.minus(Duration.ofDays(21)), STORES, "date on the maker's slip"));
        item("R-447").at("P3D").comes("PWR-4004", 300, REEL, 22).at("P2DT18H").opened(DOCK, ItemStory.WET, true);
    }

    private void corrections() {
        item("R-448")
                .at("P7D")
                .comes("TGE-2002", 350, REEL, 27)
                .at("P2D")
                .opened(LINE, ItemStory.WET, true)
                .at("P2D")
                .writtenDown("P1DT20H")
                .correctedOpening(2, LINE, ItemStory.ALL_DRY);
        item("T-449")
                .at("P8D")
                .comes("RDR-3003", 48, TRAY, 29)
                .at("P2DT2H")
                .writtenDown("P1DT4H")
                .opened(SHED);
        item("T-450")
                .at("P9D")
                .comes("MEM-5003", 60, TRAY, 25)
                .at("PT30H")
                .opened(BENCH)
                .at("PT29H")
                .heated(Purpose.PLACEMENT, 238)
                .at("PT28H")
                .takenBack(3);
    }
}
