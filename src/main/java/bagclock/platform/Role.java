package bagclock.platform;

import io.javalin.security.RouteRole;

/**
 * What a person may do. Every route names the roles that may use it; a person may have several.
 *
 * <p>The words stand in the message bundle under {@code role.<name>}.
 */
public enum Role implements RouteRole {
    /** No sign-in is asked for. */
    ANYONE,
    /** Receives, opens, moves and labels in the stockroom. */
    CLERK,
    /** Asks before heating at the bench and records the heat. */
    TECHNICIAN,
    /** Fills the ovens. */
    PLANNER,
    /** Keeps part types, site rules and heat profiles; decides on holds. */
    ENGINEER,
    /** Keeps accounts and settings. */
    ADMINISTRATOR;

    /** The roles that a person can have: a route with all of them is open to whoever is signed in. */
    public static Role[] signedIn() {
        return new Role[] {CLERK, TECHNICIAN, PLANNER, ENGINEER, ADMINISTRATOR};
    }
}
