package bagclock.ovens;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Plan;
import bagclock.core.oven.Run;
import bagclock.core.oven.Score;
import bagclock.core.oven.Span;
import bagclock.core.quantity.Celsius;
import bagclock.platform.Database;
import bagclock.platform.Secret;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Plans, times out of service and the rules for plans. */
final class PlanStore {
    static final String TOPIC = "plan";

    private static final String COLUMNS = "id, based_on, made_at, published_at, search, late_min, oven_min, runs,"
            + " bound_late_min, bound_oven_min, bound_runs";

    private final Database database;
    private final BiConsumer<Transaction, String> tell;

    PlanStore(Database database, BiConsumer<Transaction, String> tell) {
        this.database = database;
        this.tell = tell;
    }

    /** An oven out of service. */
    record Outage(String id, String oven, Instant fromAt, Instant toAt) {
        Span span() {
            return new Span(fromAt, toAt);
        }
    }

    record Head(
            String id,
            @Nullable String basedOn,
            Instant madeAt,
            @Nullable Instant publishedAt,
            String search,
            long lateMin,
            long ovenMin,
            long runs,
            @Nullable Long boundLateMin,
            @Nullable Long boundOvenMin,
            @Nullable Long boundRuns) {}

    record StayRow(int run, String oven, double tempC, boolean pinned, String tag, Instant inAt, Instant outAt) {}

    PlanRules rules() {
        return database.read(tx ->
                tx.handle().createQuery("""
                        select opens_min, closes_min, weekends, fence_min, move_price_min, cool_down_min,
                            turnaround_min, change_min, search_s, door_min, patience_min
                        from oven_plan_rules order by recorded_at desc limit 1
                        """).mapTo(PlanRules.class).findFirst().orElse(PlanRules.USUAL));
    }

    void keep(PlanRules rules, String who, Instant now) {
        database.withTransaction(tx -> {
            Optional<Instant> last = tx.handle()
                    .createQuery("select recorded_at from oven_plan_rules order by recorded_at desc limit 1")
                    .mapTo(Instant.class)
                    .findFirst();
            tx.handle()
                    .createUpdate("""
                            insert into oven_plan_rules (recorded_at, who, opens_min, closes_min, weekends, fence_min,
                                move_price_min, cool_down_min, turnaround_min, change_min, search_s, door_min, patience_min)
                            values (:now, :who, :opensMin, :closesMin, :weekends, :fenceMin,
                                :movePriceMin, :coolDownMin, :turnaroundMin, :changeMin, :searchS, :doorMin, :patienceMin)
                            """)
                    .bindMethods(rules)
                    .bind("now", OvenStore.later(last, now))
                    .bind("who", who)
                    .execute();
            tell.accept(tx, TOPIC);
        });
    }

    /** Times out of service that are not over and not withdrawn, by time. */
    List<Outage> outages(Instant now) {
        return database.read(tx -> tx.handle()
                .createQuery("""
                        select id, oven, from_at, to_at from oven_outage
                        where ended_at is null and to_at > :now order by from_at, id
                        """)
                .bind("now", now)
                .mapTo(Outage.class)
                .list());
    }

    void endOutage(String id, String who, Instant now) {
        database.withTransaction(tx -> {
            tx.handle()
                    .createUpdate("update oven_outage set ended_at = :now, ended_by = :who"
                            + " where id = :id and ended_at is null")
                    .bind("id", id)
                    .bind("now", now)
                    .bind("who", who)
                    .execute();
            tell.accept(tx, TOPIC);
        });
    }

    /** The plan published last. */
    Optional<StoredPlan> published() {
        return database.read(tx -> tx.handle()
                .createQuery("select " + COLUMNS + " from oven_plan where published_number is not null"
                        + " order by published_number desc limit 1")
                .mapTo(Head.class)
                .findFirst()
                .map(head -> whole(tx, head)));
    }

    Optional<StoredPlan> plan(String id) {
        return database.read(tx -> tx.handle()
                .createQuery("select " + COLUMNS + " from oven_plan where id = :id")
                .bind("id", id)
                .mapTo(Head.class)
                .findFirst()
                .map(head -> whole(tx, head)));
    }

    private static StoredPlan whole(Transaction tx, Head head) {
        List<StayRow> stays = stays(tx, head.id());
        return new StoredPlan(
                head.id(),
                Optional.ofNullable(head.basedOn()),
                head.madeAt(),
                Optional.ofNullable(head.publishedAt()),
                StoredPlan.Search.valueOf(head.search()),
                new Score(head.lateMin(), head.ovenMin(), head.runs(), 0),
                new Bounds(optional(head.boundLateMin()), optional(head.boundOvenMin()), optional(head.boundRuns())),
                new Plan(runs(stays)),
                stays.stream().filter(StayRow::pinned).map(StayRow::tag).collect(Collectors.toCollection(TreeSet::new)),
                changes(tx, head.id()));
    }

    private static List<StayRow> stays(Transaction tx, String plan) {
        return tx.handle()
                .createQuery("select run, oven, temp_c, pinned, tag, in_at, out_at from oven_plan_stay"
                        + " where plan = :id order by run, tag")
                .bind("id", plan)
                .mapTo(StayRow.class)
                .list();
    }

    /** In the order of their numbers. */
    private static List<Run> runs(List<StayRow> stays) {
        Map<Integer, List<StayRow>> runs = new TreeMap<>();
        stays.forEach(
                row -> runs.computeIfAbsent(row.run(), run -> new ArrayList<>()).add(row));
        return runs.values().stream().map(PlanStore::run).toList();
    }

    private static OptionalLong optional(@Nullable Long bound) {
        return bound == null ? OptionalLong.empty() : OptionalLong.of(bound);
    }

    private static Run run(List<StayRow> rows) {
        return new Run(
                rows.get(0).oven(),
                new Celsius(rows.get(0).tempC()),
                rows.stream()
                        .map(row -> new Run.Stay(row.tag(), row.inAt(), row.outAt()))
                        .toList());
    }

    private static List<PlanChange> changes(Transaction tx, String id) {
        return tx.handle()
                .createQuery("select kind, name, oven, from_at, to_at, positions, temp_c, bake_min, weight"
                        + " from oven_plan_change where plan = :id order by number")
                .bind("id", id)
                .mapTo(PlanChange.class)
                .list();
    }

    /** Rush lots of published plans that are not over. */
    List<PlanChange> rushes(Instant now) {
        return database.read(tx -> tx.handle()
                .createQuery("""
                        select c.kind, c.name, c.oven, c.from_at, c.to_at, c.positions, c.temp_c, c.bake_min,
                            c.weight
                        from oven_plan_change c join oven_plan p on p.id = c.plan
                        where p.published_at is not null and c.kind = 'RUSH'
                            and exists (select 1 from oven_plan_stay s where s.plan = p.id and s.tag = c.name
                                and s.out_at > :now)
                        order by c.name
                        """)
                .bind("now", now)
                .mapTo(PlanChange.class)
                .list());
    }

    /** Keeps a new draft. */
    void add(StoredPlan draft, String who) {
        database.withTransaction(tx -> {
            bind(
                            tx.handle()
                                    .createUpdate("""
                                    insert into oven_plan (id, based_on, made_at, who, search, late_min, oven_min, runs,
                                        bound_late_min, bound_oven_min, bound_runs)
                                    values (:id, :basedOn, :madeAt, :who, :search, :lateMin, :ovenMin, :runs,
                                        :boundLateMin, :boundOvenMin, :boundRuns)
                                    """)
                                    .bind("basedOn", draft.basedOn().orElse(null))
                                    .bind("madeAt", draft.madeAt())
                                    .bind("who", who),
                            draft)
                    .execute();
            addStays(tx, draft);
            for (int i = 0; i < draft.changes().size(); i++) {
                tx.handle()
                        .createUpdate("""
                                insert into oven_plan_change (plan, number, kind, name, oven, from_at, to_at, positions,
                                    temp_c, bake_min, weight)
                                values (:plan, :number, :kind, :name, :oven, :fromAt, :toAt, :positions, :tempC, :bakeMin,
                                    :weight)
                                """)
                        .bind("plan", draft.id())
                        .bind("number", i)
                        .bindMethods(draft.changes().get(i))
                        .execute();
            }
        });
    }

    private static org.jdbi.v3.core.statement.Update bind(org.jdbi.v3.core.statement.Update update, StoredPlan draft) {
        return update.bind("id", draft.id())
                .bind("search", draft.search().name())
                .bind("lateMin", draft.score().late())
                .bind("ovenMin", draft.score().ovenMinutes())
                .bind("runs", draft.score().runs())
                .bind("boundLateMin", boxed(draft.bounds().late()))
                .bind("boundOvenMin", boxed(draft.bounds().ovenMinutes()))
                .bind("boundRuns", boxed(draft.bounds().runs()));
    }

    private static @Nullable Long boxed(OptionalLong bound) {
        return bound.isPresent() ? bound.getAsLong() : null;
    }

    private static void addStays(Transaction tx, StoredPlan draft) {
        PreparedBatch batch = tx.handle()
                .prepareBatch("insert into oven_plan_stay (plan, run, oven, temp_c, pinned, tag, in_at, out_at)"
                        + " values (:plan, :run, :oven, :tempC, :pinned, :tag, :inAt, :outAt)");
        List<Run> runs = draft.plan().runs();
        for (int run = 0; run < runs.size(); run++) {
            for (Run.Stay stay : runs.get(run).stays()) {
                batch.bind("plan", draft.id())
                        .bind("run", run)
                        .bind("oven", runs.get(run).oven())
                        .bind("tempC", runs.get(run).temperature().degrees())
                        .bind("pinned", draft.pinned().contains(stay.lot()))
                        .bind("tag", stay.lot())
                        .bind("inAt", stay.inAt())
                        .bind("outAt", stay.outAt())
                        .add();
            }
        }
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** Whether a plan is a draft, and no plan was published since it was made. */
    boolean isOpen(String id) {
        return database.read(tx -> tx.handle()
                        .createQuery("select count(*) from oven_plan p where p.id = :id and p.published_at is null"
                                + " and not exists (select 1 from oven_plan o where o.published_number >"
                                + " coalesce((select b.published_number from oven_plan b where b.id = p.based_on), 0))")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .one())
                > 0;
    }

    /** Replaces what a draft says; a published plan stays as it is. */
    void better(StoredPlan draft) {
        database.withTransaction(tx -> {
            int changed = bind(tx.handle().createUpdate("""
                                    update oven_plan set search = :search, late_min = :lateMin, oven_min = :ovenMin,
                                        runs = :runs, bound_late_min = :boundLateMin, bound_oven_min = :boundOvenMin,
                                        bound_runs = :boundRuns
                                    where id = :id and published_at is null
                                    """), draft).execute();
            if (changed > 0) {
                tx.handle()
                        .createUpdate("delete from oven_plan_stay where plan = :id")
                        .bind("id", draft.id())
                        .execute();
                addStays(tx, draft);
                tell.accept(tx, TOPIC);
            }
        });
    }

    /** Publishes a draft, unless another plan was published since it was made; false then. */
    boolean publish(StoredPlan draft, String who, Instant now) {
        return database.inTransaction(tx -> {
            Optional<String> last = tx.handle()
                    .createQuery("select id from oven_plan where published_number is not null"
                            + " order by published_number desc limit 1")
                    .mapTo(String.class)
                    .findFirst();
            int changed = !last.equals(draft.basedOn())
                    ? 0
                    : tx.handle()
                            .createUpdate("update oven_plan set published_at = :now, published_by = :who,"
                                    + " published_number = (select coalesce(max(o.published_number), 0) + 1"
                                    + " from oven_plan o) where id = :id and published_at is null")
                            .bind("id", draft.id())
                            .bind("now", now)
                            .bind("who", who)
                            .execute();
            if (changed > 0) {
                draft.changes().forEach(change -> apply(tx, change, who, now));
                CalendarStore.publish(tx, draft.id(), runs(stays(tx, draft.id())), now);
                tell.accept(tx, TOPIC);
            }
            return changed > 0;
        });
    }

    private static void apply(Transaction tx, PlanChange change, String who, Instant now) {
        if (change.kind() == PlanChange.Kind.CLOSE) {
            tx.handle()
                    .createUpdate("insert into oven_outage (id, oven, from_at, to_at, recorded_at, who)"
                            + " values (:id, :oven, :fromAt, :toAt, :now, :who)")
                    .bind("id", Secret.token())
                    .bind("oven", change.name())
                    .bind("fromAt", change.fromAt())
                    .bind("toAt", change.toAt())
                    .bind("now", now)
                    .bind("who", who)
                    .execute();
        } else if (change.kind() == PlanChange.Kind.NEED) {
            tx.handle()
                    .createUpdate("insert into item_need (tag, needed_by, recorded_at, who, weight)"
                            + " values (:tag, :neededBy, :now, :who, coalesce((select m.weight from item_need m"
                            + " where m.tag = :tag order by m.recorded_at desc limit 1), 1))")
                    .bind("tag", change.name())
                    .bind("neededBy", change.fromAt())
                    .bind("now", OvenStore.needAt(tx, change.name(), now))
                    .bind("who", who)
                    .execute();
        }
    }

    /** Keeps that a lot went in otherwise than planned; told again it stays as it was. */
    void add(OffPlan row, String who, Instant now) {
        if (offPlan(row.oven(), row.loadedAt()).stream()
                .anyMatch(kept -> kept.tag().equals(row.tag()))) {
            return;
        }
        database.withTransaction(tx -> tx.handle()
                .createUpdate("insert into oven_off_plan (oven, loaded_at, tag, plan, how, recorded_at, who)"
                        + " values (:oven, :loadedAt, :tag, :plan, :how, :now, :who)")
                .bindMethods(row)
                .bind("now", now)
                .bind("who", who)
                .execute());
    }

    List<OffPlan> offPlan(String oven, Instant loadedAt) {
        return database.read(tx -> tx.handle()
                .createQuery("select oven, loaded_at, tag, plan, how from oven_off_plan"
                        + " where oven = :oven and loaded_at = :loadedAt order by tag")
                .bind("oven", oven)
                .bind("loadedAt", loadedAt)
                .mapTo(OffPlan.class)
                .list());
    }
}
