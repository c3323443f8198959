package bagclock.platform;

/**
 * Finished values and texts for one template. A feature's page is a record {@code <Noun>Page} that implements this; its
 * template {@code templates/<feature>/<noun>.jte} takes two parameters, {@code Chrome chrome} and the page.
 */
public interface Page {
    /** The template's path under {@code templates}, such as {@code stock/item.jte}. */
    String template();

    /** The words in the browser's title bar. */
    String title();

    /** The front door that the page lies behind: {@code stock}, {@code bench}, {@code ovens}, or empty. */
    default String frontDoor() {
        return "";
    }
}
