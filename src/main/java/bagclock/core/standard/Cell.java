package bagclock.core.standard;

/**
 * One cell as it stands in a table.
 *
 * @param value as written in the file, in the table's own unit, such as {@code 8 d} or {@code unlimited}
 */
public record Cell(Table table, String value, Citation citation) {
    /** Names it in every edition. */
    public CellKey key() {
        return new CellKey(table, citation.row(), citation.column());
    }

    Cell with(SiteValue site) {
        return new Cell(
                table,
                site.value(),
                new Citation(
                        citation.document(),
                        citation.table(),
                        citation.row(),
                        citation.column(),
                        Status.SITE,
                        site.by() + ", " + site.on()));
    }
}
