package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A maker's label read at the receipt, and what the house learns from it. */
class LabelScanSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String PART = "SNR-1003";

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor clerk() {
        return Visitor.ofDemo(site.port(), Role.CLERK);
    }

    private static String label(String part, String lot, String level) {
        return "[)>\u001e06\u001dK4711\u001d1P" + part + "\u001dQ40\u001d1T" + lot + "\u001d10D2545" + level
                + "\u001e\u0004";
    }

    private static String scanned(Visitor clerk, String label) {
        HttpResponse<String> answer = clerk.submit("/stock", "/stock", "code", label);
        assertThat(answer.statusCode()).isEqualTo(303);
        return Visitor.target(answer);
    }

    private static HttpResponse<String> record(Visitor clerk, String path, String tag, String... more) {
        Document form = clerk.page(path);
        String type = form.select("#type option[selected]").val();
        String[] fields = {
            "type",
            type.isEmpty() ? PART : type,
            "quantity",
            form.select("#quantity").val(),
            "tag",
            tag,
            "labelPart",
            form.select("#labelPart").val(),
            "lot",
            form.select("#lot").val(),
            "dateCode",
            form.select("#dateCode").val(),
            "labelLevel",
            form.select("#labelLevel option[selected]").val(),
            "labelPeak",
            form.select("#labelPeak").val(),
            "origin",
            "pack",
            "sealedAt",
            "2026-02-01T00:00",
            "at",
            "2026-02-03T09:00"
        };
        String[] all = java.util.stream.Stream.concat(java.util.Arrays.stream(fields), java.util.Arrays.stream(more))
                .toArray(String[]::new);
        return clerk.submit(path, "/stock/receive", all);
    }

    @Test
    void aLabelFillsTheFormAndItsNumberIsLearnt() {
        Visitor clerk = clerk();
        String path = scanned(clerk, label("HQ/77-A", "LOT0042", ""));
        assertThat(path).doesNotContain("4711");
        Document form = clerk.page(path);
        assertThat(form.select("#quantity").val()).isEqualTo("40");
        assertThat(form.select("#quantity-hint").text()).contains("field Q");
        assertThat(form.select("#lot").val()).isEqualTo("LOT0042");
        assertThat(form.select("#type option[selected]").val()).isEmpty();
        assertThat(form.text()).contains("This part number is not known here");

        assertThat(record(clerk, path, "L-1").statusCode()).isEqualTo(422);
        assertThat(record(clerk, path, "L-1", "compared", "yes").statusCode()).isEqualTo(303);

        Document again = clerk.page(scanned(clerk, label("HQ/77-A", "LOT0042", "")));
        assertThat(again.select("#type option[selected]").val()).isEqualTo(PART);
        assertThat(again.select("[role=alert]").text()).doesNotContain("Compare what was read");
        assertThat(again.select("input[name=compared]")).isEmpty();
        Document other = clerk.page(scanned(clerk, label("HQ/77-A", "LOT042", "")));
        assertThat(other.text()).contains("This lot was not received before");
    }

    @Test
    void aStricterLevelOnTheLabelCountsAndTheEngineerIsTold() {
        Visitor clerk = clerk();
        String path = scanned(clerk, label("HQ/78-B", "LOT7", "\u001d13E5"));
        assertThat(record(clerk, path, "L-2", "compared", "yes").statusCode()).isEqualTo(303);
        assertThat(clerk.page("/parts/type?number=" + PART).text()).contains("5");

        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
        Document list = engineer.page("/stock/levels");
        assertThat(list.select("tbody").text()).contains("L-2", PART, "raised to level 5");
        HttpResponse<String> settled = engineer.submit("/stock/levels", "/stock/levels");
        assertThat(settled.statusCode()).isEqualTo(303);
        assertThat(engineer.page("/stock/levels").select("tbody").text()).contains("Settled");
    }

    /** Level, peak, floor life and seal date of the third published form; the peak is not the part type's. */
    @Test
    void peakAndFloorLifeFillTheFormAndAPeakThatDiffersIsAsked() {
        Visitor clerk = clerk();
        String path = scanned(clerk, label("SNR-1003", "LOT8", "\u001d3Z3/250C/168HRS;//;022226"));
        Document form = clerk.page(path);
        assertThat(form.select("#labelPeak").val()).isEqualTo("250");
        assertThat(form.select("#labelLife").val()).isEqualTo("168HRS");
        assertThat(form.select("#labelPeak-hint").text()).contains("field 3Z");
        assertThat(form.select("#sealedAt").val()).isEqualTo("2026-02-22T00:00");
        assertThat(form.text()).contains("does not name this peak temperature");
        String same = scanned(clerk, label("SNR-1003", "LOT8", "\u001d3Z3/245C/168HRS;//;022226"));
        assertThat(clerk.page(same).text()).doesNotContain("does not name this peak temperature");
    }

    @Test
    void aLowerPeakOnTheLabelCountsAndIsListedBesideTheLevels() {
        Visitor clerk = clerk();
        String lower = scanned(clerk, label("SNR-1004", "LOT1", "\u001d3Z2/250C/1YEAR;//;022226"));
        assertThat(clerk.page(lower).text()).contains("The lower one will count, and the engineer is told");
        assertThat(record(clerk, lower, "L-4", "compared", "yes").statusCode()).isEqualTo(303);
        String higher = scanned(clerk, label("SNR-1005", "LOT1", "\u001d3Z1/270C/UNLIM;//;022226"));
        assertThat(record(clerk, higher, "L-5", "compared", "yes").statusCode()).isEqualTo(303);

        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
        Document list = engineer.page("/stock/levels");
        assertThat(list.select("tr:contains(L-4)").text())
                .contains(
                        "SNR-1004", "Peak 250 °C Peak 260 °C The part type was lowered to a peak of 250 °C.", "Settle");
        assertThat(list.select("tr:contains(L-5)").text())
                .contains("Peak 270 °C Peak 260 °C The part type's peak of 260 °C still counts.");
        assertThat(engineer.page("/parts/type?number=SNR-1004").text()).contains("250 °C");
        assertThat(engineer.page("/parts/type?number=SNR-1005").text()).doesNotContain("270 °C");
    }

    @Test
    void aPackageThatCameInBeforeIsAsked() {
        Visitor clerk = clerk();
        String label = label("SNR-1003", "LOT9", "\u001d3SBOX00077");
        assertThat(record(clerk, scanned(clerk, label), "L-3", "compared", "yes")
                        .statusCode())
                .isEqualTo(303);
        Document again = clerk.page(scanned(clerk, label));
        assertThat(again.text()).contains("received before, as L-3");
        assertThat(again.select("input[name=compared]")).isNotEmpty();
        Document other = clerk.page(scanned(clerk, label.replace("00077", "00078")));
        assertThat(other.text()).doesNotContain("received before, as");
    }

    @Test
    void codesOneAfterAnotherFillOneForm() {
        Visitor clerk = clerk();
        String path = scanned(clerk, "1PHQ/79-C");
        String next = "/stock/receive?scan=" + encoded("1PHQ/79-C") + "&code=" + encoded("Q25");
        assertThat(clerk.page(path).select("#labelPart").val()).isEqualTo("HQ/79-C");
        assertThat(clerk.page(next).select("#quantity").val()).isEqualTo("25");
        assertThat(clerk.page(next).select("#labelPart").val()).isEqualTo("HQ/79-C");
    }

    @Test
    void aScanThatIsNoLabelIsSaidAndChangesNothing() {
        HttpResponse<String> answer = clerk().submit("/stock", "/stock", "code", "x".repeat(60));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).select("[role=alert]").text()).contains("could not be read");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
