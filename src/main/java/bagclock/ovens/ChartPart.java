package bagclock.ovens;

import java.util.List;

/**
 * What a chart proves of a run, with drawing and tables.
 *
 * @param id of the file
 * @param proven whether it proves the whole load
 * @param word the verdict
 * @param facts what was asked and what counts, in words
 * @param drawings the temperatures, and the humidity where it is asked
 * @param items the verdict for each item
 */
public record ChartPart(
        String id,
        boolean proven,
        String word,
        String sentence,
        List<String> facts,
        List<ChartLines> drawings,
        List<Probe> probes,
        List<Outside> outside,
        List<Item> items,
        String file) {
    /** What one probe shows. */
    public record Probe(String name, String lowest, String highest, String inBand, String coldest) {}

    /**
     * An excursion or a gap.
     *
     * @param number as in the drawing; empty for a gap
     */
    public record Outside(String number, String what, String probe, String from, String to, String length) {}

    /** One item of the load. */
    public record Item(String tag, String needed, String word) {}
}
