package bagclock.boards;

import bagclock.platform.Entered;

/** What each form of a board sends beside its fields: the newest entry that its page showed, and a key of its own. */
final class Sending {
    private static final int LONGEST_KEY = 60;

    private Sending() {}

    /** Number of the newest entry that the page showed; 0 for none. */
    static int seen(Entered sent) {
        return number(sent.text(JobForms.SEEN));
    }

    /** Whether it has a key, so that it counts once however often it arrives. */
    static boolean hasKey(Entered sent) {
        String key = sent.text(JobForms.KEY);
        return !key.isEmpty() && key.length() <= LONGEST_KEY;
    }

    /** Number of an entry or a job as an address or a form names it; 0, which none has, for anything else. */
    static int number(String text) {
        return text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
    }
}
