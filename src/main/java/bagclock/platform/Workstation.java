package bagclock.platform;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/**
 * What a browser keeps for its workstation, whoever is signed in: what the scanner there means by the characters that
 * its keyboard layout types. Pages carry it to their script, which puts right what was scanned and nothing that was
 * typed.
 */
public final class Workstation {
    private static final String COOKIE = "workstation";
    private static final int LONGEST = 400;
    private static final int DAYS = 400;
    private static final int SECONDS_IN_DAY = 86_400;

    private Workstation() {}

    /** All characters that arrive, then what each means; empty for none. */
    public static String scannerMap(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE))
                .flatMap(Workstation::decoded)
                .orElse("");
    }

    /** Keeps a map for as long as browsers allow. */
    public static void keep(Context ctx, String map) {
        give(ctx, Base64.getUrlEncoder().withoutPadding().encodeToString(map.getBytes(StandardCharsets.UTF_8)), DAYS);
    }

    /** Forgets it. */
    public static void forget(Context ctx) {
        give(ctx, "", 0);
    }

    private static void give(Context ctx, String value, int days) {
        int age = days * SECONDS_IN_DAY;
        ctx.cookie(new Cookie(COOKIE, value, "/", age, Gate.isSecure(ctx), true, null, SameSite.LAX));
    }

    private static Optional<String> decoded(String cookie) {
        try {
            String map = new String(Base64.getUrlDecoder().decode(cookie), StandardCharsets.UTF_8);
            boolean isOne = map.length() <= LONGEST
                    && map.length() % 2 == 0
                    && map.chars().noneMatch(Character::isISOControl)
                    && map.chars().limit(map.length() / 2).distinct().count() == map.length() / 2;
            return isOne ? Optional.of(map) : Optional.empty();
        } catch (IllegalArgumentException foreign) {
            return Optional.empty();
        }
    }
}
