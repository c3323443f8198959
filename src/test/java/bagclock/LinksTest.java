package bagclock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Whoever follows what a page offers comes to a page that he may see. */
class LinksTest {
    /** Pages that differ only in an item, a place or a number are of one kind. */
    private static final int PAGES_OF_A_KIND = Counts.of(2, 4);

    private static final int MOST_PAGES = 400;

    private static Site site;

    @BeforeAll
    static void start() {
        HandClock clock = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
        site = DemoShop.open(clock);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    /** All roles at once: a walk is mostly the site's work, and the machine has more than one core. */
    @Test
    void everyOfferLeadsToAPage() {
        assertThat(Stream.of(Role.signedIn()).parallel().flatMap(LinksTest::faults))
                .isEmpty();
    }

    private static Stream<String> faults(Role role) {
        Visitor visitor = Visitor.ofDemo(site.port(), role);
        Set<String> faults = new TreeSet<>();
        Set<String> seen = new HashSet<>(Set.of("/"));
        Map<String, Integer> ofKind = new HashMap<>();
        Map<String, String> offeredBy = new HashMap<>();
        Deque<String> ahead = new ArrayDeque<>(seen);
        for (int pages = 0; !ahead.isEmpty() && pages < MOST_PAGES; pages++) {
            String path = ahead.remove();
            HttpResponse<String> answer = visitor.get(path);
            String target = Visitor.target(answer);
            if (answer.statusCode() >= 400) {
                faults.add(role + ": " + answer.statusCode() + " " + path + " offered by " + offeredBy.get(path));
            } else if (target.startsWith("/") && seen.add(target)) {
                ahead.add(target);
            } else if (isPage(answer)) {
                for (Element link : Jsoup.parse(answer.body()).select("a[href^=/]:not([download])")) {
                    String next = link.attr("href").replaceFirst("#.*", "");
                    if (seen.add(next) && ofKind.merge(kind(next), 1, Integer::sum) <= PAGES_OF_A_KIND) {
                        ahead.add(next);
                        offeredBy.put(next, path);
                    }
                }
            }
        }
        assertThat(seen).as("what %s can see", role).hasSizeGreaterThan(20);
        return faults.stream();
    }

    private static boolean isPage(HttpResponse<String> answer) {
        return answer.headers()
                .firstValue("Content-Type")
                .filter(type -> type.startsWith("text/html"))
                .isPresent();
    }

    /** The address with what only names one of many left out. */
    private static String kind(String path) {
        return path.replaceAll("=[^&]*", "=").replaceAll("(?<=/)[A-Z0-9][A-Z0-9-]*(?=/|$|\\?)", "*");
    }
}
