package bagclock.bench;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;
import java.util.Optional;

/**
 * The question at the bench and, once something is scanned, its answer.
 *
 * @param address of this very question
 * @param topics what the answer depends on, for the live stream
 * @param memory how far answers of late rest on cells from memory, in words; empty for not at all
 * @param release the release that waits for this heat, in words; empty for none
 */
public record BenchPage(
        String title,
        PlanFields plan,
        String address,
        String topics,
        Optional<AnswerPart> answer,
        Optional<BoardPart> board,
        Optional<RecordPart> record,
        String memory,
        String release,
        Optional<ReleasePart> releaseForm)
        implements Page {
    /** The same page with words about cells from memory. */
    BenchPage remembering(String words) {
        return new BenchPage(title, plan, address, topics, answer, board, record, words, release, releaseForm);
    }

    /** The same page with a release that was given, or the form to give one. */
    BenchPage releasing(String given, Optional<ReleasePart> form) {
        return new BenchPage(title, plan, address, topics, answer, board, record, memory, given, form);
    }

    /** The fields of the plan. */
    public record PlanFields(
            Field code,
            Field purpose,
            List<Choice> purposes,
            Field peak,
            Field minutes,
            Field local,
            List<Choice> localChoices,
            Field start) {}

    /**
     * The parts on a board.
     *
     * @param href its page, or the one on which it is entered
     * @param verdict the strictest of them
     */
    public record BoardPart(
            String serial,
            String href,
            String verdict,
            String sentence,
            String aside,
            List<String> notices,
            List<Line> lines) {
        /** One part. */
        public record Line(
                String location, String tag, String what, String verdict, String word, String sentence, String href) {}
    }

    /**
     * The form that records the heat.
     *
     * @param hidden the plan that the answer is for
     * @param fits the answer is clear
     */
    public record RecordPart(List<Hidden> hidden, Field at, Field measured, boolean fits, String refusal) {
        /** A value that goes with the form. */
        public record Hidden(String name, String value) {}
    }

    /** The form by which an engineer releases the heat; {@code hidden} is the plan. */
    public record ReleasePart(List<RecordPart.Hidden> hidden, Field why) {}

    @Override
    public String template() {
        return "bench/bench.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
