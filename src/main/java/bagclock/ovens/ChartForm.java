package bagclock.ovens;

import bagclock.logfile.Channel;
import bagclock.logfile.Layout;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.readings.AnswersForm;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a person says about the chart of an oven. Channels are named by their number, since names may hold commas. */
final class ChartForm {
    static final String PROBE = "probe";
    static final String AIR = "air";

    private ChartForm() {}

    /** The fields that show what was said. */
    static Map<String, String> values(ChartAnswers said, Layout layout) {
        List<String> names = layout.channels().stream().map(Channel::name).toList();
        Map<String, String> values = new HashMap<>();
        said.answers().zone().map(ZoneId::getId).ifPresent(zone -> values.put(AnswersForm.ZONE, zone));
        said.answers().dayOrder().ifPresent(order -> values.put(AnswersForm.ORDER, order.name()));
        said.answers().unit().ifPresent(unit -> values.put(AnswersForm.UNIT, unit.name()));
        values.put(
                PROBE,
                said.probes().stream()
                        .map(name -> Integer.toString(names.indexOf(name)))
                        .collect(Collectors.joining(",")));
        values.put(
                AIR,
                said.humidity()
                        .map(name -> Integer.toString(names.indexOf(name)))
                        .orElse(""));
        return values;
    }

    /** What was said; a zone that nobody knows is refused. */
    static ChartAnswers answers(Entered entered, Layout layout, Messages messages) {
        List<String> probes = entered.all(PROBE).stream()
                .flatMap(number -> name(number, layout).stream())
                .toList();
        Optional<String> humidity = name(entered.text(AIR), layout).filter(name -> !probes.contains(name));
        return new ChartAnswers(AnswersForm.answers(entered, messages), probes, humidity);
    }

    private static Optional<String> name(String number, Layout layout) {
        if (!number.matches("\\d{1,4}")) {
            return Optional.empty();
        }
        return layout.channels().stream()
                .skip(Integer.parseInt(number))
                .findFirst()
                .map(Channel::name);
    }
}
