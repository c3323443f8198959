package bagclock.ovens;

import bagclock.core.heat.BakeOffer;
import bagclock.desk.ItemView;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts ovens, loads and the queue into words. */
final class OvenPages {
    private final OvenWords words;
    private final Texts texts;

    OvenPages(OvenWords words, Texts texts) {
        this.words = words;
        this.texts = texts;
    }

    OvensPage overview(List<BakeOven> ovens, Inside inside, List<Ovens.Waiting> queue, String done, Instant now) {
        List<OvensPage.Oven> shown = new ArrayList<>();
        for (BakeOven oven : ovens) {
            String code = oven.code();
            List<OvensPage.Run> runs = Stream.concat(
                            inside.loadsOf(code).stream().map(load -> run(load, now)),
                            inside.boardsOf(code).stream().map(board -> run(board, now)))
                    .toList();
            shown.add(new OvensPage.Oven(
                    code,
                    oven.name(),
                    words.ability(oven),
                    words.text("ovens.free", Math.max(0, oven.positions() - inside.taken(code)), oven.positions()),
                    runs));
        }
        return new OvensPage(
                words.text("ovens.title"),
                lead(inside, queue, now),
                done,
                shown,
                queue.stream()
                        .filter(Ovens.Waiting::canBeBaked)
                        .map(w -> line(w, now))
                        .toList(),
                queue.stream().filter(w -> !w.canBeBaked()).map(this::stuck).toList());
    }

    private String lead(Inside inside, List<Ovens.Waiting> queue, Instant now) {
        Optional<Load> next = inside.loads().stream()
                .filter(load -> load.readyAt().isPresent())
                .min(Comparator.comparing(load -> load.readyAt().orElseThrow()));
        long waiting = queue.stream().filter(Ovens.Waiting::canBeBaked).count();
        String queued = waiting == 0 ? words.text("ovens.lead.no-queue") : words.text("ovens.lead.queue", waiting);
        return next.map(load -> words.text("ovens.lead.next", load.oven().name(), ready(load, now)))
                        .orElseGet(
                                () -> words.text(inside.boards().isEmpty() ? "ovens.lead.idle" : "ovens.lead.boards"))
                + " " + queued;
    }

    private OvensPage.Run run(Load load, Instant now) {
        String left = load.readyAt()
                .filter(ready -> ready.isAfter(now))
                .map(ready -> words.text("ovens.left", texts.span(Duration.between(now, ready))))
                .orElse("");
        return new OvensPage.Run(
                ready(load, now),
                left,
                words.text("ovens.chart.without"),
                facts(load, now),
                href(load),
                load.items().stream()
                        .map(item -> new OvensPage.Tag(item.tag(), part(item.view())))
                        .toList());
    }

    /** A board's bake is looked at, and ended, on the board's own page. */
    private OvensPage.Run run(BoardIn board, Instant now) {
        return new OvensPage.Run(
                words.text("ovens.board", board.serial()),
                "",
                words.text("ovens.board.own"),
                words.text("ovens.loaded", texts.temperature(board.setPoint()), texts.at(board.loadedAt(), now)),
                "/boards/" + board.serial() + "/bake",
                List.of());
    }

    static String href(Load load) {
        String kind = load.outAt().isPresent() ? "/runs/" : "/loads/";
        return "/ovens/" + load.oven().code() + kind + load.loadedAt().toEpochMilli();
    }

    /** When it will be, or was, ready. */
    String ready(Load load, Instant now) {
        return load.readyAt()
                .map(ready ->
                        words.text(ready.isAfter(now) ? "ovens.ready" : "ovens.ready.since", texts.at(ready, now)))
                .orElseGet(() -> words.text("ovens.ready.never"));
    }

    String facts(Load load, Instant now) {
        String in = words.text("ovens.loaded", texts.temperature(load.setPoint()), texts.at(load.loadedAt(), now));
        String hot = load.cameToTemperatureAt()
                .map(at -> words.text("ovens.hot-since", texts.at(at, now)))
                .orElseGet(() ->
                        words.text("ovens.hot-not-noted", texts.span(load.oven().heatUp())));
        return in + " " + hot;
    }

    static String part(ItemView view) {
        return view.item().partType() + ", " + view.partType().fact().description();
    }

    private OvensPage.Line line(Ovens.Waiting waiting, Instant now) {
        ItemView view = waiting.view();
        return new OvensPage.Line(
                view.item().tag(),
                part(view),
                Long.toString(view.item().quantity()),
                where(view),
                words.why(view.answer()),
                words.allowed(view.answer()),
                words.weighed(waiting.neededBy().map(at -> needed(at, now)).orElse(""), waiting.weight()));
    }

    private String needed(Instant at, Instant now) {
        return at.isBefore(now) ? words.text("ovens.needed.late", texts.at(at, now)) : texts.at(at, now);
    }

    private String where(ItemView view) {
        return view.item()
                .board()
                .map(board -> words.text("ovens.on-board", board))
                .or(() -> view.item().placeCode())
                .orElseGet(() -> words.text("ovens.place-unknown"));
    }

    private OvensPage.Stuck stuck(Ovens.Waiting waiting) {
        ItemView view = waiting.view();
        String bars = view.answer().bakes().stream()
                .filter(offer -> !offer.isAllowed())
                .map(offer -> words.offer(offer) + ": " + words.bars(offer))
                .collect(Collectors.joining(" "));
        return new OvensPage.Stuck(
                view.item().tag(),
                part(view),
                words.why(view.answer()) + (bars.isEmpty() ? "" : " " + bars),
                words.next(view.answer().next()));
    }

    LoadPage load(Entered entered, String key, List<String> refusals, List<BakeOven> ovens, List<Ovens.Waiting> queue) {
        return new LoadPage(
                words.text("ovens.load"),
                key,
                "",
                refusals,
                LoadPage.Beside.NOTHING,
                entered.field("oven", words.text("ovens.oven")),
                ovens.stream()
                        .map(oven -> new Choice(oven.code(), oven.name(), words.ability(oven)))
                        .toList(),
                entered.field("setPoint", words.text("ovens.set-point"), setPoints(queue)),
                entered.field("humidity", words.text("ovens.humidity"), words.text("ovens.humidity.hint")),
                entered.field("at", words.text("ovens.loaded-at")),
                entered.field("tag", words.text("ovens.items")),
                queue.stream()
                        .filter(Ovens.Waiting::canBeBaked)
                        .map(w -> new Choice(
                                w.view().item().tag(),
                                w.view().item().tag(),
                                part(w.view()) + ". "
                                        + String.join(
                                                "; ", words.allowed(w.view().answer()))))
                        .toList(),
                entered.field(LoadForm.CODE, words.text("ovens.more"), words.text("ovens.more.hint")));
    }

    /** The temperatures that the queue allows. */
    private String setPoints(List<Ovens.Waiting> queue) {
        String all = queue.stream()
                .flatMap(w -> w.view().answer().bakes().stream())
                .filter(BakeOffer::isAllowed)
                .map(BakeOffer::temperature)
                .distinct()
                .sorted()
                .map(texts::temperature)
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "" : words.text("ovens.set-point.hint", all);
    }

    OvenPage oven(Entered entered, String title, String action, int basedOn) {
        List<Field> names = new ArrayList<>();
        if (basedOn == 0) {
            names.add(entered.field("code", words.text("ovens.code"), words.text("ovens.code.hint")));
        }
        names.add(entered.field("name", words.text("ovens.name")));
        return new OvenPage(
                title,
                action,
                basedOn,
                names,
                List.of(
                        entered.field("positions", words.text("ovens.positions"), words.text("ovens.positions.hint")),
                        entered.field("heatUp", words.text("ovens.heat-up"), words.text("ovens.heat-up.hint")),
                        pause(entered, "coolDown", "plan.rules.coolDown"),
                        pause(entered, "turnaround", "plan.rules.turnaround"),
                        pause(entered, "change", "plan.rules.change"),
                        entered.field("lowest", words.text("ovens.lowest")),
                        entered.field("highest", words.text("ovens.highest")),
                        entered.field("holds", words.text("ovens.holds-field"), words.text("ovens.holds-field.hint"))));
    }

    private Field pause(Entered entered, String name, String key) {
        return entered.field(name, words.text(key), words.text("ovens.pauses.hint"));
    }

    NeedPage need(ItemView view, Entered entered) {
        return new NeedPage(
                words.text("ovens.need", view.item().tag()),
                view.item().tag(),
                part(view),
                entered.field("neededBy", words.text("ovens.needed-by"), words.text("ovens.needed-by.hint")),
                entered.field("weight", words.text("ovens.weight"), words.text("ovens.weight.hint")));
    }
}
