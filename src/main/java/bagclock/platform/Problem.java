package bagclock.platform;

import io.javalin.http.Context;
import java.util.List;

/**
 * Problem details after RFC 9457, for callers of the API.
 *
 * @param type about:blank: the title says what the status means
 * @param refusals one for each reason of a refused command; else empty
 */
public record Problem(String type, String title, int status, String detail, List<Line> refusals) {
    /**
     * One refusal.
     *
     * @param reason its stable code
     * @param text its words
     */
    public record Line(String reason, String text) {}

    /** A problem without refusals. */
    public static Problem of(int status, String title, String detail) {
        return new Problem("about:blank", title, status, detail, List.of());
    }

    /** Answers with this problem. */
    public void answer(Context ctx) {
        ctx.status(status).json(this).contentType("application/problem+json");
    }
}
