package bagclock.stock;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Body;
import bagclock.core.standard.Level;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.ledger.Notes;
import bagclock.register.Change;
import bagclock.register.LabelName;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import bagclock.scan.Decoder;
import bagclock.scan.Fact;
import bagclock.scan.Known;
import bagclock.scan.Reading;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Labels that are read at a receipt, and what the house learns from them. */
final class LabelScans {
    private static final int LONGEST_CODE = 40;

    private final Desk desk;
    private final ScanStore store;

    LabelScans(Desk desk, ScanStore store) {
        this.desk = desk;
        this.store = store;
    }

    /** Longer than any tag, or with controls: no code of the house. */
    static boolean isLabel(String raw) {
        return raw.length() > LONGEST_CODE || raw.strip().chars().anyMatch(Character::isISOControl);
    }

    /** What the codes of one label say, one code a line. */
    LabelMatch match(String scan, Instant now) {
        Reading reading = Decoder.readAll(scan).against(new House(store, now));
        Optional<PartType> type = LabelMatch.number(reading)
                .flatMap(number -> store.type(number, now))
                .map(Versioned::fact);
        String before = LabelMatch.number(reading)
                .flatMap(number -> reading.only(Fact.PACKAGE).flatMap(one -> store.ofPackage(number, one)))
                .orElse("");
        return new LabelMatch(reading, type, before);
    }

    private record House(ScanStore store, Instant now) implements Known {
        @Override
        public boolean isPart(String partNumber) {
            return store.type(partNumber, now).isPresent();
        }

        @Override
        public boolean isLot(String partNumber, String lot) {
            return store.isLot(partNumber, lot);
        }

        @Override
        public Optional<String> level(String partNumber) {
            return store.type(partNumber, now)
                    .map(Versioned::fact)
                    .flatMap(StricterLevel::of)
                    .map(Level::code);
        }

        @Override
        public boolean isPeak(String partNumber, String peak) {
            return store.type(partNumber, now).map(Versioned::fact).stream()
                    .flatMap(type -> StricterPeak.of(type).stream())
                    .anyMatch(known -> known.degrees() == Double.parseDouble(peak));
        }

        @Override
        public boolean isPackage(String partNumber, String number) {
            return store.ofPackage(partNumber, number).isPresent();
        }
    }

    /**
     * Learns from a receipt that was written down: what the label calls the part type, its lot and package, and a level or
     * a peak that differs.
     *
     * @param tag of the item that was received
     */
    void learn(Command.Receive receive, String tag, Instant now) {
        String number = receive.label().getOrDefault(Notes.LABEL_PART, "");
        String lot = receive.label().getOrDefault(Notes.LOT, "");
        if (!number.isEmpty()) {
            learnName(number, receive, now);
        }
        if (!number.isEmpty() && !lot.isEmpty()) {
            store.keepLot(number, lot, now);
        }
        String one = receive.label().getOrDefault(Notes.LABEL_PACKAGE, "");
        if (!number.isEmpty() && !one.isEmpty()) {
            store.keepPackage(number, one, tag, now);
        }
        compare(receive, tag, now);
    }

    private void learnName(String number, Command.Receive receive, Instant now) {
        Optional<Versioned<LabelName>> before = store.name(number, now);
        String known = before.map(name -> name.fact().partNumber()).orElse(number);
        if (!known.equals(receive.partNumber())) {
            int basedOn = before.map(name -> name.version().number()).orElse(0);
            store.keep(
                    new LabelName(number, receive.partNumber()),
                    new Change(now, now, receive.header().who(), basedOn));
        }
    }

    /** Level and peak of the label against the part type's. */
    private void compare(Command.Receive receive, String tag, Instant now) {
        Versioned<PartType> known = store.partType(receive.partNumber(), now).orElseThrow();
        PartType type = known.fact();
        String knownLevel = StricterLevel.of(type).map(Level::code).orElse("");
        String level = Optional.of(receive.label().getOrDefault(Notes.LABEL_LEVEL, ""))
                .filter(text -> !text.equals(knownLevel))
                .orElse("");
        List<Celsius> peaks = LabelFields.peaks(receive.label()).stream()
                .filter(peak -> !StricterPeak.of(type).contains(peak))
                .toList();
        if (level.isEmpty() && peaks.isEmpty()) {
            return;
        }
        PartType.Source source = new PartType.Source(tag, said(level, peaks));
        Optional<PartType> raised = Level.parse(level).flatMap(one -> StricterLevel.raised(type, one, source));
        Optional<PartType> lowered = peaks.stream()
                .findFirst()
                .flatMap(peak -> StricterPeak.lowered(raised.orElse(type), peak, byBody(type, now), source));
        String who = receive.header().who();
        lowered.or(() -> raised)
                .ifPresent(stricter -> desk.keep(
                        stricter, new Change(now, now, who, known.version().number())));
        store.keep(new ScanStore.Difference(
                tag,
                receive.label().getOrDefault(Notes.LABEL_PART, ""),
                receive.partNumber(),
                level,
                knownLevel,
                raised.isPresent(),
                LabelFields.text(peaks),
                LabelFields.text(StricterPeak.of(type)),
                lowered.isPresent(),
                now,
                who,
                null));
    }

    private static String said(String level, List<Celsius> peaks) {
        return (level + " " + LabelFields.text(peaks)).strip();
    }

    private Celsius byBody(PartType type, Instant now) {
        Body body = type.part().body();
        return desk.standard(now)
                .classification(body.leadFree(), body.thickness(), body.volumeMm3())
                .value();
    }
}
