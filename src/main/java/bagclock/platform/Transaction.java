package bagclock.platform;

import org.jdbi.v3.core.Handle;

/**
 * One open unit of work. Rooms hand it on so that several stores write together; only a store looks inside.
 *
 * @param handle valid until the work returns, for one thread
 */
public record Transaction(Handle handle) {}
