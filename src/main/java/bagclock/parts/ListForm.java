package bagclock.parts;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** What a list of part types is asked for, as its address says it; what can't be read counts as not asked. */
record ListForm(String text, String level, Sort sort, boolean descending, int page) {
    static final int PAGE_SIZE = 50;
    static final String UNKNOWN = "unknown";

    private static final int LAST_PAGE = 100_000;

    /** What the list is sorted by. */
    enum Sort {
        NUMBER,
        MAKER,
        CHANGED
    }

    static ListForm of(Context ctx) {
        String page = query(ctx, "page");
        return new ListForm(
                query(ctx, "text"),
                query(ctx, "level"),
                Arrays.stream(Sort.values())
                        .filter(sort -> sort.name().equals(query(ctx, "sort")))
                        .findFirst()
                        .orElse(Sort.NUMBER),
                query(ctx, "down").equals("1"),
                page.matches("\\d{1,6}") ? Math.min(LAST_PAGE, Integer.parseInt(page)) : 0);
    }

    private static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
    }

    ListForm sortedBy(Sort other) {
        return new ListForm(text, level, other, other == sort && !descending, 0);
    }

    ListForm onPage(int number) {
        return new ListForm(text, level, sort, descending, number);
    }

    String href(String path) {
        return path + "?text=" + URLEncoder.encode(text, StandardCharsets.UTF_8) + "&level="
                + URLEncoder.encode(level, StandardCharsets.UTF_8) + "&sort=" + sort.name()
                + (descending ? "&down=1" : "") + (page > 0 ? "&page=" + page : "");
    }
}
