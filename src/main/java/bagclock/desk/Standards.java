package bagclock.desk;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.SiteLimits;
import bagclock.core.standard.SiteValue;
import bagclock.core.standard.SiteValues;
import bagclock.core.standard.Standard;
import bagclock.platform.Transaction;
import bagclock.register.BoardRegister;
import bagclock.register.BoardRules;
import bagclock.register.ComparedCell;
import bagclock.register.Register;
import bagclock.register.Version;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * The tables that count at a moment. Laid out once for each comparison; which one is the newest is asked of the database
 * each time, since another node may have written it.
 */
final class Standards {
    private static final int MOST_KEPT = 16;

    private final Standard shipped;
    private final Register register;
    private final BoardRegister boards = new BoardRegister();

    /** By the whole version, not its number alone: a number that was rolled back is given out again. */
    private final Map<Version, Standard> laidOut = new ConcurrentHashMap<>();

    Standards(Standard shipped, Register register) {
        this.shipped = shipped;
        this.register = register;
    }

    /** With the site's own limits, as answers take them. */
    Standard at(Transaction tx, Instant moment) {
        SiteLimits limits = rules(tx, moment).fact().limits();
        Standard tables = tables(tx, moment);
        return limits.equals(tables.limits()) ? tables : tables.within(limits);
    }

    private Versioned<BoardRules> rules(Transaction tx, Instant moment) {
        return boards.rules(tx, moment);
    }

    /** Without them: no clock asks for a limit. */
    Standard tables(Transaction tx, Instant moment) {
        Optional<Version> version = register.comparison(tx, moment);
        return version.isEmpty() ? shipped : laidOut(tx, version.get(), moment);
    }

    private Standard laidOut(Transaction tx, Version version, Instant moment) {
        Standard known = laidOut.get(version);
        if (known != null) {
            return known;
        }
        List<SiteValue> values = register.comparedCells(tx, moment).stream()
                .flatMap(cell -> cell.fact().siteValue().stream())
                .toList();
        Standard fresh = shipped.with(SiteValues.of(values));
        if (laidOut.size() >= MOST_KEPT) {
            laidOut.clear();
        }
        laidOut.put(version, fresh);
        return fresh;
    }

    /** Names the tables that count, for what is kept of an answer. */
    String version(Transaction tx, Instant moment) {
        Versioned<BoardRules> rules = rules(tx, moment);
        boolean stricter = !rules.fact().limits().equals(SiteLimits.RULES);
        return shipped.edition()
                + register.comparison(tx, moment)
                        .map(version -> " compared " + version.number())
                        .orElse("")
                + (stricter ? " limits " + rules.version().number() : "");
    }

    /** Whether some cell would have another value than now. */
    boolean differs(Transaction tx, List<ComparedCell> compared, Instant moment) {
        Map<CellKey, String> now = texts(tables(tx, moment));
        Map<CellKey, String> before = texts(shipped);
        return compared.stream()
                .anyMatch(cell -> !cell.value()
                        .orElse(before.getOrDefault(cell.key(), ""))
                        .equals(now.get(cell.key())));
    }

    private static Map<CellKey, String> texts(Standard standard) {
        return standard.cells().stream().collect(Collectors.toMap(Cell::key, Cell::value));
    }
}
