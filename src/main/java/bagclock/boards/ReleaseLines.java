package bagclock.boards;

import bagclock.desk.KeptAnswer;
import bagclock.desk.Releases;
import bagclock.ledger.Act;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardNotes;
import bagclock.ledger.Entry;
import bagclock.ledger.Notes;
import bagclock.ledger.Stamp;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Every release, on a board and of a single item, newest first, with the heat that it was used for. */
final class ReleaseLines {
    private static final int MOST = 500;

    private final Rooms rooms;
    private final BoardWords words;

    ReleaseLines(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
    }

    private record Dated(Instant recordedAt, ReleasesPage.Line line) {}

    ReleasesPage page() {
        List<Dated> all = new ArrayList<>();
        rooms.boards().newest(BoardEntry.Kind.RELEASED, MOST).forEach(entry -> all.add(dated(entry)));
        rooms.desk().newestReleases(MOST).stream()
                .filter(entry -> entry.act() instanceof Act.Released)
                .forEach(entry -> all.add(dated(entry, ((Act.Released) entry.act()).notes())));
        return new ReleasesPage(
                words.text("boards.releases"),
                all.stream()
                        .sorted(Comparator.comparing(Dated::recordedAt).reversed())
                        .limit(MOST)
                        .map(Dated::line)
                        .toList());
    }

    private Dated dated(BoardEntry entry) {
        String path = "/boards/" + entry.serial();
        List<BoardEntry> standing = rooms.board(entry.serial(), rooms.now()).standing();
        String used = standing.stream()
                .filter(one -> one.says(BoardNotes.RELEASE, Integer.toString(entry.seq())))
                .findFirst()
                .map(one -> path + "/heats/" + one.seq())
                .orElse("");
        ReleasesPage.Link about = new ReleasesPage.Link(path, entry.serial());
        ReleasesPage.Link record = new ReleasesPage.Link(path + "/heats/" + entry.seq(), at(entry.happenedAt()));
        String what = new EntryWords(words).heat(entry);
        String state = standing.contains(entry) ? what : what + ". " + words.text("bench.heat.taken-back");
        return dated(entry.stamp(), entry.told(), new Linked(about, record, used), state);
    }

    private Dated dated(Entry entry, Map<String, String> notes) {
        Releases releases = rooms.desk().releases(entry.tag());
        String path = "/bench/heats/" + entry.tag() + "/";
        String used =
                releases.usedFor(entry.seq()).map(heat -> path + heat.seq()).orElse("");
        ReleasesPage.Link about = new ReleasesPage.Link("/items/" + entry.tag(), entry.tag());
        ReleasesPage.Link record = new ReleasesPage.Link(path + entry.seq(), at(entry.happenedAt()));
        String purpose = notes.getOrDefault(Notes.PURPOSE, "");
        String what = purpose.isEmpty() ? words.text("bench.heat.asked.any") : words.text("bench.purpose." + purpose);
        String state = releases.stands(entry.seq()) ? what : what + ". " + words.text("bench.heat.taken-back");
        return dated(entry.stamp(), notes, new Linked(about, record, used), state);
    }

    private String at(Instant moment) {
        return words.texts().at(moment);
    }

    /** Where a line leads. */
    private record Linked(ReleasesPage.Link about, ReleasesPage.Link record, String used) {}

    private Dated dated(Stamp stamp, Map<String, String> notes, Linked linked, String what) {
        String verdict =
                KeptAnswer.parse(notes.getOrDefault(Notes.ANSWER, "")).verdict().code();
        ReleasesPage.Line line = new ReleasesPage.Line(
                linked.record(),
                linked.about(),
                what,
                verdict,
                words.text("verdict." + verdict),
                notes.getOrDefault(BoardNotes.WHY, ""),
                words.name(stamp.who()),
                linked.used());
        return new Dated(stamp.recordedAt(), line);
    }
}
