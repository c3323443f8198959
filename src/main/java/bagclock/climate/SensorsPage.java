package bagclock.climate;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Sensors that send readings by themselves.
 *
 * @param token of the sensor that was just let in; empty for none
 */
public record SensorsPage(
        String title, String token, Field name, Field places, List<Choice> choices, List<Line> sensors)
        implements Page {
    /**
     * One sensor.
     *
     * @param revoked when it was shut out, in words; empty while it may send
     */
    public record Line(String id, String name, String places, String made, String revoked) {}

    @Override
    public String template() {
        return "climate/sensors.jte";
    }

    @Override
    public String frontDoor() {
        return "people";
    }
}
