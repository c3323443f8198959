package bagclock.core.standard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A site's own cell values, at most one for each cell. */
public final class SiteValues {
    /** A site that compared nothing. */
    public static final SiteValues NONE = of(List.of());

    private final Map<CellKey, SiteValue> values;

    private SiteValues(Map<CellKey, SiteValue> values) {
        this.values = Map.copyOf(values);
    }

    /** Refuses with {@link IllegalArgumentException} two values for one cell. */
    public static SiteValues of(List<SiteValue> values) {
        Map<CellKey, SiteValue> byKey = new HashMap<>();
        for (SiteValue value : values) {
            if (byKey.put(value.key(), value) != null) {
                throw new IllegalArgumentException("two site values for " + value.key());
            }
        }
        return new SiteValues(byKey);
    }

    /** The site's value of this cell. */
    public Optional<SiteValue> of(CellKey key) {
        return Optional.ofNullable(values.get(key));
    }

    Set<CellKey> keys() {
        return values.keySet();
    }
}
