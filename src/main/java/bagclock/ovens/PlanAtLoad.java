package bagclock.ovens;

import bagclock.core.oven.Plan;
import bagclock.core.oven.PlanMatch;
import bagclock.core.oven.Run;
import bagclock.platform.Texts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Compares what goes into an oven with the published plan, and keeps what differs. */
final class PlanAtLoad {
    private final OvenStore ovens;
    private final PlanStore plans;
    private final OvenWords words;
    private final Texts texts;

    PlanAtLoad(OvenStore ovens, PlanStore plans, OvenWords words, Texts texts) {
        this.ovens = ovens;
        this.plans = plans;
        this.words = words;
        this.texts = texts;
    }

    /**
     * A load beside the plan.
     *
     * @param off what is not as planned, in words
     * @param rows the same, to be kept
     * @param planned what is as planned, and what else belongs to its run, in words; empty if nothing is
     */
    record Compared(List<String> off, List<OffPlan> rows, String planned) {
        static final Compared NOTHING = new Compared(List.of(), List.of(), "");
    }

    /** Without a published plan nothing differs from it. */
    Compared compare(LoadForm load, Instant now) {
        return plans.published().map(plan -> compare(load, plan, now)).orElse(Compared.NOTHING);
    }

    private Compared compare(LoadForm load, StoredPlan stored, Instant now) {
        Plan plan = stored.plan();
        List<String> off = new ArrayList<>();
        List<OffPlan> rows = new ArrayList<>();
        List<String> asPlanned = new ArrayList<>();
        for (String tag : load.tags()) {
            PlanMatch match = PlanMatch.of(plan, tag, load.oven(), load.setPoint(), load.at());
            if (match == PlanMatch.AS_PLANNED) {
                asPlanned.add(tag);
            } else {
                OffPlan row = new OffPlan(load.oven(), load.at(), tag, stored.id(), match);
                rows.add(row);
                off.add(words(row, plan, now));
            }
        }
        return new Compared(off, rows, planned(load, plan, asPlanned));
    }

    private String planned(LoadForm load, Plan plan, List<String> asPlanned) {
        if (asPlanned.isEmpty()) {
            return "";
        }
        String said = words.text("plan.match.AS_PLANNED", String.join(", ", asPlanned));
        List<String> others = asPlanned.stream()
                .flatMap(tag -> plan.runOf(tag).stream())
                .distinct()
                .flatMap(run -> run.lots().stream())
                .filter(tag -> !load.tags().contains(tag))
                .toList();
        return others.isEmpty() ? said : said + " " + words.text("plan.match.others", String.join(", ", others));
    }

    private String words(OffPlan row, Plan plan, Instant now) {
        Optional<Run> run = plan.runOf(row.tag());
        return run.map(one -> words.text(
                        "plan.match." + row.how(),
                        row.tag(),
                        name(one.oven(), now),
                        texts.temperature(one.temperature()),
                        texts.at(one.startAt(), now)))
                .orElseGet(() -> words.text("plan.match.NOT_PLANNED", row.tag()));
    }

    private String name(String code, Instant now) {
        return ovens.ovens(now).stream()
                .filter(oven -> oven.code().equals(code))
                .map(oven -> oven.name())
                .findFirst()
                .orElse(code);
    }

    void keep(Compared compared, String who, Instant now) {
        compared.rows().forEach(row -> plans.add(row, who, now));
    }

    /** What of a load was not as planned when it went in, in words. */
    List<String> kept(Load load, Instant now) {
        return plans.offPlan(load.oven().code(), load.loadedAt()).stream()
                .map(row -> words(
                        row, plans.plan(row.plan()).map(StoredPlan::plan).orElseGet(() -> new Plan(List.of())), now))
                .toList();
    }
}
