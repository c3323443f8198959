package bagclock.platform;

import io.javalin.security.RouteRole;

/** Stands beside a route's roles. It is no role and lets nobody in. */
public enum Harmless implements RouteRole {
    /** A call of the API that changes nothing whoever sends it, so that it needs no form token. */
    CHANGES_NOTHING
}
