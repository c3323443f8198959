package bagclock.platform;

import org.jspecify.annotations.Nullable;

/**
 * The heading of a column that sorts its table: a link, since the order is part of the page's address.
 *
 * @param href the address with the order that the link asks for
 * @param sorted "ascending" or "descending" when the table is in this column's order, else null
 */
public record Heading(String label, String href, @Nullable String sorted) {}
