package bagclock.desk;

import bagclock.core.Reason;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Zone;
import bagclock.core.heat.Answer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.Release;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Citation;
import bagclock.ledger.Act;
import bagclock.ledger.Draft;
import bagclock.ledger.Item;
import bagclock.ledger.Ledger;
import bagclock.ledger.Notes;
import bagclock.platform.Transaction;
import bagclock.register.Calibration;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import bagclock.register.Register;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** Turns a command into drafts for the ledger. What the drafts would contradict is found afterwards. */
final class Planning {
    private final Map<Class<? extends Command>, BiFunction<Command, Lookup, Plan>> kinds = Map.ofEntries(
            on(Command.Receive.class, this::receive),
            on(Command.Open.class, this::open),
            on(Command.Move.class, this::move),
            on(Command.Reseal.class, this::reseal),
            on(Command.Split.class, this::split),
            on(Command.Join.class, this::join),
            on(Command.StartBake.class, this::startBake),
            on(Command.EndBake.class, this::endBake),
            on(Command.BakedElsewhere.class, this::bakedElsewhere),
            on(Command.Mount.class, this::mount),
            on(Command.Recover.class, this::recover),
            on(Command.Remove.class, this::remove),
            on(Command.Wet.class, (c, known) -> known.plan(c, new Event.Wetted(at(c)))),
            on(Command.ChangeCarrier.class, this::changeCarrier),
            on(Command.LimitCarrier.class, this::limitCarrier),
            on(Command.Heat.class, this::heat),
            on(Command.UseUp.class, this::useUp),
            on(Command.EnterUnknownExposure.class, (c, known) -> known.plan(c, new Event.UnknownExposure(at(c)))),
            on(Command.Release.class, this::release));

    private static final int LONGEST_WHY = 400;
    private static final String WHOSE_OVEN = "oven";

    private final Transaction tx;
    private final Ledger ledger;
    private final Register register;
    private final Answers answers;
    private final OpeningAir openings;

    /** What is acted on. */
    interface Answers {
        /** Notes the answer for a heat. */
        Answer note(String tag, HeatPlan plan, Lookup known);

        /** The cell that says how long a bake must last; empty where the part has no bake so cool. */
        Optional<Citation> bakeCell(String tag, Celsius setPoint, Instant at);
    }

    Planning(Transaction tx, Ledger ledger, Register register, Answers answers, OpeningAir openings) {
        this.tx = tx;
        this.ledger = ledger;
        this.register = register;
        this.answers = answers;
        this.openings = openings;
    }

    private static <C extends Command> Map.Entry<Class<? extends Command>, BiFunction<Command, Lookup, Plan>> on(
            Class<C> kind, BiFunction<C, Lookup, Plan> plan) {
        return Map.entry(kind, (command, known) -> plan.apply(kind.cast(command), known));
    }

    /** The drafts of a command that corrects nothing. */
    Plan plan(Command command, Instant now) {
        BiFunction<Command, Lookup, Plan> kind = kinds.get(command.getClass());
        if (kind == null) {
            return Plan.refused(Reason.ONLY_TAKEN_BACK, command.getClass().getSimpleName());
        }
        Lookup known = new Lookup(tx, register, ledger, now);
        if (at(command).isAfter(now)) {
            known.refuse(Reason.HAPPENED_IN_FUTURE, at(command), now);
        }
        if (!(command instanceof Command.Receive) && !(command instanceof Command.Recover)) {
            known.item(command.tag());
        }
        return known.refusals().isEmpty() ? kind.apply(command, known) : Plan.refused(known.refusals());
    }

    private static Instant at(Command command) {
        return command.header().happenedAt();
    }

    private Plan receive(Command.Receive receive, Lookup known) {
        String tag = known.freshTag(receive.tag());
        Act.Received act = received(receive, known);
        Plan plan = known.plan(new Draft(tag, at(receive), act));
        return plan.entering(new Plan.Fresh(tag, receive.partNumber(), Optional.empty()));
    }

    /** What a receipt says, whatever the tag. */
    Act.Received received(Command.Receive receive, Lookup known) {
        Optional<PartType> type = known.partType(receive.partNumber());
        known.positive(receive.quantity());
        receive.label().forEach(known::note);
        CarrierLimit carrier = receive.carrier()
                .map(known::carrier)
                .or(() -> type.map(t -> t.part().carrier()))
                .orElse(new CarrierLimit.Unknown());
        Event origin = origin(receive, known);
        if (origin.at().isAfter(at(receive))) {
            known.refuse(Reason.BEFORE_RECEIPT, at(receive), origin.at());
        }
        return new Act.Received(origin, receive.partNumber(), receive.quantity(), carrier, known.notes());
    }

    private Event origin(Command.Receive receive, Lookup known) {
        if (receive.origin() instanceof Origin.DryPack pack) {
            return new Event.Sealed(pack.sealedAt(), pack.shelfMonths());
        } else if (receive.origin() instanceof Origin.LeftDryPack left) {
            known.text(Notes.HOW_KNOWN, left.howKnown());
            return new Event.ToFloor(left.at(), known.zone(left.placeCode()));
        }
        Origin.Unknown unknown = (Origin.Unknown) receive.origin();
        known.zone(unknown.placeCode());
        return new Event.UnknownExposure(at(receive));
    }

    private Plan open(Command.Open open, Lookup known) {
        open.photoSha256().ifPresent(hash -> known.note(Notes.PHOTO, hash));
        Optional<Zone> zone = known.zone(open.placeCode());
        openings.note(tx, open, known);
        return known.plan(open, new Event.Opened(at(open), open.card(), open.cardReadAt(), open.sound(), zone));
    }

    private Plan move(Command.Move move, Lookup known) {
        Optional<KnownPlace> place = known.place(move.placeCode());
        if (place.isPresent() && place.get() instanceof KnownPlace.BakeOven) {
            known.refuse(Reason.OVEN_NEEDS_A_BAKE, move.placeCode());
        }
        if (isInBag(move)) {
            return known.plan(new Draft(move.tag(), at(move), new Act.PutAt(move.placeCode())));
        }
        if (place.isPresent() && place.get() instanceof KnownPlace.DryCabinet cabinet) {
            Optional<Zone> log = cabinet.logged() ? Optional.of(cabinet.zone()) : Optional.empty();
            return known.plan(
                    move,
                    new Event.ToDryStorage(at(move), Optional.of(cabinet.limit().limit()), log));
        }
        return known.plan(move, new Event.ToFloor(at(move), place.map(KnownPlace::zone)));
    }

    /** A closed bag is put somewhere with all that is in it: that is no event of the parts. */
    private boolean isInBag(Command.Move move) {
        return ledger.timeline(tx, move.tag())
                .fold(timeline -> timeline.upTo(at(move)).whereabouts().place() instanceof Place.Bag, refused -> false);
    }

    private Plan reseal(Command.Reseal reseal, Lookup known) {
        return known.plan(reseal, new Event.Resealed(at(reseal), reseal.freshDesiccant(), reseal.freshCard()));
    }

    private Plan split(Command.Split split, Lookup known) {
        known.positive(split.quantity());
        if (!known.refusals().isEmpty()) {
            return Plan.refused(known.refusals());
        }
        String child = known.freshTag(split.childTag());
        int seq = ledger.history(tx, split.tag()).nextSeq();
        String partType = known.item(split.tag()).map(Item::partType).orElse("");
        return known.plan(
                        new Draft(split.tag(), at(split), new Act.SplitOff(child, split.quantity())),
                        new Draft(child, at(split), new Act.SplitFrom(split.tag(), seq, split.quantity())))
                .entering(new Plan.Fresh(child, partType, Optional.of(split.tag())));
    }

    private Plan join(Command.Join join, Lookup known) {
        boolean each =
                join.others().stream().distinct().count() == join.others().size();
        if (join.others().isEmpty() || !each || join.others().contains(join.tag())) {
            known.refuse(Reason.JOIN_NEEDS_OTHERS, join.tag());
        }
        String partType = known.item(join.tag()).map(Item::partType).orElse("");
        long quantity = 0;
        for (String tag : join.others()) {
            Optional<Item> other = known.item(tag);
            quantity += other.map(Item::quantity).orElse(0L);
            other.filter(o -> !o.partType().equals(partType))
                    .ifPresent(o -> known.refuse(Reason.OTHER_PART_TYPE, tag, o.partType(), partType));
            other.filter(Item::ended).ifPresent(o -> known.refuse(Reason.ITEM_ENDED, tag));
        }
        var others = join.others().stream()
                .map(tag -> new Act.Joined.Other(tag, ledger.history(tx, tag).nextSeq()))
                .toList();
        Plan plan = known.plan(new Draft(join.tag(), at(join), new Act.Joined(others, quantity)));
        for (String tag : join.others()) {
            plan = plan.refusals().isEmpty()
                    ? plan.with(new Draft(tag, at(join), new Act.JoinedInto(join.tag())))
                    : plan;
        }
        return plan;
    }

    private Plan startBake(Command.StartBake start, Lookup known) {
        Optional<KnownPlace.BakeOven> oven = known.oven(start.ovenCode());
        oven.filter(o -> !o.reaches(start.setPoint()))
                .ifPresent(o -> known.refuse(Reason.SET_POINT_OUT_OF_RANGE, start.setPoint(), o.lowest(), o.highest()));
        register.calibrations(tx).stream()
                .filter(one -> one.isOf(Calibration.Kind.OVEN, start.ovenCode()) && one.isPastDueAt(at(start)))
                .forEach(one -> known.note(
                        Notes.CALIBRATION_WAS_DUE, one.dueOn().orElseThrow().toString()));
        Optional<RelativeHumidity> shown = start.humidityShown().or(() -> oven.flatMap(KnownPlace.BakeOven::holds));
        answers.bakeCell(start.tag(), start.setPoint(), at(start))
                .ifPresent(cell -> known.note(Notes.BAKE_CELL, AnswerText.source(cell)));
        return known.plan(start, new Event.BakeStarted(at(start), start.setPoint(), shown));
    }

    private Plan endBake(Command.EndBake end, Lookup known) {
        Optional<Duration> time = end.atTemperature().or(() -> doorToDoor(end, known));
        String told = end.chartSha256().isPresent() ? "chart" : "told";
        known.note(Notes.TIME_FROM, end.atTemperature().isPresent() ? told : "door to door less heat-up");
        end.chartSha256().ifPresent(hash -> known.note(Notes.CHART, hash));
        return known.plan(end, new Event.BakeEnded(at(end), time));
    }

    /** From the start of the run to its end, less the oven's declared heat-up; at least nothing. */
    private Optional<Duration> doorToDoor(Command.EndBake end, Lookup known) {
        return new BakeRun(ledger.history(tx, end.tag()).told())
                .before(at(end))
                .flatMap(run -> run.oven()
                        .flatMap(code -> register.place(tx, code, known.now()))
                        .map(place -> place.fact() instanceof KnownPlace.BakeOven oven ? oven.heatUp() : Duration.ZERO)
                        .map(heatUp ->
                                Duration.between(run.startedAt(), at(end)).minus(heatUp)))
                .map(time -> time.isNegative() ? Duration.ZERO : time);
    }

    private Plan bakedElsewhere(Command.BakedElsewhere baked, Lookup known) {
        known.text(WHOSE_OVEN, baked.oven());
        Act act = new Act.BakedElsewhere(at(baked), baked.temperature(), baked.time(), baked.oven());
        return known.plan(new Draft(baked.tag(), at(baked), act));
    }

    private Plan mount(Command.Mount mount, Lookup known) {
        known.text(Notes.BOARD, mount.boardSerial());
        known.note(Notes.LOCATION, mount.location());
        known.item(mount.tag())
                .filter(item -> item.quantity() > 1)
                .ifPresent(item -> known.refuse(Reason.MOUNT_ONE_PART, mount.tag()));
        return known.plan(mount, new Event.Mounted(at(mount), known.zone(mount.placeCode())));
    }

    /** Begins where the used item stood; the parts that it was used up by are not given back to that item. */
    private Plan recover(Command.Recover recover, Lookup known) {
        BoardSource source = recover.source();
        String tag = known.freshTag(recover.tag());
        known.text(Notes.BOARD, recover.boardSerial());
        known.note(Notes.LOCATION, recover.location());
        Optional<String> parent = source.used().map(BoardSource.Used::tag);
        String partType = parent.flatMap(known::item).map(Item::partType).orElse(recover.partNumber());
        Act birth = source.used()
                .<Act>map(used -> new Act.SplitFrom(used.tag(), used.seq(), 1))
                .orElseGet(() -> ofUnknown(recover, known));
        Plan plan = known.plan(
                new Draft(tag, source.from(), birth),
                new Draft(
                        tag,
                        source.from(),
                        new Act.Happened(new Event.Mounted(source.from(), Optional.empty()), known.notes())));
        for (Event event : plan.refusals().isEmpty() ? source.since() : List.<Event>of()) {
            plan = plan.with(new Draft(tag, event.at(), new Act.Happened(event, Map.of())));
        }
        return plan.entering(new Plan.Fresh(tag, partType, parent));
    }

    /** Before the board's first entry nothing is known of it. */
    private static Act ofUnknown(Command.Recover recover, Lookup known) {
        known.partType(recover.partNumber());
        Event origin = new Event.UnknownExposure(recover.source().from());
        return new Act.Received(origin, recover.partNumber(), 1, new CarrierLimit.Unknown(), known.notes());
    }

    private Plan remove(Command.Remove remove, Lookup known) {
        return known.plan(remove, new Event.Removed(at(remove), known.zone(remove.placeCode())));
    }

    private Plan changeCarrier(Command.ChangeCarrier change, Lookup known) {
        return known.plan(change, new Event.CarrierChanged(at(change), known.carrier(change.carrier())));
    }

    private Plan limitCarrier(Command.LimitCarrier change, Lookup known) {
        CarrierLimit limit =
                change.limit().<CarrierLimit>map(CarrierLimit.Of::new).orElse(new CarrierLimit.Unknown());
        return known.plan(change, new Event.CarrierChanged(at(change), limit));
    }

    private Plan heat(Command.Heat heat, Lookup known) {
        HeatPlan plan = heat.plan().startingAt(at(heat));
        Answer answer = answers.note(heat.tag(), plan, known);
        new Releases(ledger.history(tx, heat.tag()))
                .open(plan, answer)
                .ifPresent(release -> known.note(Notes.RELEASE, Integer.toString(release.seq())));
        PlanNotes.of(plan).forEach(known::note);
        return known.plan(
                heat,
                new Event.Heated(
                        at(heat), heat.measuredPeak().or(() -> heat.plan().peakBody())));
    }

    private Plan release(Command.Release release, Lookup known) {
        if (release.why().isBlank() || release.why().length() > LONGEST_WHY) {
            known.refuse(Reason.TEXT_MISSING, Notes.WHY);
        }
        Answer answer = answers.note(release.tag(), release.plan(), known);
        if (!Release.isPossible(answer)) {
            known.refuse(Reason.RELEASE_NOT_POSSIBLE);
        }
        known.note(Notes.WHY, release.why());
        PlanNotes.of(release.plan()).forEach(known::note);
        return known.plan(new Draft(release.tag(), at(release), new Act.Released(known.notes())));
    }

    private Plan useUp(Command.UseUp use, Lookup known) {
        known.positive(use.quantity());
        known.text("work order", use.workOrder());
        return known.plan(
                new Draft(use.tag(), at(use), new Act.UsedUp(use.quantity(), use.workOrder(), use.boardSerials())));
    }
}
