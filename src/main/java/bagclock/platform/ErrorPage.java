package bagclock.platform;

/**
 * Says what went wrong and what to do now.
 *
 * @param status the HTTP status
 * @param explanation what happened, in words for the visitor
 * @param advice what mends it
 */
public record ErrorPage(int status, String title, String explanation, String advice) implements Page {
    @Override
    public String template() {
        return "platform/error.jte";
    }
}
