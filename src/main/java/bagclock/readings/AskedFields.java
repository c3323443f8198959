package bagclock.readings;

import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import bagclock.logfile.Layout;
import bagclock.logfile.LogFile;
import bagclock.logfile.Question;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The fields in which a person says what the layout of a file leaves open. */
public final class AskedFields {
    private final Messages messages;

    /** Fields with words of this bundle. */
    public AskedFields(Messages messages) {
        this.messages = messages;
    }

    /** Of its times and units: what is open, or was said. */
    public List<Asked> of(Layout layout, Entered entered) {
        List<Asked> asked = new ArrayList<>();
        if (!layout.times().withOffset()) {
            String hint = layout.times()
                    .headerOffset()
                    .map(offset ->
                            messages.text("climate.file.zone.header", offset.equals(ZoneOffset.UTC) ? "UTC" : offset))
                    .orElse(messages.text(
                            "climate.file.zone.hint", entered.texts().zone().getId()));
            asked.add(new Asked(entered.field(AnswersForm.ZONE, messages.text("climate.file.zone"), hint), List.of()));
        }
        if (layout.times().orderOpen()) {
            asked.add(choose(
                    entered,
                    AnswersForm.ORDER,
                    List.of(
                            Choice.of(DayOrder.DAY_FIRST.name(), messages.text("climate.file.order.day")),
                            Choice.of(DayOrder.MONTH_FIRST.name(), messages.text("climate.file.order.month")))));
        }
        if (layout.channels().stream().anyMatch(AskedFields::isWithoutUnit)) {
            asked.add(choose(
                    entered,
                    AnswersForm.UNIT,
                    List.of(
                            Choice.of(Channel.Unit.CELSIUS.name(), messages.text("climate.file.unit.celsius")),
                            Choice.of(Channel.Unit.FAHRENHEIT.name(), messages.text("climate.file.unit.fahrenheit")))));
        }
        if (layout.times().spreadsheetDays()) {
            asked.add(choose(
                    entered,
                    AnswersForm.DAYS,
                    List.of(Choice.of(AnswersForm.YES, messages.text("climate.file.days.yes")))));
        }
        return asked;
    }

    private static boolean isWithoutUnit(Channel channel) {
        return channel.unit().isEmpty()
                && channel.kind().map(Channel.Kind::isInDegrees).orElse(true);
    }

    /** Of an hour that autumn has twice: empty unless it is open or was said. */
    public Optional<Asked> doubled(LogFile file, List<Question> open, Entered entered) {
        boolean isAsked = open.contains(Question.DOUBLE_HOUR)
                || file.answers().secondOfBoth().isPresent();
        return isAsked
                ? Optional.of(choose(
                        entered,
                        AnswersForm.DOUBLED,
                        List.of(
                                Choice.of("first", messages.text("climate.file.doubled.first")),
                                Choice.of(AnswersForm.SECOND, messages.text("climate.file.doubled.second")))))
                : Optional.empty();
    }

    /** A field with choices; its words have the key {@code climate.file.} with its name. */
    public Asked choose(Entered entered, String name, List<Choice> choices) {
        return new Asked(entered.field(name, messages.text("climate.file." + name)), choices);
    }
}
