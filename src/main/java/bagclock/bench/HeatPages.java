package bagclock.bench;

import bagclock.core.exposure.Event;
import bagclock.core.quantity.Celsius;
import bagclock.desk.HistoryLine;
import bagclock.desk.ItemView;
import bagclock.desk.KeptAnswer;
import bagclock.desk.KeptWords;
import bagclock.desk.Releases;
import bagclock.ledger.Act;
import bagclock.ledger.Entry;
import bagclock.ledger.Notes;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Texts;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts a recorded heat into words. */
final class HeatPages {
    private final Names names;
    private final Messages messages;
    private final Texts texts;
    private final AnswerWords words;
    private final KeptWords keptWords;

    HeatPages(Names names, Texts texts) {
        this.names = names;
        this.messages = texts.messages();
        this.texts = texts;
        this.words = new AnswerWords(texts);
        this.keptWords = new KeptWords(texts);
    }

    /** The page, if the entry is a heat or a release. */
    Optional<HeatPage> of(ItemView item, HistoryLine line, Releases releases, boolean isNew) {
        Act act = line.entry().act();
        if (act instanceof Act.Happened happened && happened.event() instanceof Event.Heated heated) {
            return Optional.of(page(item, line, heated(item, happened.notes(), heated, isNew)));
        }
        return act instanceof Act.Released released
                ? Optional.of(page(item, line, released(line.entry(), released.notes(), releases)))
                : Optional.empty();
    }

    /** What differs between a heat and a release. */
    private record Told(
            Map<String, String> notes, String key, boolean isNew, String peak, String released, String other) {}

    private Told heated(ItemView item, Map<String, String> notes, Event.Heated heated, boolean isNew) {
        Optional<Entry> release = Optional.ofNullable(notes.get(Notes.RELEASE)).stream()
                .flatMap(number -> item.lines().stream()
                        .map(HistoryLine::entry)
                        .filter(entry -> number.equals(Integer.toString(entry.seq()))))
                .findFirst();
        return new Told(
                notes,
                "bench.heat",
                isNew,
                heated.peakBody().map(texts::temperature).orElseGet(() -> messages.text("bench.heat.peak.unknown")),
                release.map(this::given).orElse(""),
                release.map(HeatPages::href).orElse(""));
    }

    private Told released(Entry entry, Map<String, String> notes, Releases releases) {
        return new Told(
                notes,
                "bench.release",
                false,
                "",
                notes.getOrDefault(Notes.WHY, ""),
                releases.usedFor(entry.seq()).map(HeatPages::href).orElse(""));
    }

    private String given(Entry release) {
        String why = release.act() instanceof Act.Released released
                ? released.notes().getOrDefault(Notes.WHY, "")
                : "";
        return messages.text(
                "boards.release.used", names.of(release.stamp().who()), texts.at(release.happenedAt()), why);
    }

    private static String href(Entry entry) {
        return BenchRoutes.PATH + "/heats/" + entry.tag() + "/" + entry.seq();
    }

    private HeatPage page(ItemView item, HistoryLine line, Told told) {
        Entry entry = line.entry();
        Map<String, String> notes = told.notes();
        Optional<KeptAnswer> kept = Optional.ofNullable(notes.get(Notes.ANSWER)).map(KeptAnswer::parse);
        return new HeatPage(
                messages.text(told.key() + ".title", entry.tag()),
                entry.tag(),
                item.item().partType(),
                told.isNew(),
                line.stands() ? "" : messages.text("bench.heat.taken-back"),
                messages.text(told.key()),
                texts.at(entry.happenedAt()),
                messages.text(
                        "bench.heat.recorded",
                        names.of(entry.stamp().who()),
                        texts.at(entry.stamp().recordedAt())),
                told.peak(),
                told.released(),
                told.other(),
                asked(notes),
                boardRecord(entry.stamp().key()),
                kept.map(answer -> answer.verdict().code()).orElse(""),
                kept.flatMap(keptWords::sentence).orElse(""),
                kept.map(answer -> words.life(answer.usedHours(), answer.totalHours()))
                        .orElse(""),
                kept.map(this::reasons).orElse(List.of()),
                readings(notes),
                keptWords.versions(notes.getOrDefault(Notes.VERSIONS, "")),
                notes.getOrDefault(Notes.INPUTS, ""));
    }

    private String asked(Map<String, String> notes) {
        if (!notes.containsKey(Notes.LENGTH)) {
            return "";
        }
        String purpose = notes.getOrDefault(Notes.PURPOSE, "");
        String peak = notes.getOrDefault(Notes.PLANNED_PEAK, "");
        return messages.text(
                "bench.heat.asked.is",
                purpose.isEmpty() ? messages.text("bench.heat.asked.any") : messages.text("bench.purpose." + purpose),
                texts.span(Duration.parse(notes.get(Notes.LENGTH))),
                peak.isEmpty()
                        ? messages.text("bench.heat.asked.rated")
                        : texts.temperature(new Celsius(Double.parseDouble(peak))));
    }

    /** The desk gives the entries of a heat on a board a key that begins with the board's entry. */
    private static String boardRecord(String key) {
        String[] parts = key.split("/", -1);
        return parts.length == 4 && parts[0].equals("board") ? "/boards/" + parts[1] + "/heats/" + parts[2] : "";
    }

    private List<AnswerPart.Reason> reasons(KeptAnswer kept) {
        Stream<AnswerPart.Reason> bakes = keptWords.bakeCells(kept).stream()
                .map(cells -> new AnswerPart.Reason(messages.text("kept.bakes"), cells));
        return Stream.concat(kept.reasons().stream().map(this::reason), bakes).toList();
    }

    private List<String> readings(Map<String, String> notes) {
        String kept = notes.getOrDefault(Notes.READINGS, "");
        return kept.isEmpty()
                ? List.of(messages.text("kept.readings.none"))
                : kept.lines().map(this::readings).toList();
    }

    private String readings(String line) {
        String[] parts = line.split("\t", 3);
        return messages.text("bench.heat.readings.of", parts[0], parts[1], texts.at(Instant.parse(parts[2])));
    }

    private AnswerPart.Reason reason(KeptAnswer.Reason reason) {
        return new AnswerPart.Reason(keptWords.reason(reason), keptWords.source(reason));
    }
}
