package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * What arrives from a scanner, how to set it, and what this workstation puts right.
 *
 * @param arrived the last scan with its controls visible; empty for none yet
 * @param keys the keys that it came as
 * @param told what is odd about it
 * @param isKeepable whether it was a test code from which something can be kept
 * @param kept which characters this workstation takes for others, in words; empty for none
 */
public record ScannerPage(String title, String arrived, String keys, List<String> told, boolean isKeepable, String kept)
        implements Page {
    @Override
    public String template() {
        return "stock/scanner.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
