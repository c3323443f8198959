package bagclock.stock;

import bagclock.desk.Command;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Pages;
import bagclock.platform.Secret;
import bagclock.platform.Visit;
import bagclock.stock.CounterPage.Told;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A delivery of closed bags, received one after another. */
final class DeliveryRoutes {
    private final ActRoutes.Known known;
    private final Delivery delivery;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    DeliveryRoutes(ActRoutes.Known known, Pages pages, Words words, Clock clock) {
        this.known = known;
        this.delivery = new Delivery(known.desk(), known.labels(), words);
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get(
                "/stock/delivery",
                ctx -> pages.show(ctx, page(Entered.of(Map.of(), words.texts()), Told.NOTHING)),
                ActRoutes.WORKERS);
        routes.post("/stock/delivery", this::receive, ActRoutes.WORKERS);
    }

    private void receive(Context ctx) {
        Map<String, String> said = new HashMap<>();
        ctx.formParamMap().forEach((name, all) -> said.put(name, String.join(",", all)));
        said.put(LabelFields.MAP, Visit.of(ctx).scannerMap());
        String key = CounterRoutes.key(Entered.of(said, words.texts()));
        Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), clock.instant(), key);
        Delivery.Step step = delivery.take(said, header);
        DeliveryPage page = page(step.entered(), step.told());
        if (step.isRefused()) {
            pages.refuse(ctx, page);
        } else {
            pages.show(ctx, page);
        }
    }

    private DeliveryPage page(Entered entered, Told told) {
        Instant now = clock.instant();
        List<String> newest = new ArrayList<>(entered.all(FieldNames.RECEIVED));
        String asked = newest.stream()
                .map(tag -> "&tag=" + URLEncoder.encode(tag, StandardCharsets.UTF_8))
                .collect(Collectors.joining());
        Collections.reverse(newest);
        String scan = entered.text(LabelFields.SCAN);
        Optional<LabelMatch> label =
                scan.isEmpty() ? Optional.empty() : Optional.of(known.labels().match(scan, now));
        String next = label.isEmpty() ? "stock.delivery.code" : "stock.delivery.tag";
        return new DeliveryPage(
                words.text("stock.delivery"),
                Secret.token(),
                told,
                Field.of(FieldNames.CODE, words.text(next), "").hinting(words.text(next + ".hint")),
                inputs(entered, label, now),
                label.map(match -> LabelFields.part(scan, match, words)),
                entered.text(FieldNames.RECEIVED),
                newest.stream().map(tag -> bag(tag, now)).toList(),
                asked.isEmpty() ? "" : "/labels?kind=item" + asked);
    }

    private DeliveryPage.Bag bag(String tag, Instant now) {
        return new DeliveryPage.Bag(
                tag,
                known.desk()
                        .item(tag, now)
                        .map(view -> view.item().partType() + ", "
                                + words.pieces(view.item().quantity()))
                        .orElse(""));
    }

    private List<Input> inputs(Entered entered, Optional<LabelMatch> label, Instant now) {
        StockStore store = known.store();
        Offer offer = new Offer(store.places(now), store.partTypes(now), store.carriers(now), label, Map.of());
        List<Choice> places = new ArrayList<>();
        places.add(Choice.of("", words.text("stock.delivery.nowhere")));
        places.addAll(offer.storage(words));
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.of(entered.field(Delivery.LOT_BEFORE, ""), Input.Kind.HIDDEN));
        label.ifPresent(match -> inputs.addAll(LabelFields.inputs(entered, match, words)));
        inputs.add(new Input(
                entered.field(FieldNames.TYPE, words.text("stock.type"), LabelFields.typeHint(label, words)),
                Input.Kind.SELECT,
                offer.types(words)));
        inputs.add(Input.of(
                entered.field(
                        FieldNames.QUANTITY,
                        words.text("stock.delivery.quantity"),
                        LabelFields.hint(FieldNames.QUANTITY, label, words, "")),
                Input.Kind.NUMBER));
        inputs.add(new Input(
                entered.field(FieldNames.CARRIER, words.text("stock.carrier")),
                Input.Kind.SELECT,
                offer.carriers(words)));
        inputs.add(Input.of(
                entered.field(
                        FieldNames.SEALED_AT,
                        words.text("stock.sealed-at"),
                        LabelFields.hint(FieldNames.SEALED_AT, label, words, words.text("stock.sealed-at.hint"))),
                Input.Kind.MOMENT));
        inputs.add(Input.of(
                entered.field(FieldNames.MONTHS, words.text("stock.months"), words.text("stock.months.hint")),
                Input.Kind.NUMBER));
        inputs.add(new Input(
                entered.field(FieldNames.PLACE, words.text("stock.delivery.place")), Input.Kind.SELECT, places));
        return inputs;
    }
}
