package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * What arrives from a scanner, how to set it, and what this workstation puts right.
 *
 * @param arrived the last scan with its controls visible; empty for none yet
 * @param keys the keys that it came as
 * @param bars the bars of the test code that came so far, one a line
 * @param told what is odd about it
 * @param keepable the scans from which something can be kept, one a line; empty for none
 * @param kept which characters this workstation takes for others, in words; empty for none
 */
public record ScannerPage(
        String title, String arrived, String keys, String bars, List<String> told, String keepable, String kept)
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
