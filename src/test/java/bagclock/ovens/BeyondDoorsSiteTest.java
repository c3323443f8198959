package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** A plan that reaches further than the hours are known in which doors are opened says so where it is looked at. */
class BeyondDoorsSiteTest {
    private static final String RULES = "/ovens/plan/rules";
    private static final String BY_DAY =
            "fence=60;movePrice=30;coolDown=15;turnaround=15;change=60;search=0;patience=168;"
                    + "weekends=yes;opens=08:00;closes=18:00";

    private static final String TOLD = "The hours in which doors are opened are counted until";

    @Test
    void thePlanAndItsPrintSayUntilWhenTheHoursAreCounted() {
        try (OvenShop shop = new OvenShop()) {
            Visitor planner = shop.person(Role.PLANNER);
            DemoShop.searchNothing(shop.site());
            assertThat(planner.submit(RULES, RULES, OvenShop.fields(BY_DAY)).statusCode())
                    .isEqualTo(303);
            assertThat(planner.page("/ovens/plan").text()).doesNotContain(TOLD);

            shop.publish(run -> run.lots().contains("R-447") ? OvenShop.later(run, Duration.ofDays(1_100)) : run);

            assertThat(planner.page("/ovens/plan").text()).contains(TOLD);
            assertThat(planner.page("/ovens/plan/print").text()).contains(TOLD);
        }
    }
}
