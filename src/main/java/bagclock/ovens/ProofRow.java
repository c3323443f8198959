package bagclock.ovens;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Which chart proves a load, as it is stored. Empty text: not said. */
record ProofRow(
        String oven,
        Instant loadedAt,
        Instant recordedAt,
        String who,
        String fileId,
        boolean takenBack,
        String timeZone,
        String dayOrder,
        String unit,
        boolean spreadsheetDays,
        String secondOfBoth,
        String probes,
        String humidityChannel) {
    private static final String FIRST = "FIRST";
    private static final String SECOND = "SECOND";

    /** A load, and who says so when. */
    record Head(String oven, Instant loadedAt, Instant recordedAt, String who) {}

    static ProofRow of(Head head, String fileId, ChartAnswers said) {
        Answers answers = said.answers();
        return new ProofRow(
                head.oven(),
                head.loadedAt(),
                head.recordedAt(),
                head.who(),
                fileId,
                false,
                answers.zone().map(ZoneId::getId).orElse(""),
                answers.dayOrder().map(Enum::name).orElse(""),
                answers.unit().map(Enum::name).orElse(""),
                answers.spreadsheetDays(),
                answers.secondOfBoth().map(second -> second ? SECOND : FIRST).orElse(""),
                String.join("\n", said.probes()),
                said.humidity().orElse(""));
    }

    ProofRow takenBack(Instant now, String by) {
        return new ProofRow(
                oven,
                loadedAt,
                now,
                by,
                fileId,
                true,
                timeZone,
                dayOrder,
                unit,
                spreadsheetDays,
                secondOfBoth,
                probes,
                humidityChannel);
    }

    ChartAnswers answers() {
        Answers answers = new Answers(
                said(timeZone).map(ZoneId::of),
                said(dayOrder).map(DayOrder::valueOf),
                said(unit).map(Channel.Unit::valueOf),
                Answers.Names.NONE,
                spreadsheetDays,
                said(secondOfBoth).map(SECOND::equals));
        List<String> names = probes.isEmpty() ? List.of() : probes.lines().toList();
        return new ChartAnswers(answers, names, said(humidityChannel));
    }

    private static Optional<String> said(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
