package bagclock.core.diffusion;

import bagclock.core.standard.Status;
import java.util.List;

/**
 * The numbers of the model with their standing. A value that was computed from a table's cells has the status
 * inference.
 */
public enum Constant {
    BOLTZMANN("k", 8.617333e-5, "eV/K", Status.SEEN, "defined (SI 2019)"),
    LOW_D0(
            "D0, low",
            0.121,
            "mm2/s",
            Status.MEMORY,
            "J-STD-033D, clause 7, up to 60 %RH; only D/h2 can be tried against the table, not D"),
    HIGH_D0(
            "D0, high",
            1.320,
            "mm2/s",
            Status.MEMORY,
            "J-STD-033D, clause 7, above 60 %RH; the ratio to the low one is supported by table 7-1, levels 2a and 3"),
    ABSORPTION(
            "Ea, taking up", 0.35, "eV", Status.MEMORY, "J-STD-033D, clause 7; supported by table 7-1, level 3 only"),
    DESORPTION("Ea, baking", 0.44, "eV", Status.INFERENCE, "from table 4-1, 125 against 40 C, band 0.40 to 0.47"),
    DEPTH_2A("h, level 2a", 1.36, "mm", Status.INFERENCE, "fitted to table 7-1, >=3.1 mm"),
    DEPTH_3("h, level 3", 1.22, "mm", Status.INFERENCE, "fitted to table 7-1, >=3.1 mm"),
    DEPTH_4("h, level 4", 0.90, "mm", Status.INFERENCE, "fitted to table 7-1, >=3.1 mm; for warnings only"),
    DEPTH_5("h, level 5", 0.66, "mm", Status.INFERENCE, "fitted to table 7-1, >=3.1 mm; for warnings only"),
    DEPTH_5A("h, level 5a", 0.58, "mm", Status.INFERENCE, "fitted to table 7-1, >=3.1 mm; for warnings only"),
    SURFACE_2A("Es, level 2a", 0.06, "eV", Status.INFERENCE, "fitted to table 7-1, >=3.1 mm"),
    SURFACE_3("Es, level 3", 0.10, "eV", Status.INFERENCE, "fitted to table 7-1, >=3.1 mm"),
    SURFACE_4("Es, level 4", 0.12, "eV", Status.INFERENCE, "limit of the search; for warnings only"),
    SURFACE_5("Es, level 5", 0.12, "eV", Status.INFERENCE, "limit of the search; for warnings only"),
    SURFACE_5A("Es, level 5a", 0.12, "eV", Status.INFERENCE, "limit of the search; for warnings only");

    private final String symbol;
    private final double value;
    private final String unit;
    private final Status status;
    private final String source;

    Constant(String symbol, double value, String unit, Status status, String source) {
        this.symbol = symbol;
        this.value = value;
        this.unit = unit;
        this.status = status;
        this.source = source;
    }

    /** The value in its unit. */
    public double value() {
        return value;
    }

    /** Symbol, value, unit, status and source, as the reference page lists them. */
    public List<String> line() {
        return List.of(symbol, Double.toString(value), unit, status.code(), source);
    }
}
