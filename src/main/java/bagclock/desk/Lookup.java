package bagclock.desk;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.Zone;
import bagclock.core.standard.CarrierLimit;
import bagclock.ledger.Act;
import bagclock.ledger.Draft;
import bagclock.ledger.Item;
import bagclock.ledger.Ledger;
import bagclock.ledger.Notes;
import bagclock.platform.Transaction;
import bagclock.register.CarrierKind;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds what a command names, and collects every reason why it can't be taken. For one command. */
final class Lookup {
    private static final Pattern TAG = Pattern.compile("[A-Za-z0-9._-]{1,40}");
    private static final int LONGEST_TEXT = 400;

    private final Transaction tx;
    private final Register register;
    private final Ledger ledger;
    private final Instant now;
    private final List<Refusal> refusals = new ArrayList<>();
    private final Map<String, String> notes = new HashMap<>();

    Lookup(Transaction tx, Register register, Ledger ledger, Instant now) {
        this.tx = tx;
        this.register = register;
        this.ledger = ledger;
        this.now = now;
    }

    void refuse(Reason reason, Object... parts) {
        refusals.add(Refusal.of(reason, parts));
    }

    List<Refusal> refusals() {
        return refusals;
    }

    Instant now() {
        return now;
    }

    Optional<Item> item(String tag) {
        Optional<Item> item = ledger.item(tx, tag);
        if (item.isEmpty()) {
            refuse(Reason.ITEM_UNKNOWN, tag);
        }
        return item;
    }

    Optional<PartType> partType(String number) {
        Optional<PartType> type = register.partType(tx, number, now).map(Versioned::fact);
        if (type.isEmpty()) {
            refuse(Reason.PART_TYPE_UNKNOWN, number);
        }
        return type;
    }

    Optional<KnownPlace> place(String code) {
        Optional<KnownPlace> place = register.place(tx, code, now).map(Versioned::fact);
        if (place.isEmpty()) {
            refuse(Reason.PLACE_UNKNOWN, code);
        }
        place.ifPresent(known -> note(Notes.PLACE, known.code()));
        return place;
    }

    Optional<Zone> zone(String code) {
        Optional<KnownPlace> place = place(code);
        if (place.isPresent() && !(place.get() instanceof KnownPlace.FloorZone)) {
            refuse(Reason.NOT_A_ZONE, code);
        }
        return place.map(KnownPlace::zone);
    }

    Optional<Zone> zone(Optional<String> code) {
        return code.flatMap(this::zone);
    }

    Optional<KnownPlace.BakeOven> oven(String code) {
        Optional<KnownPlace> place = place(code);
        if (place.isPresent() && !(place.get() instanceof KnownPlace.BakeOven)) {
            refuse(Reason.NOT_AN_OVEN, code);
            return Optional.empty();
        }
        return place.map(known -> (KnownPlace.BakeOven) known);
    }

    CarrierLimit carrier(String name) {
        Optional<CarrierKind> carrier = register.carrier(tx, name, now).map(Versioned::fact);
        if (carrier.isEmpty()) {
            refuse(Reason.CARRIER_UNKNOWN, name);
        }
        note(Notes.CARRIER, name);
        return carrier.map(CarrierKind::limit).orElse(new CarrierLimit.Unknown());
    }

    void positive(long quantity) {
        if (quantity <= 0) {
            refuse(Reason.QUANTITY_NOT_POSITIVE, quantity);
        }
    }

    void text(String field, String text) {
        if (text.isBlank() || text.length() > LONGEST_TEXT) {
            refuse(Reason.TEXT_MISSING, field);
        }
        note(field, text);
    }

    void note(String name, String text) {
        notes.put(name, text);
    }

    /** The tag itself if it is free, else refused; a free one for an empty text. */
    String freshTag(String tag) {
        if (tag.isEmpty()) {
            return ledger.freeTag(tx);
        } else if (!TAG.matcher(tag).matches()) {
            refuse(Reason.TAG_MALFORMED, tag);
        } else if (ledger.item(tx, tag).isPresent()) {
            refuse(Reason.TAG_TAKEN, tag);
        }
        return tag;
    }

    /** The plan to write this event, or every reason noted so far. */
    Plan plan(Command command, Event event) {
        return plan(new Draft(command.tag(), event.at(), new Act.Happened(event, notes)));
    }

    Plan plan(Draft... drafts) {
        return refusals.isEmpty() ? Plan.of(drafts) : Plan.refused(refusals);
    }

    Map<String, String> notes() {
        return notes;
    }
}
