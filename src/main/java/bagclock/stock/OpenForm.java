package bagclock.stock;

import bagclock.core.exposure.HumidityCard;
import bagclock.desk.Command;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Opening a bag: the card's spots, the bag's state, the zone, and a photograph if one was taken. */
final class OpenForm implements ActForm {
    /** Name under which the hash of the uploaded photograph stands among the fields. */
    static final String PHOTO_HASH = "photoSha256";

    private static final String WHY = "whyAnyway";

    /** Zones that the form named as no place to open a bag. */
    private static final String CLOSED = "closed";

    private static final List<Integer> SPOTS = List.of(5, 10, 60);
    private static final String DRY = "dry";
    private static final String SOUND = "sound";
    private static final String NOT_LOOKED = "not-looked";

    @Override
    public String name() {
        return "open";
    }

    @Override
    public List<Input> inputs(Entered entered, Offer offer, Words words) {
        List<Input> inputs = new ArrayList<>();
        List<Choice> states = List.of(
                Choice.of(DRY, words.text("stock.spot.dry")),
                new Choice("between", words.text("stock.spot.between"), words.text("stock.spot.between.note")),
                Choice.of("wet", words.text("stock.spot.wet")));
        for (int spot : SPOTS) {
            String hint = spot == SPOTS.get(0) ? words.text("stock.spot.hint") : "";
            inputs.add(new Input(
                    entered.field("spot" + spot, words.text("stock.spot", spot), hint), Input.Kind.CHOICES, states));
        }
        inputs.add(new Input(
                entered.field("bag", words.text("stock.bag")),
                Input.Kind.CHOICES,
                List.of(
                        Choice.of(SOUND, words.text("stock.bag.sound")),
                        Choice.of("damaged", words.text("stock.bag.damaged")),
                        new Choice(
                                NOT_LOOKED,
                                words.text("stock.bag.not-looked"),
                                words.text("stock.bag.not-looked.note")))));
        inputs.add(new Input(
                entered.field("place", words.text("stock.zone")), Input.Kind.CHOICES, offer.openingZones(words)));
        if (!offer.closed().isEmpty()) {
            inputs.add(Input.of(
                    entered.field(WHY, words.text("stock.open.why"), words.text("stock.open.why.hint")),
                    Input.Kind.TEXT));
        }
        Entered closed =
                Entered.of(Map.of(CLOSED, String.join(",", offer.closed().keySet())), words.texts());
        inputs.add(Input.of(closed.field(CLOSED, ""), Input.Kind.HIDDEN));
        inputs.add(Input.of(
                entered.field("readAt", words.text("stock.read-at"), words.text("stock.read-at.hint")),
                Input.Kind.MOMENT));
        inputs.add(Input.of(
                entered.field("photo", words.text("stock.photo"), words.text("stock.photo.hint")), Input.Kind.FILE));
        return inputs;
    }

    @Override
    public Optional<Command> read(Entered entered, Command.Header header, String tag) {
        String bag = entered.required("bag");
        String place = entered.required("place");
        Optional<Instant> readAt =
                entered.text(FieldNames.READ_AT).isEmpty() ? Optional.empty() : entered.time("readAt");
        Optional<Boolean> sound = bag.equals(NOT_LOOKED) ? Optional.empty() : Optional.of(bag.equals(SOUND));
        Optional<String> photo = Optional.of(entered.text(PHOTO_HASH)).filter(hash -> !hash.isEmpty());
        Optional<String> why =
                entered.all(CLOSED).contains(place) ? Optional.of(entered.required(WHY)) : Optional.empty();
        return ActForm.unlessRefused(
                entered, () -> new Command.Open(header, tag, card(entered), readAt, sound, place, photo, why));
    }

    /** Between the colours counts as wet; a card of which no spot was read is no card. */
    private static Optional<HumidityCard> card(Entered entered) {
        Map<Double, Boolean> spots = new HashMap<>();
        for (int spot : SPOTS) {
            String state = entered.text("spot" + spot);
            if (!state.isEmpty()) {
                spots.put((double) spot, state.equals(DRY));
            }
        }
        return spots.isEmpty() ? Optional.empty() : Optional.of(new HumidityCard(spots));
    }
}
