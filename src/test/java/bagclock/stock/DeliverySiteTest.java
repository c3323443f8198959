package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A delivery by its makers' labels: ISO/IEC 15434 format 06 with the identifiers of MH10.8.2. */
class DeliverySiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String PART = "SNR-1003";

    private static Site site;

    private final Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
    private Document page = clerk.page("/stock/delivery");

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static String label(String part, String lot, String more) {
        return "[)>\u001e06\u001dK4711\u001d1P" + part + "\u001dQ40\u001d1T" + lot + more + "\u001e\u0004";
    }

    /** Sends the form as it stands, with a scan and what is changed by hand. */
    private void scan(String code, String... changed) {
        Element form = page.selectFirst("form[action=/stock/delivery]");
        Map<String, String> fields = new HashMap<>();
        form.select("input:not([type=radio])").forEach(field -> fields.put(field.attr("name"), field.val()));
        form.select("select")
                .forEach(field -> fields.put(
                        field.attr("name"), field.select("option[selected]").val()));
        for (int i = 0; i < changed.length; i += 2) {
            fields.put(changed[i], changed[i + 1]);
        }
        fields.put("code", code);
        String[] all = fields.entrySet().stream()
                .flatMap(field -> java.util.stream.Stream.of(field.getKey(), field.getValue()))
                .toArray(String[]::new);
        page = Jsoup.parse(clerk.post("/stock/delivery", all).body());
    }

    private String value(String field) {
        Element found = page.getElementById(field);
        return found.tagName().equals("select")
                ? found.select("option[selected]").val()
                : found.val();
    }

    private int received() {
        return page.select("ol .code").size();
    }

    @Test
    void labelsOneAfterAnotherFillTheirBagsAndDrawTheirTags() {
        scan(label("HQ/90-A", "LOT1", ""));
        assertThat(value("quantity")).isEqualTo("40");
        assertThat(page.select("#quantity-hint").text()).contains("field Q");
        assertThat(value("type")).isEmpty();
        assertThat(page.select("[role=alert]").text()).contains("Compare what was read");
        assertThat(page.html()).doesNotContain("4711");
        scan("", "type", PART, "sealedAt", "2026-02-01T00:00");
        assertThat(page.select("#compared-error, .field.refused, fieldset.refused"))
                .isNotEmpty();
        assertThat(received()).isZero();
        scan("D-90", "compared", "yes");
        assertThat(page.select("[role=status]").text()).contains("D-90 is received, 1 in all");
        assertThat(page.getElementById("lot")).isNull();

        scan(label("HQ/90-A", "LOT1", ""));
        assertThat(value("type")).isEqualTo(PART);
        assertThat(value("sealedAt")).isEqualTo("2026-02-01T00:00");
        assertThat(page.select("input[name=compared]")).isEmpty();
        scan(label("HQ/90-A", "LOT1", ""));
        assertThat(received()).isEqualTo(2);
        assertThat(value("lot")).isEqualTo("LOT1");
        scan("");
        assertThat(received()).isEqualTo(3);
        assertThat(page.select("ol").text()).contains(PART + ", 40");
    }

    @Test
    void whatWasTypedForOneLotIsNotTakenForAnother() {
        scan(label("HQ/91-A", "LOT1", ""));
        scan("D-91", "type", PART, "sealedAt", "2026-02-01T00:00", "compared", "yes");
        scan(label("HQ/91-A", "LOT2", ""));
        assertThat(value("sealedAt")).isEmpty();
        assertThat(value("quantity")).isEqualTo("40");
        scan(label("HQ/91-A", "LOT3", ""));
        assertThat(page.select("[role=alert]").text()).contains("Finish this bag first");
        assertThat(value("lot")).isEqualTo("LOT2");
        assertThat(received()).isOne();
    }

    @Test
    void aStricterLevelIsToldAndRaisesThePartType() {
        scan(label("HQ/92-A", "LOT1", ""));
        scan("D-92", "type", PART, "sealedAt", "2026-02-01T00:00", "compared", "yes");
        scan(label("HQ/92-A", "LOT1", "\u001d13E5"));
        assertThat(page.text()).contains("The stricter one will count");
        scan("D-93", "compared", "yes");
        Document list = Visitor.ofDemo(site.port(), Role.ENGINEER).page("/stock/levels");
        assertThat(list.select("tbody").text()).contains("D-93", "raised to level 5");
    }

    @Test
    void fieldsOneAfterAnotherFillOneBagAndAnUnreadableScanChangesNothing() {
        scan("1PHQ/94-A");
        assertThat(received()).isZero();
        scan("Q25");
        assertThat(value("quantity")).isEqualTo("25");
        assertThat(value("labelPart")).isEqualTo("HQ/94-A");
        scan("x".repeat(60));
        assertThat(page.select("[role=alert]").text()).contains("could not be read");
        assertThat(value("quantity")).isEqualTo("25");
    }
}
