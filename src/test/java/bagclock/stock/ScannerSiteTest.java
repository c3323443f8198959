package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.ledger.Notes;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.scan.Decoder;
import bagclock.scan.KeyboardLayout;
import bagclock.scan.TestCode;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The scanner check: what is learnt, asked, refused, kept by the workstation's cookie and forgotten. */
class ScannerSiteTest {
    private static final String PATH = "/stock/scanner";

    private static final Texts TEXTS = new Texts(ZoneId.of("Europe/Berlin"), Messages.load());

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(new HandClock(Instant.parse("2026-03-12T14:20:00Z")));
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor clerk() {
        return Visitor.ofDemo(site.port(), Role.CLERK);
    }

    private static Document scanned(Visitor clerk, String arrived) {
        return scanned(clerk, arrived, "");
    }

    private static Document scanned(Visitor clerk, String arrived, String bars) {
        return clerk.page(PATH + "?code=" + URLEncoder.encode(arrived, StandardCharsets.UTF_8) + "&bars="
                + URLEncoder.encode(bars, StandardCharsets.UTF_8));
    }

    private static HttpResponse<String> keep(Visitor clerk, String arrived) {
        String token =
                clerk.page("/stock").select("main input[name=csrf]").first().val();
        return clerk.post(PATH + "/keep", "csrf", token, "arrived", Decoder.visible(arrived));
    }

    @Test
    void aFrenchWorkstationKeepsItsMapAndForgetsIt() {
        Visitor clerk = clerk();
        String arrived = KeyboardLayout.named("fr(basic)").type(TestCode.text());
        Document page = scanned(clerk, arrived);
        assertThat(page.select(".reasons").text()).contains("à for 0", "A for Q", "an accent for [");
        assertThat(page.select("form[action=/stock/scanner/keep]")).hasSize(1);
        assertThat(page.body().attr("data-map")).isEmpty();

        HttpResponse<String> kept = keep(clerk, arrived);
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(kept.headers().firstValue("Set-Cookie").orElseThrow())
                .contains("workstation=", "Max-Age=34560000", "HttpOnly", "SameSite=Lax");
        String map = clerk.page("/stock").body().attr("data-map");
        assertThat(map.charAt(map.length() / 2 + map.indexOf('à'))).isEqualTo('0');
        assertThat(clerk.page(PATH).select("#kept-title")).hasSize(1);
        assertThat(clerk().page("/stock").body().attr("data-map"))
                .as("another workstation")
                .isEmpty();

        assertThat(clerk.submit(PATH, PATH + "/forget").statusCode()).isEqualTo(303);
        assertThat(clerk.page("/stock").body().hasAttr("data-map")).isFalse();
    }

    @Test
    void aScannerWithoutDataMatrixTeachesBarByBar() {
        Visitor clerk = clerk();
        KeyboardLayout german = KeyboardLayout.named("de(basic)");
        String bars = "";
        Document page = clerk.page(PATH);
        for (String bar : TestCode.bars()) {
            assertThat(page.select("form[action=/stock/scanner/keep]")).isEmpty();
            page = scanned(clerk, german.type(bar), bars);
            bars = page.select("input[name=bars]").val();
            assertThat(bars.lines().reduce((first, last) -> last)).hasValue(german.type(bar));
        }
        assertThat(page.select(".reasons").text()).contains("y for z").doesNotContain("Control characters");
        String token = page.select("main input[name=csrf]").first().val();
        String arrived = page.select("input[name=arrived]").val();
        assertThat(clerk.post(PATH + "/keep", "csrf", token, "arrived", arrived).statusCode())
                .isEqualTo(303);
        assertThat(clerk.page(PATH).select("#kept-title")).hasSize(1);
        clerk.submit(PATH, PATH + "/forget");
    }

    @Test
    void whatIsStillToBeScannedIsNamedThoughALabelComesBetween() {
        Visitor clerk = clerk();
        List<String> bars = TestCode.bars();
        Document page = scanned(clerk, bars.get(3), bars.get(0));
        assertThat(page.select(".reasons").text()).endsWith("Still to be scanned: 2, 3, 5, 6");
        Document between =
                scanned(clerk, "R-407", page.select("input[name=bars]").val());
        assertThat(between.select("input[name=bars]").val()).isEqualTo(bars.get(0) + "\n" + bars.get(3));
        assertThat(between.select(".reasons").text()).doesNotContain("Still to be scanned");
        assertThat(page.select("a[href=/labels/test-bars]")).hasSize(1);
    }

    @Test
    void whatIsDoubtfulIsNamedBeforeItIsKept() {
        Document page = scanned(clerk(), TestCode.text().replace('-', '/'));
        assertThat(page.select(".reasons").text()).contains("will be asked: - /");
        assertThat(page.select("form[action=/stock/scanner/keep]")).hasSize(1);
    }

    @Test
    void anIncompleteOrForeignCodeIsNotKept() {
        Visitor clerk = clerk();
        String lossy = TestCode.text().replace("F[", "F");
        Document page = scanned(clerk, lossy);
        assertThat(page.select(".reasons").text()).contains("nothing can be kept: [ ");
        assertThat(page.select("form[action=/stock/scanner/keep]")).isEmpty();
        assertThat(keep(clerk, lossy).statusCode()).isEqualTo(422);
        assertThat(keep(clerk, "anything").statusCode()).isEqualTo(422);
        assertThat(keep(clerk, TestCode.text()).statusCode())
                .as("nothing to put right")
                .isEqualTo(422);
        assertThat(clerk.page("/stock").body().hasAttr("data-map")).isFalse();
        assertThat(scanned(clerk, TestCode.text()).select("#arrived-title ~ p").text())
                .contains("Nothing is odd about it.");
        assertThat(scanned(clerk, "testfAfB").select(".reasons").text()).contains("Capitals and small letters");
    }

    /** The label is kept put right, and as it came beside it; an order's number in neither. */
    @Test
    void theLedgerKeepsTheLabelAsItCameToo() {
        TestCode.Learnt german = TestCode.learn(
                        KeyboardLayout.named("de(basic)").type(TestCode.text()))
                .orElseThrow();
        String scan = "\u2328[)>\u241e06\u241dKPO-77\u241d1PSNR-1001\u241dQ50\u241d1TZY-1\u241e\u2404";
        Map<String, String> told =
                Map.of(LabelFields.SCAN, scan, LabelFields.MAP, german.map().text());
        Map<String, String> kept = LabelFields.read(Entered.of(told, TEXTS));
        assertThat(kept.get(Notes.SCAN))
                .isEqualTo("\u2328[)>\u241e06\u241d1PSNR-1001\u241dQ50\u241d1TZY-1\u241e\u2404");
        assertThat(kept.get(Notes.SCAN_AS_IT_CAME))
                .isEqualTo("ü=:\u241e06\u241d1PSNRß1001\u241dQ50\u241d1TYZß1\u241e\u2404");
        Map<String, String> plain = Map.of(
                LabelFields.SCAN,
                scan.substring(1),
                LabelFields.MAP,
                german.map().text());
        assertThat(LabelFields.read(Entered.of(plain, TEXTS))).doesNotContainKey(Notes.SCAN_AS_IT_CAME);
    }
}
