package bagclock.stock;

import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.Origin;
import bagclock.desk.Receipt;
import bagclock.platform.Entered;
import bagclock.scan.Decoder;
import bagclock.scan.Standing;
import bagclock.stock.CounterPage.Told;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * A delivery, scan by scan. A maker's label fills in the bag; a fresh tag, an empty one or the next maker's label
 * receives it. A label that is in doubt holds everything up until a person compared it.
 */
final class Delivery {
    /** Part and lot of the label before: only its equal may keep what was typed for that one. */
    static final String LOT_BEFORE = "lotBefore";

    private static final int MOST_MONTHS = 240;
    private static final Pattern FIELD = Pattern.compile("\\d{1,2}[A-Z][ -~]+");
    private static final Pattern PIECES = Pattern.compile("Q\\d+");
    private static final List<String> OF_ONE_LOT =
            List.of(FieldNames.TYPE, FieldNames.QUANTITY, FieldNames.CARRIER, FieldNames.SEALED_AT, FieldNames.MONTHS);

    private final Desk desk;
    private final LabelScans labels;
    private final Words words;

    Delivery(Desk desk, LabelScans labels, Words words) {
        this.desk = desk;
        this.labels = labels;
        this.words = words;
    }

    /**
     * What the page shows next.
     *
     * @param said the form's fields
     * @param entered the same with what is wrong with them
     * @param isRefused whether the scan changed nothing
     */
    record Step(Map<String, String> said, Entered entered, boolean isRefused, Told told) {}

    /** Takes one scan; empty for the next free tag. */
    Step take(Map<String, String> said, Command.Header header) {
        String code = said.getOrDefault(FieldNames.CODE, "");
        boolean isOpen = !said.getOrDefault(LabelFields.SCAN, "").isBlank();
        boolean isField = isField(code, isOpen);
        if (!isField && !LabelScans.isLabel(code)) {
            return receive(said, header);
        } else if (Decoder.read(code).standing() == Standing.REFUSED) {
            Told told = new Told(false, words.text("stock.scan.no-label"), words.text("stock.scan.no-label.text"));
            return step(said, true, told);
        } else if (!isOpen || isField) {
            return step(filled(said, code, header), false, Told.NOTHING);
        }
        return receiveAndFill(said, code, header);
    }

    /** One field of a label by itself. A house may call an item Q25, so that is one only beside others. */
    private static boolean isField(String code, boolean isOpen) {
        String text = code.strip();
        boolean looksLikeOne =
                FIELD.matcher(text).matches() || (isOpen && PIECES.matcher(text).matches());
        return looksLikeOne && Decoder.read(text).standing() != Standing.REFUSED;
    }

    private Step step(Map<String, String> said, boolean isRefused, Told told) {
        return new Step(said, Entered.of(said, words.texts()), isRefused, told);
    }

    private Step receiveAndFill(Map<String, String> said, String code, Command.Header header) {
        Map<String, String> drawn = new HashMap<>(said);
        drawn.put(FieldNames.CODE, "");
        Step first = receive(drawn, header);
        if (first.isRefused()) {
            Told told = new Told(
                    false,
                    words.text("stock.delivery.first"),
                    first.told().text() + " " + words.text("stock.delivery.again"));
            return new Step(first.said(), first.entered(), true, told);
        }
        return step(filled(first.said(), code, header), false, first.told());
    }

    private Map<String, String> filled(Map<String, String> said, String code, Command.Header header) {
        String before = said.getOrDefault(LabelFields.SCAN, "").strip();
        String scan = (before + "\n" + Decoder.portable(code)).strip();
        Map<String, String> read = LabelFields.values(scan, labels.match(scan, header.happenedAt()));
        Map<String, String> next = new HashMap<>(said);
        boolean isOther = !said.getOrDefault(FieldNames.RECEIVED, "").isEmpty()
                && (LabelFields.lot(read).isEmpty()
                        || !LabelFields.lot(read).equals(said.getOrDefault(LOT_BEFORE, "")));
        if (before.isEmpty() && isOther) {
            OF_ONE_LOT.forEach(next::remove);
        }
        LabelFields.DOUBTS.forEach(next::remove);
        next.putAll(read);
        return next;
    }

    private Step receive(Map<String, String> said, Command.Header header) {
        Entered entered = Entered.of(said, words.texts());
        Optional<Command.Receive> command = read(entered, header);
        if (command.isEmpty()) {
            Told told = new Told(false, words.text("stock.delivery.not"), words.text("stock.delivery.see"));
            return new Step(said, entered, true, told);
        }
        return desk.handle(command.get(), header.happenedAt())
                .fold(receipt -> received(said, command.get(), receipt), refusals -> {
                    String why = String.join(" ", words.refusals(refusals));
                    return new Step(said, entered, true, new Told(false, words.text("stock.delivery.not"), why));
                });
    }

    private Step received(Map<String, String> said, Command.Receive command, Receipt receipt) {
        Command.Header header = command.header();
        String place = said.getOrDefault(FieldNames.PLACE, "");
        if (!receipt.repeated()) {
            labels.learn(command, receipt.tag(), header.happenedAt());
        }
        // A bag that was scanned twice was put there the first time.
        if (!place.isEmpty() && !receipt.repeated()) {
            Batch.move(desk, List.of(receipt.tag()), place, header);
        }
        List<String> tags = new ArrayList<>(Entered.of(said, words.texts()).all(FieldNames.RECEIVED));
        tags.remove(receipt.tag());
        tags.add(receipt.tag());
        Map<String, String> next = new HashMap<>(said);
        next.put(FieldNames.RECEIVED, String.join(",", tags));
        next.put(LOT_BEFORE, LabelFields.lot(said));
        LabelFields.OF_A_LABEL.forEach(next::remove);
        return step(next, false, new Told(true, words.text("stock.delivery.done", receipt.tag(), tags.size()), ""));
    }

    private static Optional<Command.Receive> read(Entered entered, Command.Header header) {
        String type = entered.required(FieldNames.TYPE);
        Optional<Integer> quantity = ActForm.quantity(entered);
        Optional<Instant> sealedAt = entered.pastTime(FieldNames.SEALED_AT, header.happenedAt());
        OptionalInt months = entered.text(FieldNames.MONTHS).isEmpty()
                ? OptionalInt.empty()
                : entered.count(FieldNames.MONTHS, 1, MOST_MONTHS)
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty());
        Optional<String> carrier = Optional.of(entered.text(FieldNames.CARRIER)).filter(name -> !name.isEmpty());
        Map<String, String> label = LabelFields.read(entered);
        if (entered.isRefused()) {
            return Optional.empty();
        }
        Origin origin = new Origin.DryPack(sealedAt.orElseThrow(), months);
        return Optional.of(new Command.Receive(
                header, entered.text(FieldNames.CODE), type, quantity.orElseThrow(), carrier, origin, label));
    }
}
