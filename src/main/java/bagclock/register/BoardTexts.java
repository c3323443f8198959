package bagclock.register;

import bagclock.core.quantity.Celsius;
import bagclock.register.BoardType.KeptOn;
import bagclock.register.BoardType.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Lists as one text: a line for each, its two values parted by a tab. */
final class BoardTexts {
    private static final String TAB = "\t";

    private BoardTexts() {}

    static String spots(List<Spot> spots) {
        return spots.stream()
                .map(spot -> spot.location() + TAB + spot.partNumber())
                .collect(Collectors.joining("\n"));
    }

    static List<Spot> spots(String text) {
        return pairs(text).stream().map(pair -> new Spot(pair[0], pair[1])).toList();
    }

    static String keptOn(List<KeptOn> keptOn) {
        return keptOn.stream()
                .map(kept -> kept.what()
                        + TAB
                        + kept.limit().map(c -> Double.toString(c.degrees())).orElse(""))
                .collect(Collectors.joining("\n"));
    }

    static List<KeptOn> keptOn(String text) {
        return pairs(text).stream()
                .map(pair -> new KeptOn(pair[0], degrees(pair[1])))
                .toList();
    }

    static String peaks(Map<String, Celsius> peaks) {
        return new TreeMap<>(peaks)
                .entrySet().stream()
                        .map(peak -> peak.getKey() + TAB + peak.getValue().degrees())
                        .collect(Collectors.joining("\n"));
    }

    static Map<String, Celsius> peaks(String text) {
        Map<String, Celsius> peaks = new TreeMap<>();
        pairs(text).forEach(pair -> degrees(pair[1]).ifPresent(peak -> peaks.put(pair[0], peak)));
        return peaks;
    }

    private static Optional<Celsius> degrees(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(new Celsius(Double.parseDouble(text)));
    }

    private static List<String[]> pairs(String text) {
        List<String[]> pairs = new ArrayList<>();
        text.lines().forEach(line -> pairs.add(line.split(TAB, 2)));
        return pairs;
    }
}
