package bagclock.core.standard;

/**
 * Where a value stands.
 *
 * @param document standard and edition, such as {@code J-STD-033D (2018)}
 * @param table such as {@code table 7-1}
 * @param row row as the table names it, such as {@code >=3.1 mm, level 3}
 * @param column column as the table names it, such as {@code 30 C, 60 %RH}
 * @param sources ids in {@link Source}, joined by {@code +}; empty for a value from memory without any; for a site's
 *     own value the engineer's name and the date
 */
public record Citation(String document, String table, String row, String column, Status status, String sources) {}
