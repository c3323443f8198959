package bagclock.boards;

import bagclock.desk.BoardView;
import bagclock.platform.Secret;
import java.util.List;
import java.util.Optional;

/** The form that takes back the newest entry of a board that counts. */
final class TakeBack {
    static final String JOB = "job";

    private TakeBack() {}

    /**
     * The form; empty where nothing counts.
     *
     * @param job number of the job whose page it stands on; empty for none
     */
    static Optional<FormPart> form(BoardWords words, BoardView view, String job) {
        return view.last()
                .map(last -> new FormPart(
                        words.text("boards.take-back"),
                        words.text("boards.take-back.text", new EntryWords(words).what(last)),
                        path(view),
                        List.of(
                                new Hidden(JobForms.SEEN, Integer.toString(view.newest())),
                                new Hidden(JobForms.KEY, Secret.token()),
                                new Hidden(JOB, job)),
                        List.of(),
                        words.text("boards.take-back.act"),
                        false));
    }

    static String path(BoardView view) {
        return "/boards/" + view.serial() + "/take-back";
    }
}
