package bagclock.platform;

/** The person may not do this: answered with 403. */
public final class NotAllowed extends RuntimeException {
    /** The message is for the log; the visitor reads the message bundle's words. */
    public NotAllowed(String message) {
        super(message);
    }
}
