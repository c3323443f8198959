package bagclock.stock;

import bagclock.desk.Command;
import bagclock.desk.Origin;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A carrier comes into the house: in a dry pack, out of one since a known time, or nobody knows. */
final class ReceiveForm implements ActForm {
    private static final String PACK = "pack";
    private static final String LEFT = "left";
    private static final String UNKNOWN = "unknown";
    private static final int MOST_MONTHS = 240;

    @Override
    public String name() {
        return "receive";
    }

    @Override
    public Map<String, String> atFirst() {
        return Map.of("origin", PACK);
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        String type = LabelFields.typeHint(offer.label(), words);
        List<Choice> origins = List.of(
                new Choice(PACK, words.text("stock.origin.pack"), words.text("stock.origin.pack.note")),
                new Choice(LEFT, words.text("stock.origin.left"), words.text("stock.origin.left.note")),
                new Choice(UNKNOWN, words.text("stock.origin.unknown"), words.text("stock.origin.unknown.note")));
        List<Input> inputs = new ArrayList<>(List.of(
                new Input(entered.field("type", words.text("stock.type"), type), Input.Kind.SELECT, offer.types(words)),
                Input.of(
                        entered.field(
                                "quantity",
                                words.text("stock.quantity"),
                                LabelFields.hint("quantity", offer.label(), words, "")),
                        Input.Kind.NUMBER),
                Input.of(
                        entered.field("tag", words.text("stock.tag"), words.text("stock.tag.hint")),
                        Input.Kind.SCANNED),
                new Input(
                        entered.field("carrier", words.text("stock.carrier")),
                        Input.Kind.SELECT,
                        offer.carriers(words)),
                new Input(entered.field("origin", words.text("stock.origin")), Input.Kind.CHOICES, origins),
                Input.of(
                        entered.field(
                                "sealedAt",
                                words.text("stock.sealed-at"),
                                LabelFields.hint("sealedAt", offer.label(), words, words.text("stock.sealed-at.hint"))),
                        Input.Kind.MOMENT),
                Input.of(
                        entered.field("months", words.text("stock.months"), words.text("stock.months.hint")),
                        Input.Kind.NUMBER),
                Input.of(
                        entered.field("leftAt", words.text("stock.left-at"), words.text("stock.left-at.hint")),
                        Input.Kind.MOMENT),
                Input.of(entered.field("how", words.text("stock.how"), words.text("stock.how.hint")), Input.Kind.TEXT),
                new Input(entered.field("place", words.text("stock.zone")), Input.Kind.CHOICES, offer.zones())));
        offer.label().ifPresent(label -> inputs.addAll(0, LabelFields.inputs(entered, label, words)));
        return inputs;
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        String type = entered.required("type");
        Optional<Integer> quantity = ActForm.quantity(entered);
        Optional<Origin> origin = origin(entered);
        Optional<String> carrier = Optional.of(entered.text(FieldNames.CARRIER)).filter(name -> !name.isEmpty());
        Map<String, String> label = LabelFields.read(entered);
        return ActForm.unlessRefused(
                entered,
                () -> new Command.Receive(
                        header,
                        entered.text(FieldNames.TAG),
                        type,
                        quantity.orElseThrow(),
                        carrier,
                        origin.orElseThrow(),
                        label));
    }

    private static Optional<Origin> origin(Entered entered) {
        return switch (entered.required("origin")) {
            case PACK -> pack(entered);
            case LEFT -> left(entered);
            default ->
                Optional.of(new Origin.Unknown(
                        Optional.of(entered.text(FieldNames.PLACE)).filter(code -> !code.isEmpty())));
        };
    }

    private static Optional<Origin> pack(Entered entered) {
        Optional<Instant> sealedAt = entered.time("sealedAt");
        OptionalInt months = entered.text(FieldNames.MONTHS).isEmpty()
                ? OptionalInt.empty()
                : entered.count("months", 1, MOST_MONTHS).map(OptionalInt::of).orElse(OptionalInt.empty());
        return sealedAt.map(at -> new Origin.DryPack(at, months));
    }

    private static Optional<Origin> left(Entered entered) {
        Optional<Instant> leftAt = entered.time("leftAt");
        String how = entered.required("how");
        String place = entered.required("place");
        return leftAt.map(at -> new Origin.LeftDryPack(at, place, how));
    }
}
