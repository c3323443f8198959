package bagclock.boards;

import bagclock.core.heat.BoardLimits;
import bagclock.desk.BoardReply;
import bagclock.desk.BoardView;
import bagclock.platform.Entered;
import bagclock.platform.Secret;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a bake of a board on a page. */
final class BakePages {
    private final Rooms rooms;
    private final BoardWords words;

    BakePages(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
    }

    static String path(BoardView view) {
        return "/boards/" + view.serial() + "/bake";
    }

    BakePage page(BoardView view, Entered sent, List<String> refusals, Instant now) {
        BoardReply reply = rooms.boards().mayHeat(BoardPages.whole(view.serial(), now));
        return new BakePage(
                words.text("boards.bake.title", view.serial()),
                view.serial(),
                refusals,
                path(view),
                "board/" + view.serial() + " item zone register",
                words.box(reply, Duration.ZERO, now),
                borne(view, BoardLimits.of(reply.question()), now),
                record(view, sent, now),
                elsewhere(view, sent, now),
                TakeBack.form(words, view, ""),
                List.of(
                        words.text("boards.caution.kept", words.keptOn(view)),
                        words.text("boards.caution.oven"),
                        words.text("boards.caution.label")));
    }

    private FormPart record(BoardView view, Entered sent, Instant now) {
        BakeForm form = new BakeForm(rooms, view, sent);
        return view.state().running().isPresent()
                ? form.out(path(view) + "/end", hidden(view), now)
                : form.into(path(view), hidden(view), now, true);
    }

    private Optional<FormPart> elsewhere(BoardView view, Entered sent, Instant now) {
        return view.state().running().isPresent()
                ? Optional.empty()
                : Optional.of(new ElsewhereForm(words, view, sent).part(path(view) + "/elsewhere", hidden(view), now));
    }

    private static List<Hidden> hidden(BoardView view) {
        return List.of(
                new Hidden(JobForms.SEEN, Integer.toString(view.newest())), new Hidden(JobForms.KEY, Secret.token()));
    }

    /** The board first, then what stays on it, then its parts, the weakest first. */
    private List<TypePage.Fact> borne(BoardView view, BoardLimits limits, Instant now) {
        List<TypePage.Fact> facts = new ArrayList<>();
        view.type().ifPresent(type -> facts.addAll(new TypePages(rooms).facts(type.fact(), now)));
        if (!limits.unknown().isEmpty()) {
            facts.add(new TypePage.Fact(words.text("boards.bake.parts-unknown"), spots(limits.unknown())));
        }
        limits.parts()
                .forEach((limit, spots) -> facts.add(new TypePage.Fact(
                        words.text("boards.bake.parts", words.texts().temperature(limit)), spots(spots))));
        return facts;
    }

    private String spots(List<String> spots) {
        int most = 12;
        String named = String.join(", ", spots.subList(0, Math.min(most, spots.size())));
        return spots.size() > most ? words.text("boards.bake.spots-more", named, spots.size() - most) : named;
    }
}
