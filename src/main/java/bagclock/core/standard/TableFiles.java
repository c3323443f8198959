package bagclock.core.standard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** All files of one edition, read from the class path. */
final class TableFiles {
    private final Map<Table, Sheet> sheets;
    private final List<Source> sources;

    private TableFiles(Map<Table, Sheet> sheets, List<Source> sources) {
        this.sheets = sheets;
        this.sources = sources;
    }

    static TableFiles read(Edition edition) {
        Map<Table, Sheet> sheets = new EnumMap<>(Table.class);
        for (Table table : Table.values()) {
            sheets.put(table, Sheet.parse(table, lines(edition.file(table.fileName()))));
        }
        List<Source> sources = Sources.parse(lines(edition.file(Sources.FILE)));
        Set<String> ids = sources.stream().map(Source::id).collect(Collectors.toSet());
        sheets.values().forEach(sheet -> sheet.requireSources(ids));
        return new TableFiles(sheets, sources);
    }

    private static List<String> lines(String file) {
        try (InputStream stream = TableFiles.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new BrokenTable(file, 1, "no such file");
            }
            return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(file, failure);
        }
    }

    /** Refuses with {@link IllegalArgumentException} a site value for a cell that is not there. */
    TableFiles with(SiteValues site) {
        Set<CellKey> known = cells().stream().map(Cell::key).collect(Collectors.toSet());
        for (CellKey key : site.keys()) {
            if (!known.contains(key)) {
                throw new IllegalArgumentException("no such cell: " + key);
            }
        }
        Map<Table, Sheet> changed = new EnumMap<>(Table.class);
        sheets.forEach((table, sheet) -> changed.put(table, sheet.with(site)));
        return new TableFiles(changed, sources);
    }

    Sheet sheet(Table table) {
        Sheet sheet = sheets.get(table);
        if (sheet == null) {
            throw new IllegalArgumentException("no table " + table);
        }
        return sheet;
    }

    List<Cell> cells() {
        return sheets.values().stream().flatMap(sheet -> sheet.cells().stream()).toList();
    }

    List<Source> sources() {
        return sources;
    }
}
