package bagclock.desk;

import java.util.List;

/**
 * One page of a list.
 *
 * @param total how many there are on all pages
 */
public record ItemPage(List<ItemRow> rows, long total) {}
