package bagclock.platform;

/** What was asked for does not exist: answered with 404. */
public final class NotThere extends RuntimeException {
    /** The message is for the log; the visitor reads the message bundle's words. */
    public NotThere(String message) {
        super(message);
    }
}
