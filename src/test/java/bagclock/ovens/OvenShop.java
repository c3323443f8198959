package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.core.heat.Verdict;
import bagclock.core.oven.Plan;
import bagclock.core.oven.Run;
import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** The demonstration's shop for tests of the planner's pages, with its desk behind them. */
final class OvenShop implements AutoCloseable {
    private final HandClock clock = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private final Site site;
    private final Database database;
    private final Desk desk;

    OvenShop() {
        String url = Engine.H2.freshUrl();
        site = DemoShop.open(url, clock);
        database = Database.open(url);
        desk = DemoShop.desk(database);
    }

    HandClock clock() {
        return clock;
    }

    Site site() {
        return site;
    }

    Desk desk() {
        return desk;
    }

    /** Somebody who has just signed in. */
    Visitor person(Role role) {
        return Visitor.ofDemo(site.port(), role);
    }

    /** This moment for a field. */
    String now() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC).toString();
    }

    Verdict verdict(String tag) {
        return desk.mayHeat(tag, Optional.empty(), clock.instant()).verdict();
    }

    /** Loads an item now, whatever the plan says. */
    HttpResponse<String> load(Visitor visitor, String oven, String setPoint, String tag) {
        List<String> fields = new ArrayList<>(List.of("oven", oven, "setPoint", setPoint, "at", now()));
        fields.addAll(List.of("humidity", "", "code", "", "tag", tag, "offPlan", "yes"));
        return visitor.submit("/ovens/load", "/ovens/load", fields.toArray(String[]::new));
    }

    /** Loads an item now; the address of its load. */
    String loaded(Visitor visitor, String oven, String setPoint, String tag) {
        HttpResponse<String> answer = load(visitor, oven, setPoint, tag);
        assertThat(answer.statusCode()).as(words(answer)).isEqualTo(303);
        return run(visitor, tag);
    }

    /** Address of the load that an item is in. */
    String run(Visitor visitor, String tag) {
        Element item = visitor.page("/ovens")
                .select("article li:contains(" + tag + ")")
                .first();
        assertThat(item).as("the card of " + tag).isNotNull();
        return item.parents().select("a[href*=/loads/]").first().attr("href");
    }

    /** Publishes the published plan again with other runs. */
    void publish(UnaryOperator<Run> change) {
        PlanStore store = new PlanStore(database, (tx, topic) -> {});
        StoredPlan before = store.published().orElseThrow();
        Plan plan = new Plan(before.plan().runs().stream().map(change).toList());
        StoredPlan draft = new StoredPlan(
                Integer.toString(plan.hashCode()),
                Optional.of(before.id()),
                clock.instant(),
                Optional.empty(),
                StoredPlan.Search.DONE,
                before.score(),
                before.bounds(),
                plan,
                before.pinned(),
                List.of());
        store.add(draft, "test");
        assertThat(store.publish(draft, "test", clock.instant())).isTrue();
    }

    /** A run, so much later. */
    static Run later(Run run, Duration by) {
        return new Run(
                run.oven(),
                run.temperature(),
                run.stays().stream()
                        .map(stay -> new Run.Stay(
                                stay.lot(), stay.inAt().plus(by), stay.outAt().plus(by)))
                        .toList());
    }

    /** Names and values of a form, one after the other, from {@code name=value;name=value}. */
    static String[] fields(String pairs) {
        return pairs.split("[=;]", -1);
    }

    /** What an answer says. */
    static String words(HttpResponse<String> answer) {
        return words(Jsoup.parse(answer.body()));
    }

    /** What a page says. */
    static String words(Document page) {
        return page.select("main").text();
    }

    /** What a refusal says. */
    static String refusal(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(422);
        return words(answer);
    }

    @Override
    public void close() {
        database.close();
        site.close();
    }
}
