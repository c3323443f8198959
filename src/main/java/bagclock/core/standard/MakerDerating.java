package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A maker's own derating table. Of the cells that are as warm and as wet as the air or more so, the shortest counts;
 * where there is none the air lies outside the table.
 */
public record MakerDerating(List<Cell> cells) {
    /** Floor life at up to this temperature and humidity. */
    public record Cell(Celsius temperature, RelativeHumidity humidity, Duration life) {
        boolean covers(Celsius warm, RelativeHumidity wet) {
            return !warm.isAbove(temperature) && !wet.isAbove(humidity);
        }
    }

    /** Keeps its own copy of the cells. */
    public MakerDerating {
        cells = List.copyOf(cells);
    }

    /** Floor life in this air, empty outside the table. */
    public Optional<Duration> life(Celsius temperature, RelativeHumidity humidity) {
        return cells.stream()
                .filter(cell -> cell.covers(temperature, humidity))
                .map(Cell::life)
                .min(Duration::compareTo);
    }
}
