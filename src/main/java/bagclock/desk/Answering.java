package bagclock.desk;

import bagclock.core.heat.Answer;
import bagclock.core.heat.Assess;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.Question;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Citation;
import bagclock.ledger.Notes;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Answers about items: what the core says, and which loggers and ovens past their calibration it rests on. */
final class Answering {
    private final Standards standards;
    private final Gathering gathering;
    private final PastCalibration past = new PastCalibration();

    Answering(Standards standards, Gathering gathering) {
        this.standards = standards;
        this.gathering = gathering;
    }

    /** May it be heated; without a plan: for a pass of no length to its rated peak. */
    Answer of(Transaction tx, String tag, Evidence evidence, Optional<HeatPlan> plan) {
        Instant moment = evidence.history().moment();
        Answer answer = Assess.of(standards.at(tx, moment), new Question(evidence.history(), plan));
        return past.named(
                tx, answer, moment, evidence.history().climate().zones().keySet(), List.of(tag));
    }

    /** The same, from all that is known of the item at a moment. */
    Answer of(Transaction tx, String tag, Optional<HeatPlan> plan, Instant moment) {
        return of(tx, tag, gathering.of(tx, tag, moment), plan);
    }

    /** Notes the answer for a heat, and what that was worked out from. */
    Answer note(Transaction tx, String tag, HeatPlan plan, Lookup known) {
        Instant at = plan.at();
        Evidence evidence = gathering.of(tx, tag, at);
        Answer answer = of(tx, tag, evidence, Optional.of(plan));
        known.note(Notes.ANSWER, AnswerText.of(answer));
        known.note(Notes.INPUTS, evidence.sha256());
        known.note(Notes.READINGS, BoardGathering.readings(evidence));
        known.note(Notes.VERSIONS, standards.version(tx, at) + " " + evidence.versions());
        return answer;
    }

    /** The same for a transaction. */
    Planning.Answers in(Transaction tx) {
        return new Planning.Answers() {
            @Override
            public Answer note(String tag, HeatPlan plan, Lookup known) {
                return Answering.this.note(tx, tag, plan, known);
            }

            @Override
            public Optional<Citation> bakeCell(String tag, Celsius setPoint, Instant at) {
                return Answering.bakeCell(of(tx, tag, Optional.empty(), at), setPoint);
            }
        };
    }

    /** A run counts by the hottest bake that is no hotter than its set-point. */
    static Optional<Citation> bakeCell(Answer answer, Celsius setPoint) {
        return answer.bakes().stream()
                .filter(offer -> !offer.temperature().isAbove(setPoint))
                .max(Comparator.comparing(BakeOffer::temperature))
                .map(BakeOffer::citation);
    }
}
