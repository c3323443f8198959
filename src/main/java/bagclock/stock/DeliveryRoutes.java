package bagclock.stock;

import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.Origin;
import bagclock.desk.Receipt;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A delivery of closed bags: each scan of a fresh label receives one; without a scan the next free tag is drawn. */
final class DeliveryRoutes {
    private static final int MOST_MONTHS = 240;

    private final Desk desk;
    private final StockStore store;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    DeliveryRoutes(Desk desk, StockStore store, Pages pages, Words words, Clock clock) {
        this.desk = desk;
        this.store = store;
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get(
                "/stock/delivery",
                ctx -> pages.show(ctx, page(Entered.of(Map.of(), words.texts()), List.of(), Told.NOTHING)),
                ActRoutes.WORKERS);
        routes.post("/stock/delivery", this::receive, ActRoutes.WORKERS);
    }

    private void receive(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        List<String> received = new ArrayList<>(entered.all(FieldNames.RECEIVED));
        Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), now, CounterRoutes.key(entered));
        Optional<Command.Receive> command = read(entered, header);
        if (command.isEmpty()) {
            Told told = new Told(false, words.text("stock.delivery.not"), words.text("stock.delivery.see"));
            pages.refuse(ctx, page(entered, received, told));
            return;
        }
        desk.handle(command.get(), now)
                .fold(
                        receipt -> {
                            put(entered.text(FieldNames.PLACE), receipt, header);
                            received.remove(receipt.tag());
                            received.add(receipt.tag());
                            Told told = new Told(
                                    true, words.text("stock.delivery.done", receipt.tag(), received.size()), "");
                            pages.show(ctx, page(entered, received, told));
                            return now;
                        },
                        refusals -> {
                            String why = String.join(" ", words.refusals(refusals));
                            pages.refuse(
                                    ctx,
                                    page(entered, received, new Told(false, words.text("stock.delivery.not"), why)));
                            return now;
                        });
    }

    private Optional<Command.Receive> read(Entered entered, Command.Header header) {
        String type = entered.required(FieldNames.TYPE);
        Optional<Integer> quantity = ActForm.quantity(entered);
        Optional<Instant> sealedAt = entered.pastTime(FieldNames.SEALED_AT, header.happenedAt());
        OptionalInt months = entered.text(FieldNames.MONTHS).isEmpty()
                ? OptionalInt.empty()
                : entered.count(FieldNames.MONTHS, 1, MOST_MONTHS)
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty());
        Optional<String> carrier = Optional.of(entered.text(FieldNames.CARRIER)).filter(name -> !name.isEmpty());
        if (entered.isRefused()) {
            return Optional.empty();
        }
        return Optional.of(new Command.Receive(
                header,
                entered.text(FieldNames.CODE),
                type,
                quantity.orElseThrow(),
                carrier,
                new Origin.DryPack(sealedAt.orElseThrow(), months)));
    }

    /** A bag that was scanned twice was put there the first time. */
    private void put(String place, Receipt receipt, Command.Header header) {
        if (!place.isEmpty() && !receipt.repeated()) {
            Batch.move(desk, List.of(receipt.tag()), place, header);
        }
    }

    private DeliveryPage page(Entered entered, List<String> received, Told told) {
        List<String> newest = new ArrayList<>(received);
        Collections.reverse(newest);
        String asked = received.stream()
                .map(tag -> "&tag=" + URLEncoder.encode(tag, StandardCharsets.UTF_8))
                .collect(Collectors.joining());
        return new DeliveryPage(
                words.text("stock.delivery"),
                Secret.token(),
                told,
                Field.of(FieldNames.CODE, words.text("stock.delivery.code"), "")
                        .hinting(words.text("stock.delivery.code.hint")),
                inputs(entered),
                String.join(",", received),
                newest,
                asked.isEmpty() ? "" : "/labels?kind=item" + asked);
    }

    private List<Input> inputs(Entered entered) {
        Instant now = clock.instant();
        Offer offer = new Offer(store.places(now), store.partTypes(now), store.carriers(now));
        List<Choice> places = new ArrayList<>();
        places.add(Choice.of("", words.text("stock.delivery.nowhere")));
        places.addAll(offer.storage(words));
        return List.of(
                new Input(entered.field(FieldNames.TYPE, words.text("stock.type")), Input.Kind.SELECT, offer.types()),
                Input.of(entered.field(FieldNames.QUANTITY, words.text("stock.delivery.quantity")), Input.Kind.NUMBER),
                new Input(
                        entered.field(FieldNames.CARRIER, words.text("stock.carrier")),
                        Input.Kind.SELECT,
                        offer.carriers(words)),
                Input.of(
                        entered.field(
                                FieldNames.SEALED_AT,
                                words.text("stock.sealed-at"),
                                words.text("stock.sealed-at.hint")),
                        Input.Kind.MOMENT),
                Input.of(
                        entered.field(FieldNames.MONTHS, words.text("stock.months"), words.text("stock.months.hint")),
                        Input.Kind.NUMBER),
                new Input(
                        entered.field(FieldNames.PLACE, words.text("stock.delivery.place")),
                        Input.Kind.SELECT,
                        places));
    }
}
