package bagclock.register;

import bagclock.core.standard.CellKey;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What is known, by version. Each {@code add} keeps what was there and throws {@link ChangedMeanwhile} when the change
 * rests on a version that is no longer the newest. A question about a moment takes the version that held then.
 */
public final class Register {
    private final FactStore<PartTypeRow> partTypes =
            new FactStore<>("part_type_fact", "part_number", PartTypeRow.class);
    private final FactStore<PlaceRow> places = new FactStore<>("place_fact", "code", PlaceRow.class);
    private final FactStore<CarrierRow> carriers = new FactStore<>("carrier_fact", "name", CarrierRow.class);
    private final FactStore<LabelNameRow> labelNames =
            new FactStore<>("label_name_fact", "label_number", LabelNameRow.class);
    private final HouseRulesStore rules = new HouseRulesStore();
    private final ComparedCellStore cells = new ComparedCellStore();
    private final CalibrationStore calibrations = new CalibrationStore();
    private final HouseCustomsStore customs = new HouseCustomsStore();

    /** A new part type, or a new version of one. */
    public void add(Transaction tx, PartType type, Change change) {
        Version version = change.version();
        partTypes.add(tx, PartTypeRow.of(type, version), type.number(), version.number());
    }

    /** A new place, or a new version of one. */
    public void add(Transaction tx, KnownPlace place, Change change) {
        Version version = change.version();
        places.add(tx, PlaceRow.of(place, version), place.code(), version.number());
    }

    /** A new carrier, or a new version of one. */
    public void add(Transaction tx, CarrierKind carrier, Change change) {
        Version version = change.version();
        carriers.add(tx, CarrierRow.of(carrier, version), carrier.name(), version.number());
    }

    /** What a label calls a part type, or a new version of it. */
    public void add(Transaction tx, LabelName name, Change change) {
        Version version = change.version();
        labelNames.add(tx, LabelNameRow.of(name, version), name.labelNumber(), version.number());
    }

    /** The part type that a label's number means. */
    public Optional<Versioned<LabelName>> labelName(Transaction tx, String labelNumber, Instant moment) {
        return labelNames.at(tx, labelNumber, moment).map(LabelNameRow::fact);
    }

    /** The site's rules from a moment on. */
    public void add(Transaction tx, HouseRules houseRules, Change change) {
        rules.add(tx, houseRules, change.version());
    }

    /** The site's customs from a moment on. */
    public void add(Transaction tx, HouseCustoms houseCustoms, Change change) {
        customs.add(tx, houseCustoms, change.version());
    }

    /** The site's customs; version 0 with the usual ones as long as nobody has decided. */
    public Versioned<HouseCustoms> houseCustoms(Transaction tx, Instant moment) {
        return customs.at(tx, moment)
                .map(HouseCustomsStore.Row::fact)
                .orElseGet(() -> new Versioned<>(HouseCustoms.USUAL, new Version(0, Instant.EPOCH, Instant.EPOCH, "")));
    }

    /** When a logger or an oven must be calibrated again, from now on. */
    public void add(Transaction tx, Calibration calibration, Change change) {
        calibrations.add(tx, calibration, change);
    }

    /** Every calibration as it was told last, by kind and name. */
    public List<Calibration> calibrations(Transaction tx) {
        return calibrations.all(tx).stream().map(CalibrationStore.Row::fact).toList();
    }

    /** The part type with this number. */
    public Optional<Versioned<PartType>> partType(Transaction tx, String number, Instant moment) {
        return partTypes.at(tx, number, moment).map(PartTypeRow::fact);
    }

    /** Every part type, by number. */
    public List<Versioned<PartType>> partTypes(Transaction tx, Instant moment) {
        return partTypes.allAt(tx, moment).stream().map(PartTypeRow::fact).toList();
    }

    /** Every version of a part type, newest first. */
    public List<Versioned<PartType>> partTypeVersions(Transaction tx, String number) {
        return partTypes.versions(tx, number).stream().map(PartTypeRow::fact).toList();
    }

    /** The place with this code. */
    public Optional<Versioned<KnownPlace>> place(Transaction tx, String code, Instant moment) {
        return places.at(tx, code, moment).map(PlaceRow::fact);
    }

    /** Every place, by name. */
    public List<Versioned<KnownPlace>> places(Transaction tx, Instant moment) {
        return places.allAt(tx, moment).stream().map(PlaceRow::fact).toList();
    }

    /** Every place of one kind, by name. */
    public <T extends KnownPlace> List<T> places(Transaction tx, Class<T> kind, Instant moment) {
        return places(tx, moment).stream()
                .map(Versioned::fact)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** Every version of a place, newest first. */
    public List<Versioned<KnownPlace>> placeVersions(Transaction tx, String code) {
        return places.versions(tx, code).stream().map(PlaceRow::fact).toList();
    }

    /** The carrier with this name. */
    public Optional<Versioned<CarrierKind>> carrier(Transaction tx, String name, Instant moment) {
        return carriers.at(tx, name, moment).map(CarrierRow::fact);
    }

    /** Every carrier, by name. */
    public List<Versioned<CarrierKind>> carriers(Transaction tx, Instant moment) {
        return carriers.allAt(tx, moment).stream().map(CarrierRow::fact).toList();
    }

    /** The site's rules; version 0 with the usual ones as long as nobody has decided. */
    public Versioned<HouseRules> houseRules(Transaction tx, Instant moment) {
        return rules.at(tx, moment)
                .map(HouseRulesStore.Row::fact)
                .orElseGet(() -> new Versioned<>(HouseRules.USUAL, new Version(0, Instant.EPOCH, Instant.EPOCH, "")));
    }

    /** Every version of the site's rules, newest first. */
    public List<Versioned<HouseRules>> houseRulesVersions(Transaction tx) {
        return rules.versions(tx).stream().map(HouseRulesStore.Row::fact).toList();
    }

    /** Cells compared with a copy of the standard; at least one, each once. */
    public void add(Transaction tx, List<ComparedCell> compared, Change change) {
        cells.add(tx, compared, change.version());
    }

    /** The newest comparison of table cells; empty as long as nobody has compared any. */
    public Optional<Version> comparison(Transaction tx, Instant moment) {
        return cells.versionAt(tx, moment);
    }

    /** Of every cell that was ever compared its newest comparison, in no order. */
    public List<Versioned<ComparedCell>> comparedCells(Transaction tx, Instant moment) {
        return comparison(tx, moment)
                .map(version -> cells.cells(tx, version.number()))
                .orElse(List.of());
    }

    /** Every comparison of one cell, newest first. */
    public List<Versioned<ComparedCell>> comparisonsOf(Transaction tx, CellKey key) {
        return cells.versions(tx, key);
    }
}
