package bagclock.platform;

/** Someone else was faster, and what was sent rests on an older state: answered with 409. */
public final class ChangedMeanwhile extends RuntimeException {
    /** The message is for the log; the visitor reads the message bundle's words. */
    public ChangedMeanwhile(String message) {
        super(message);
    }
}
