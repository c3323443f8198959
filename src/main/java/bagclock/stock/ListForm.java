package bagclock.stock;

import bagclock.desk.ItemQuery;
import bagclock.desk.ItemQuery.Sort;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/**
 * What a list of items is asked for, as its address says it; what can't be read counts as not asked.
 *
 * @param within hours, or empty text for all
 */
record ListForm(String text, String place, String within, Sort sort, boolean descending, int page) {
    static final int PAGE_SIZE = 50;
    private static final int LAST_PAGE = 100_000;

    static ListForm of(Context ctx) {
        String within = query(ctx, "within");
        return new ListForm(
                query(ctx, "text"),
                query(ctx, "place"),
                within.matches("\\d{1,4}") ? within : "",
                sort(query(ctx, "sort"), within.isEmpty() ? Sort.TAG : Sort.ENDS_AT),
                query(ctx, "down").equals("1"),
                page(query(ctx, "page")));
    }

    private static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
    }

    private static Sort sort(String name, Sort usual) {
        return Arrays.stream(Sort.values())
                .filter(sort -> sort.name().equals(name))
                .findFirst()
                .orElse(usual);
    }

    private static int page(String text) {
        return text.matches("\\d{1,6}") ? Math.min(LAST_PAGE, Integer.parseInt(text)) : 0;
    }

    ItemQuery query() {
        return new ItemQuery(
                text,
                java.util.Set.of(),
                Optional.of(place).filter(code -> !code.isEmpty()),
                Optional.of(within)
                        .filter(hours -> !hours.isEmpty())
                        .map(hours -> Duration.ofHours(Long.parseLong(hours))),
                sort,
                descending,
                page,
                PAGE_SIZE);
    }

    ListForm sortedBy(Sort other) {
        return new ListForm(text, place, within, other, other == sort && !descending, 0);
    }

    ListForm onPage(int number) {
        return new ListForm(text, place, within, sort, descending, number);
    }

    String href() {
        return "/items?text=" + encoded(text) + "&place=" + encoded(place) + "&within=" + within + "&sort="
                + sort.name() + (descending ? "&down=1" : "") + (page > 0 ? "&page=" + page : "");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
