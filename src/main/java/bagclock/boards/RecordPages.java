package bagclock.boards;

import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardView;
import bagclock.desk.KeptAnswer;
import bagclock.desk.KeptWords;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.ledger.Notes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts the record of a heat into words, as it was answered then. */
final class RecordPages {
    private final BoardWords words;
    private final KeptWords keptWords;

    RecordPages(BoardWords words) {
        this.words = words;
        this.keptWords = new KeptWords(words.texts());
    }

    /** The record, if the entry keeps an answer. */
    Optional<RecordPage> of(BoardView view, int seq) {
        return view.entries().stream()
                .filter(entry -> entry.seq() == seq)
                .filter(entry -> entry.say(Notes.ANSWER).isPresent())
                .findFirst()
                .map(entry -> page(view, entry));
    }

    private RecordPage page(BoardView view, BoardEntry entry) {
        KeptAnswer kept = KeptAnswer.parse(entry.say(Notes.ANSWER).orElseThrow());
        return new RecordPage(
                words.text(
                        entry.kind() == Kind.HEATED ? "boards.record.title" : "boards.record.release-title",
                        entry.serial()),
                links(entry),
                asked(entry),
                done(entry),
                kept.verdict().code(),
                keptWords.sentence(kept).orElseGet(() -> words.text("boards.nothing-above-200")),
                released(view, entry),
                notices(view, entry),
                reasons(kept),
                parts(entry),
                readings(entry),
                entry.say(Notes.VERSIONS).map(keptWords::versions).orElse(""),
                entry.say(Notes.INPUTS).orElse(""),
                entry.hash());
    }

    private List<String> notices(BoardView view, BoardEntry entry) {
        Stream<String> back = view.entries().stream()
                .filter(one -> one.says(BoardNotes.CORRECTS, Integer.toString(entry.seq())))
                .map(one -> words.text(
                        "boards.record.taken-back",
                        words.name(one.stamp().who()),
                        words.texts().at(one.happenedAt())));
        Stream<String> notices =
                lines(entry, BoardNotes.NOTICES).stream().map(notice -> words.text("boards.notice." + notice));
        return Stream.concat(back, notices).toList();
    }

    private List<JobPage.Link> links(BoardEntry entry) {
        List<JobPage.Link> links = new ArrayList<>();
        links.add(new JobPage.Link("/boards/" + entry.serial(), words.text("boards.board.title", entry.serial())));
        entry.say(BoardNotes.JOB)
                .ifPresent(job -> links.add(new JobPage.Link(
                        "/boards/" + entry.serial() + "/jobs/" + job, words.text("boards.record.job"))));
        entry.say(BoardNotes.ITEM).ifPresent(tag -> links.add(new JobPage.Link("/items/" + tag, tag)));
        return links;
    }

    private List<TypePage.Fact> asked(BoardEntry entry) {
        List<TypePage.Fact> facts = new ArrayList<>();
        facts.add(fact(
                "boards.record.heat",
                words.text("bench.purpose." + entry.say(BoardNotes.PURPOSE).orElseThrow())));
        entry.say(BoardNotes.LOCATION).ifPresent(spot -> facts.add(fact("boards.location", spot)));
        entry.say(BoardNotes.LENGTH)
                .ifPresent(text ->
                        facts.add(fact("boards.record.length", words.texts().span(Duration.parse(text)))));
        facts.add(fact(
                "boards.job.profile",
                entry.say(BoardNotes.PROFILE).orElseGet(() -> words.text("boards.profile.choose-none"))));
        return facts;
    }

    private List<TypePage.Fact> done(BoardEntry entry) {
        List<TypePage.Fact> facts = new ArrayList<>();
        facts.add(fact("boards.record.at", words.texts().at(entry.happenedAt())));
        facts.add(fact(
                "boards.record.by",
                words.text(
                        "bench.heat.recorded",
                        words.name(entry.stamp().who()),
                        words.texts().at(entry.stamp().recordedAt()))));
        if (entry.kind() == Kind.HEATED) {
            facts.add(fact(
                    "bench.heat.peak",
                    entry.say(BoardNotes.PEAK)
                            .map(this::celsius)
                            .orElseGet(() -> words.text("bench.heat.peak.unknown"))));
            lines(entry, BoardNotes.PEAKS).stream()
                    .map(line -> line.split("\t", 2))
                    .filter(pair -> !entry.says(BoardNotes.LOCATION, pair[0]))
                    .limit(40)
                    .forEach(pair -> facts.add(new TypePage.Fact(
                            words.text("boards.record.neighbour", pair[0]),
                            pair[1].isEmpty() ? words.text("bench.heat.peak.unknown") : celsius(pair[1]))));
        }
        entry.say(BoardNotes.WHY).ifPresent(why -> facts.add(fact("boards.release.why", why)));
        return facts;
    }

    private String celsius(String kept) {
        return words.texts().temperature(new Celsius(Double.parseDouble(kept)));
    }

    private TypePage.Fact fact(String key, String value) {
        return new TypePage.Fact(words.text(key), value);
    }

    private AnswerBox.Reason reason(KeptAnswer.Reason reason) {
        return new AnswerBox.Reason(keptWords.reason(reason), keptWords.source(reason));
    }

    private List<AnswerBox.Reason> reasons(KeptAnswer kept) {
        Stream<AnswerBox.Reason> bakes =
                keptWords.bakeCells(kept).stream().map(cells -> new AnswerBox.Reason(words.text("kept.bakes"), cells));
        return Stream.concat(kept.reasons().stream().map(this::reason), bakes).toList();
    }

    private String released(BoardView view, BoardEntry entry) {
        return entry.say(BoardNotes.RELEASE).map(Integer::valueOf).stream()
                .flatMap(seq -> view.entries().stream().filter(one -> one.seq() == seq))
                .findFirst()
                .map(release -> words.text(
                        "boards.release.used",
                        words.name(release.stamp().who()),
                        words.texts().at(release.happenedAt()),
                        release.say(BoardNotes.WHY).orElse("")))
                .orElse("");
    }

    private static List<String> lines(BoardEntry entry, String name) {
        return entry.say(name).stream().flatMap(String::lines).toList();
    }

    private List<AnswerBox.Part> parts(BoardEntry entry) {
        return lines(entry, BoardNotes.PARTS).stream()
                .map(line -> line.split("\t", 2))
                .map(pair -> new AnswerBox.Part(pair[0], "", "", pair[1], words.text("verdict." + pair[1]), ""))
                .toList();
    }

    private List<TypePage.Fact> readings(BoardEntry entry) {
        List<String> zones = lines(entry, BoardNotes.READINGS);
        if (zones.isEmpty()) {
            return List.of(fact("kept.readings.no", words.text("kept.readings.none")));
        }
        return zones.stream()
                .map(line -> line.split("\t", 3))
                .map(parts -> new TypePage.Fact(
                        parts[0],
                        words.text(
                                "boards.record.readings.of",
                                parts[1],
                                words.texts().at(Instant.parse(parts[2])))))
                .toList();
    }
}
