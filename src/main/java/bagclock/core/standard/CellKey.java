package bagclock.core.standard;

/** Names a cell in every edition: its table, row and column as citations print them. */
public record CellKey(Table table, String row, String column) {}
