package bagclock.boards;

import bagclock.platform.Page;

/**
 * A page with one form.
 *
 * @param back address of the page it belongs to
 * @param refusal why it was not taken; empty for no reason
 */
public record FormPage(String title, String lead, String back, String backText, String refusal, FormPart form)
        implements Page {
    @Override
    public String template() {
        return "boards/form.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
