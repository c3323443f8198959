package bagclock.boards;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.ledger.Notes;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Puts the entries of a board's ledger into words. */
final class EntryWords {
    private final BoardWords words;

    EntryWords(BoardWords words) {
        this.words = words;
    }

    List<JobPage.Entry> of(List<BoardEntry> entries, Instant now) {
        List<BoardEntry> standing = BoardEntry.standing(entries);
        return entries.stream()
                .map(entry -> of(entry, said(entry, entries, standing), now))
                .toList();
    }

    private String said(BoardEntry entry, List<BoardEntry> entries, List<BoardEntry> standing) {
        if (entry.kind() == Kind.TAKEN_BACK) {
            return entries.stream()
                    .filter(one -> entry.says(BoardNotes.CORRECTS, Integer.toString(one.seq())))
                    .map(one -> words.text("boards.entry.TAKEN_BACK", what(one)))
                    .findFirst()
                    .orElse("");
        }
        String what = what(entry);
        return standing.contains(entry) ? what : what + " " + words.text("boards.entry.does-not-count");
    }

    private JobPage.Entry of(BoardEntry entry, String what, Instant now) {
        boolean recorded = entry.say(Notes.ANSWER).isPresent();
        return new JobPage.Entry(
                words.texts().at(entry.happenedAt(), now),
                what,
                words.name(entry.stamp().who()),
                recorded ? "/boards/" + entry.serial() + "/heats/" + entry.seq() : "");
    }

    /** What an entry says. */
    String what(BoardEntry entry) {
        String why = entry.say(BoardNotes.WHY).map(text -> " " + text).orElse("");
        String dotted = why.isEmpty() ? "" : "." + why;
        return switch (entry.kind()) {
            case CAME_BACK, JOB_CLOSED ->
                words.text("boards.entry." + entry.kind().name()) + why;
            case JOB_OPENED ->
                words.text(
                                "boards.entry.JOB_OPENED",
                                entry.say(BoardNotes.LOCATION).orElse(""))
                        + why;
            case STEP_DONE ->
                words.text("boards.entry.step." + entry.say(BoardNotes.STEP).orElse("check")) + why;
            case TAKEN_BACK ->
                words.text(
                        "boards.entry.TAKEN_BACK",
                        entry.say(BoardNotes.CORRECTS).orElse(""));
            case BAKE_STARTED -> baked(entry);
            case BAKED_ELSEWHERE -> elsewhere(entry);
            case BAKE_ENDED -> words.text("boards.entry.BAKE_ENDED", time(entry));
            case HEATED, RELEASED -> heat(entry) + dotted;
        };
    }

    private String baked(BoardEntry entry) {
        return words.text(
                "boards.entry.BAKE_STARTED", entry.say(BoardNotes.OVEN).orElse(""), setPoint(entry));
    }

    private String elsewhere(BoardEntry entry) {
        return words.text("stock.entry.baked-elsewhere") + ": "
                + words.text(
                        "stock.entry.baked-elsewhere.told",
                        entry.say(BoardNotes.OVEN).orElse(""),
                        time(entry),
                        setPoint(entry))
                + ".";
    }

    private String setPoint(BoardEntry entry) {
        return entry.say(BoardNotes.SET_POINT)
                .map(Double::valueOf)
                .map(Celsius::new)
                .map(words.texts()::temperature)
                .orElse("");
    }

    private String time(BoardEntry entry) {
        return entry.say(BoardNotes.AT_TEMPERATURE)
                .map(Duration::parse)
                .map(words::hours)
                .orElse("");
    }

    /** The heat that an entry is about. */
    String heat(BoardEntry entry) {
        String purpose = entry.say(BoardNotes.PURPOSE).orElse(Purpose.WHOLE_BOARD.code());
        String key = entry.kind() == Kind.HEATED ? "boards.entry.HEATED" : "boards.entry.RELEASED";
        return words.text(
                        key,
                        words.text("bench.purpose." + purpose),
                        entry.say(BoardNotes.LOCATION).orElse(""),
                        entry.say(BoardNotes.ITEM).orElse(""))
                .strip();
    }
}
