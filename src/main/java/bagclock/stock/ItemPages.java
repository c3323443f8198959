package bagclock.stock;

import bagclock.core.estimate.Beside;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.Share;
import bagclock.core.exposure.TrailEntry;
import bagclock.core.heat.Answer;
import bagclock.core.heat.StepCode;
import bagclock.core.standard.Life;
import bagclock.core.standard.Rating;
import bagclock.desk.HistoryLine;
import bagclock.desk.ItemView;
import bagclock.ledger.Act;
import bagclock.ledger.Entry;
import bagclock.ledger.Item;
import bagclock.ledger.Notes;
import bagclock.platform.Names;
import bagclock.platform.Texts;
import bagclock.register.PartType;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Puts one item into words. */
final class ItemPages {
    private static final Set<String> OFTEN = Set.of("open", "move", "reseal");

    private static final int HASH_SHOWN = 12;

    /** The forms by which an entry is told anew, by the entry's word. */
    private static final Map<String, String> CORRECTED_BY = Map.of(
            "opened",
            "open",
            "to-floor",
            "move",
            "to-dry-storage",
            "move",
            "resealed",
            "reseal",
            "put-at",
            "move",
            "mounted",
            "mount");

    private final Words words;
    private final Names names;
    private final Texts texts;
    private final EstimateLines estimates;

    ItemPages(Words words, Names names) {
        this.words = words;
        this.names = names;
        this.texts = words.texts();
        this.estimates = new EstimateLines(words);
    }

    /** The page, with what the model says beside the answer. */
    ItemPage page(ItemView view, Beside beside, boolean done, Instant now) {
        Answer answer = view.answer();
        Item item = view.item();
        PartType type = view.partType().fact();
        return new ItemPage(
                item.tag(),
                item.tag(),
                type.number() + ", " + type.description(),
                done,
                answer.verdict().code(),
                words.sentence(answer, now),
                words.aside(answer, now),
                answer.reasons().stream()
                        .map(reason ->
                                new ItemPage.Reason(words.finding(reason), words.source(reason), words.status(reason)))
                        .toList(),
                answer.next().stream()
                        .map(step -> new ItemPage.Step(words.step(step), href(step, item)))
                        .toList(),
                facts(view, now),
                acts(item),
                otherActs(item),
                LifeLines.of(view.timeline(), answer, words, now),
                estimates.line(beside, TimeAxis.of(view.timeline(), now)),
                answer.trail().stream().map(entry -> trail(entry, answer, now)).toList(),
                lines(view.lines(), item, now),
                family(view));
    }

    /** What is done to most items. */
    private List<ItemPage.Link> acts(Item item) {
        List<ItemPage.Link> acts = forms(item, OFTEN::contains);
        if (item.where() == Item.Where.BAG) {
            acts.add(link(item, "/bag-label", "stock.label.bag"));
        }
        if (!item.ended()) {
            acts.add(link(item, "/label", "stock.label"));
        }
        return acts;
    }

    /** What is done to few. */
    private List<ItemPage.Link> otherActs(Item item) {
        List<ItemPage.Link> acts = forms(item, name -> !OFTEN.contains(name));
        if (item.where() == Item.Where.FLOOR || item.where() == Item.Where.CABINET) {
            acts.add(0, link(item, "/dry-pack", "stock.pack"));
        }
        acts.add(link(item, "/lot", "stock.lot"));
        return acts;
    }

    private List<ItemPage.Link> forms(Item item, Predicate<String> wanted) {
        List<ItemPage.Link> links = new ArrayList<>();
        ActForms.of(item).stream()
                .map(ActForm::name)
                .filter(wanted)
                .forEach(name -> links.add(link(item, "/acts/" + name, "stock." + name)));
        return links;
    }

    private ItemPage.Link link(Item item, String below, String label) {
        return new ItemPage.Link("/items/" + item.tag() + below, words.text(label));
    }

    private static String href(StepCode step, Item item) {
        return switch (step) {
            case OPEN_AND_READ_CARD -> "/items/" + item.tag() + "/acts/open";
            case BAKE -> "/ovens/load?tag=" + item.tag();
            case RECORD_BAKE_END -> "/ovens";
            case CHANGE_CARRIER -> "/items/" + item.tag() + "/acts/carrier";
            case MEASURE_BODY, MEASURE_EDGES, ENTER_LEVEL, ENTER_BAKE_LIMIT, ENTER_MAKERS_BAKE, ENTER_LABEL_TIME ->
                "/parts/type?number=" + URLEncoder.encode(item.partType(), StandardCharsets.UTF_8);
            default -> "";
        };
    }

    private List<ItemPage.Fact> facts(ItemView view, Instant now) {
        Item item = view.item();
        Answer.FloorLife life = view.answer().floorLife();
        List<ItemPage.Fact> facts = new ArrayList<>();
        facts.add(fact("stock.fact.where", words.where(item)));
        facts.add(fact("stock.fact.quantity", words.pieces(item.quantity())));
        facts.add(fact("stock.fact.level", levels(view.partType().fact())));
        facts.add(fact(
                "stock.fact.clock",
                words.text("stock.clock." + view.answer().clock().code())));
        life.totalHours()
                .ifPresent(total -> facts.add(fact(
                        "stock.fact.life",
                        words.text("stock.used-of", Texts.usedHours(life.usedHours()), Texts.lifeHours(total)))));
        life.endsAt().ifPresent(end -> facts.add(fact("stock.fact.ends", texts.at(end, now))));
        facts.add(fact("stock.fact.received", texts.at(item.receivedAt(), now)));
        offBoard(view).map(text -> fact("stock.fact.before", text)).ifPresent(facts::add);
        return facts;
    }

    /** A part that came off a board without an item: its heats before the first thing told of the board are not known. */
    private Optional<String> offBoard(ItemView view) {
        return view.lines().stream()
                .filter(HistoryLine::stands)
                .map(HistoryLine::entry)
                .filter(entry -> entry.act() instanceof Act.Received)
                .flatMap(entry -> offBoard(entry, ((Act.Received) entry.act()).notes()).stream())
                .findFirst();
    }

    private Optional<String> offBoard(Entry entry, Map<String, String> notes) {
        return Optional.ofNullable(notes.get(Notes.BOARD))
                .map(board -> words.text(
                        "stock.fact.before.board",
                        board,
                        notes.getOrDefault(Notes.LOCATION, ""),
                        texts.at(entry.happenedAt())));
    }

    private ItemPage.Fact fact(String key, String value) {
        return new ItemPage.Fact(words.text(key), value);
    }

    private String levels(PartType type) {
        return type.part().ratings().stream().map(this::rating).collect(Collectors.joining("; "));
    }

    private String rating(Rating rating) {
        String level = rating.level().map(l -> l.code()).orElseGet(() -> words.text("stock.level.unknown"));
        return rating.peak()
                .map(peak -> words.text("stock.level.at", level, texts.temperature(peak)))
                .orElse(level);
    }

    private ItemPage.Trail trail(TrailEntry entry, Answer answer, Instant now) {
        Optional<Life> total = answer.floorLife().total().map(life -> life.value());
        return new ItemPage.Trail(
                texts.at(entry.from(), now),
                texts.at(entry.to(), now),
                words.text("stock.in." + entry.where().code())
                        + entry.zone().map(zone -> ", " + zone.name()).orElse(""),
                entry.air()
                        .map(air -> texts.temperature(air.temperature()) + ", " + texts.humidity(air.humidity()))
                        .orElse(""),
                entry.life()
                        .filter(life -> !life.isUnlimited())
                        .map(life -> Texts.lifeHours(Share.WHOLE.hoursOf(life)))
                        .orElse(""),
                total.map(life -> Texts.usedHours(entry.used().hoursOf(life))).orElse(""));
    }

    private List<ItemPage.Line> lines(List<HistoryLine> lines, Item item, Instant now) {
        return lines.stream().map(line -> line(line, item, now)).toList();
    }

    private ItemPage.Line line(HistoryLine line, Item item, Instant now) {
        Entry entry = line.entry();
        String form = CORRECTED_BY.getOrDefault(entry.act().word(), "");
        boolean mends = line.stands() && !form.isEmpty();
        return new ItemPage.Line(
                entry.seq(),
                texts.at(entry.happenedAt(), now),
                texts.at(entry.stamp().recordedAt(), now),
                words.act(entry),
                names.of(entry.stamp().who()),
                state(line),
                entry.hash().substring(0, HASH_SHOWN),
                mends
                        ? "/items/" + item.tag() + "/acts/" + form + "?corrects=" + entry.seq() + "&at="
                                + texts.field(entry.happenedAt())
                        : "",
                keepsAnAnswer(entry) ? "/bench/heats/" + item.tag() + "/" + entry.seq() : "");
    }

    private static boolean keepsAnAnswer(Entry entry) {
        return entry.act() instanceof Act.Released
                || (entry.act() instanceof Act.Happened happened && happened.event() instanceof Event.Heated);
    }

    private String state(HistoryLine line) {
        if (!line.stands()) {
            return words.text("stock.state.replaced");
        } else if (line.entry().corrects().isPresent()) {
            return words.text("stock.state.corrects", line.entry().corrects().getAsInt());
        }
        return line.late() ? words.text("stock.state.late") : "";
    }

    private static List<ItemPage.Link> family(ItemView view) {
        List<ItemPage.Link> family = new ArrayList<>();
        view.item().parent().ifPresent(tag -> family.add(new ItemPage.Link("/items/" + tag, tag)));
        view.item().keeper().ifPresent(tag -> family.add(new ItemPage.Link("/items/" + tag, tag)));
        view.children().forEach(tag -> family.add(new ItemPage.Link("/items/" + tag, tag)));
        return family;
    }
}
