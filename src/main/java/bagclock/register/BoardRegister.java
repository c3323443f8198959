package bagclock.register;

import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What is known of boards, by version; kept as {@link Register} keeps its facts. */
public final class BoardRegister {
    private final FactStore<BoardTypeRow> types = new FactStore<>("board_type_fact", "number", BoardTypeRow.class);
    private final FactStore<BoardRow> boards = new FactStore<>("board_fact", "serial", BoardRow.class);
    private final FactStore<HeatProfileRow> profiles = new FactStore<>("heat_profile_fact", "id", HeatProfileRow.class);
    private final FactStore<BoardRulesRow> rules = new FactStore<>("board_rules_fact", "id", BoardRulesRow.class);

    /** A new board type, or a new version of one. */
    public void add(Transaction tx, BoardType type, Change change) {
        Version version = change.version();
        types.add(tx, BoardTypeRow.of(type, version), type.number(), version.number());
    }

    /** A new board, or a new version of one. */
    public void add(Transaction tx, KnownBoard board, Change change) {
        Version version = change.version();
        boards.add(tx, BoardRow.of(board, version), board.serial(), version.number());
    }

    /** A new heat profile, or a new version of one. */
    public void add(Transaction tx, HeatProfile profile, Change change) {
        Version version = change.version();
        profiles.add(tx, HeatProfileRow.of(profile, version), profile.id(), version.number());
    }

    /** The site's rules for boards from a moment on. */
    public void add(Transaction tx, BoardRules boardRules, Change change) {
        Version version = change.version();
        rules.add(tx, BoardRulesRow.of(boardRules, version), BoardRulesRow.ID, version.number());
    }

    /** The board type with this number. */
    public Optional<Versioned<BoardType>> type(Transaction tx, String number, Instant moment) {
        return types.at(tx, number, moment).map(BoardTypeRow::fact);
    }

    /** Every board type, by number. */
    public List<Versioned<BoardType>> types(Transaction tx, Instant moment) {
        return types.allAt(tx, moment).stream().map(BoardTypeRow::fact).toList();
    }

    /** The board with this serial number. */
    public Optional<Versioned<KnownBoard>> board(Transaction tx, String serial, Instant moment) {
        return boards.at(tx, serial, moment).map(BoardRow::fact);
    }

    /** Every board, by serial number. */
    public List<Versioned<KnownBoard>> boards(Transaction tx, Instant moment) {
        return boards.allAt(tx, moment).stream().map(BoardRow::fact).toList();
    }

    /** The heat profile with this id. */
    public Optional<Versioned<HeatProfile>> profile(Transaction tx, String id, Instant moment) {
        return profiles.at(tx, id, moment).map(HeatProfileRow::fact);
    }

    /** Every heat profile of a board type, by id. */
    public List<Versioned<HeatProfile>> profiles(Transaction tx, String boardType, Instant moment) {
        return profiles.allAt(tx, moment).stream()
                .map(HeatProfileRow::fact)
                .filter(profile -> profile.fact().boardType().equals(boardType))
                .toList();
    }

    /** The site's rules for boards; version 0 with the usual ones as long as nobody has decided. */
    public Versioned<BoardRules> rules(Transaction tx, Instant moment) {
        return rules.at(tx, BoardRulesRow.ID, moment)
                .map(BoardRulesRow::fact)
                .orElseGet(() -> new Versioned<>(BoardRules.USUAL, new Version(0, Instant.EPOCH, Instant.EPOCH, "")));
    }
}
