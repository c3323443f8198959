package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * What arrives from a scanner, and how to set it.
 *
 * @param arrived the last scan with its controls visible; empty for none yet
 * @param keys the keys that it came as
 * @param doubts what is odd about it
 */
public record ScannerPage(String title, String arrived, String keys, List<String> doubts) implements Page {
    @Override
    public String template() {
        return "stock/scanner.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
