package bagclock;

import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import bagclock.platform.Settings;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;

/** The demonstration's shop, opened on a free port. */
public final class DemoShop {
    private DemoShop() {}

    /** On a fresh database, in UTC. */
    public static Site open(Clock clock) {
        return open(Engine.H2.freshUrl(), clock);
    }

    /** On this database, in UTC. */
    public static Site open(String url, Clock clock) {
        return open(url, clock, "UTC");
    }

    /** On this database, in this zone. */
    public static Site open(String url, Clock clock, String zone) {
        return Site.demo(settings(url, zone), clock);
    }

    /** Its people, who sign in with one click, without its stock and its story: opened in a fraction of the time. */
    public static Site withoutStory(String url, Clock clock) {
        return Site.start(settings(url, "UTC"), clock);
    }

    private static Settings settings(String url, String zone) {
        return new Settings("localhost", 0, Path.of("target"), url, ZoneId.of(zone), true);
    }

    /** The desk of a shop, for a test that looks behind the pages. */
    public static Desk desk(Database database) {
        return new Desk(database, Standard.load(Edition.J_STD_033D), (tx, topic) -> {});
    }

    /** Lets the search for a better plan end after a second. */
    public static void searchBriefly(Site site) {
        searchFor("1", site);
    }

    /** Lets drafts be as they are made: many of them, one after the other, would keep the machine busy. */
    public static void searchNothing(Site site) {
        searchFor("0", site);
    }

    private static void searchFor(String seconds, Site site) {
        String rules = "/ovens/plan/rules";
        Visitor planner = Visitor.ofDemo(site.port(), Role.PLANNER);
        planner.submit(
                rules,
                rules,
                "fence",
                "60",
                "movePrice",
                "30",
                "coolDown",
                "15",
                "turnaround",
                "15",
                "change",
                "60",
                "search",
                seconds,
                "patience",
                "168",
                "weekends",
                "yes");
    }
}
