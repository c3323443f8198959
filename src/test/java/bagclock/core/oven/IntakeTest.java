package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How long a lot waits that nobody needs by a time. */
class IntakeTest {
    private static final Instant NOW = Instant.parse("2026-03-12T08:00:00Z");
    private static final Instant REOPENED = NOW.plus(Duration.ofDays(90));
    private static final Duration PATIENCE = Duration.ofHours(72);

    private static Oven oven(String code, int positions, List<Span> out) {
        ChangeOvers changes = ChangeOvers.of(Duration.ofMinutes(15), Duration.ofMinutes(60));
        return new Oven(
                code,
                new Celsius(40),
                new Celsius(150),
                positions,
                Optional.empty(),
                new Oven.Habits(Duration.ofMinutes(30), Duration.ofMinutes(15), changes, Optional.empty(), out));
    }

    private static Lot lot(String tag, Optional<Instant> neededBy) {
        Programme bake = new Programme(new Celsius(125), Duration.ofHours(10), Duration.ofHours(18), Optional.empty());
        return new Lot(tag, 1, List.of(bake), Set.of(), new Lot.Wish(NOW, neededBy, 1));
    }

    /** A small oven now, and one that takes both but is closed for three months. */
    private static Intake told(Optional<Instant> neededBy, List<Run> frozen) {
        List<Oven> ovens = List.of(oven("SMALL", 1, List.of()), oven("LARGE", 4, List.of(new Span(NOW, REOPENED))));
        List<Lot> lots = List.of(lot("A", neededBy), lot("B", Optional.empty()));
        return Intake.of(new Shop(NOW, ovens, lots, frozen, Shop.Customs.USUAL));
    }

    private static Plan best(Shop shop) {
        Replan replan = new Replan(shop);
        Found found =
                new Anneal().improve(replan.minutes().problem(), replan.fresh().sketch(), Budget.of(20_000, 1));
        Plan plan = replan.minutes().plan(found.sketch());
        assertThat(PlanCheck.faults(shop, plan)).isEmpty();
        return plan;
    }

    @Test
    void aLotWithoutATimeWaitsNotForMonthsToSaveARun() {
        Intake told = told(Optional.empty(), List.of());
        assertThat(best(told.shop()).runs())
                .hasSize(1)
                .allMatch(run -> !run.startAt().isBefore(REOPENED));

        Shop patient = told.patientFor(PATIENCE).shop();
        assertThat(best(patient).runs()).hasSize(2).allMatch(run -> run.endAt().isBefore(NOW.plus(PATIENCE)));
        assertThat(PlanSum.of(patient, best(patient)).late()).isEmpty();
    }

    @Test
    void itIsNeededSoLongAfterItCouldBeOutAtTheEarliest() {
        Instant alone = NOW.plus(Duration.ofMinutes(30 + 600 + 15));
        Intake told = told(Optional.of(NOW.plus(Duration.ofDays(9))), List.of());
        assertThat(told.firstOut()).containsEntry("A", alone).containsEntry("B", alone);

        assertThat(told.patientFor(PATIENCE).shop().lots())
                .extracting(lot -> lot.wish().neededBy().orElseThrow())
                .containsExactly(NOW.plus(Duration.ofDays(9)), alone.plus(PATIENCE));
    }

    @Test
    void whereOnlyAClosedOvenTakesItItWaitsForThatOven() {
        Shop shop = told(Optional.empty(), List.of()).shop();
        Intake closed =
                Intake.of(new Shop(NOW, shop.ovens().subList(1, 2), shop.lots(), List.of(), Shop.Customs.USUAL));
        Shop patient = closed.patientFor(PATIENCE).shop();

        assertThat(PlanSum.of(patient, best(patient)).late()).isEmpty();
        assertThat(patient.lots().get(0).wish().neededBy().orElseThrow()).isAfter(REOPENED);
    }

    @Test
    void whatIsInItsOvenOrPinnedHasNoTimeOfTheSite() {
        Run run = new Run("SMALL", new Celsius(125), List.of(new Run.Stay("B", NOW, NOW.plus(Duration.ofHours(11)))));
        Shop patient = told(Optional.empty(), List.of(run)).patientFor(PATIENCE).shop();

        assertThat(patient.lots())
                .extracting(lot -> lot.tag() + lot.wish().neededBy().isPresent())
                .containsExactly("Atrue", "Bfalse");
    }
}
