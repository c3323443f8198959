package bagclock.climate;

import bagclock.logfile.Answers;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Field;
import bagclock.platform.Messages;
import bagclock.readings.AnswersForm;
import bagclock.readings.Asked;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerProfile;
import bagclock.readings.LoggerProfile.BelowZero;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is kept for a logger out of what is said of one of its files. What was not known before is kept; what was said
 * otherwise before stays, unless a person says that the new word holds from now on. What a file did not ask stays too.
 *
 * @param before as it is known so far
 */
record Memory(LoggerProfile before, LoggerFile file) {
    /** Name of the field that says whether what differs holds from now on. */
    static final String FIELD = "remember";

    /** It holds for the file only. */
    static final String FILE = "file";

    /** It holds for the logger from now on. */
    static final String LOGGER = "logger";

    /** What is asked where something differs from what is kept: whether it holds from now on. Empty if nothing does. */
    Optional<Asked> question(List<Asked> asked, Entered entered, String oldPlace) {
        Messages messages = entered.texts().messages();
        List<String> known = new ArrayList<>();
        if (!before.placeCode().equals(file.placeCode())) {
            known.add(messages.text("climate.file.remember.one", messages.text("climate.file.place"), oldPlace));
        }
        asked.stream()
                .filter(one -> differs(one, entered))
                .forEach(one -> known.add(
                        messages.text("climate.file.remember.one", one.field().label(), kept(one))));
        if (known.isEmpty()) {
            return Optional.empty();
        }
        Field field = entered.field(
                FIELD,
                messages.text("climate.file.remember", before.name()),
                messages.text("climate.file.remember.known", String.join("; ", known)));
        return Optional.of(new Asked(
                field,
                List.of(
                        new Choice(
                                FILE,
                                messages.text("climate.file.remember.file"),
                                messages.text("climate.file.remember.file.note")),
                        Choice.of(LOGGER, messages.text("climate.file.remember.logger")))));
    }

    private boolean differs(Asked asked, Entered entered) {
        String name = asked.field().name();
        return isKept(name) && !kept(name).equals(entered.text(name));
    }

    private boolean isKept(String name) {
        return !kept(name).isEmpty() && !kept(name).equals(BelowZero.UNKNOWN.name());
    }

    private String kept(String name) {
        return AnswersForm.values(before).getOrDefault(name, "");
    }

    /** As a person reads it. */
    private String kept(Asked asked) {
        String value = kept(asked.field().name());
        return asked.choices().stream()
                .filter(choice -> choice.value().equals(value))
                .map(Choice::label)
                .findFirst()
                .orElse(value);
    }

    /** The logger as it is known after an import of the file. */
    LoggerProfile after(List<Asked> asked, Entered entered) {
        boolean fromNowOn = entered.text(FIELD).equals(LOGGER);
        Map<String, String> values = new HashMap<>(AnswersForm.values(before));
        asked.stream()
                .map(one -> one.field().name())
                .filter(name -> fromNowOn || !isKept(name))
                .forEach(name -> values.put(name, entered.text(name)));
        Entered kept = Entered.of(values, entered.texts());
        Answers answers = AnswersForm.answers(kept, entered.texts().messages());
        return new LoggerProfile(
                before.name(),
                fromNowOn ? file.placeCode() : before.placeCode(),
                answers.zone(),
                answers.dayOrder(),
                answers.unit(),
                answers.names(),
                answers.spreadsheetDays(),
                AnswersForm.belowZero(kept));
    }
}
