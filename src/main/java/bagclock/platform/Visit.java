package bagclock.platform;

import io.javalin.http.Context;
import java.util.Optional;

/**
 * One request's visitor: who it is, the workstation's scanner, and the token that the visitor's forms must carry. The sign-in feature attaches it
 * before any route runs; without one the visitor is nobody.
 *
 * @param csrfToken empty as long as there is no session
 * @param scannerMap see {@link Workstation#scannerMap}
 */
public record Visit(Optional<Person> person, String csrfToken, String scannerMap) {
    private static final String ATTRIBUTE = "bagclock.visit";

    /** The visit that was attached to the request, or nobody's. */
    public static Visit of(Context ctx) {
        Visit visit = ctx.attribute(ATTRIBUTE);
        return visit == null ? new Visit(Optional.empty(), "", "") : visit;
    }

    /** Attaches this visit to the request. */
    public void attachTo(Context ctx) {
        ctx.attribute(ATTRIBUTE, this);
    }

    /** The person, for a route that asks for a role; refused with 403 when there is none. */
    public Person signedIn() {
        return person.orElseThrow(() -> new NotAllowed("nobody is signed in"));
    }
}
