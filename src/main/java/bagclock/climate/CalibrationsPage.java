package bagclock.climate;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/** Loggers and ovens, and the days by which they must be calibrated again. */
public record CalibrationsPage(String title, List<Line> lines) implements Page {
    /**
     * One logger or oven.
     *
     * @param past in words; empty while it may be trusted
     */
    public record Line(String kind, String code, String name, Field due, String past) {}

    @Override
    public String template() {
        return "climate/calibrations.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
