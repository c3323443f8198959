package bagclock.desk;

import bagclock.core.Reason;
import bagclock.ledger.Act;
import bagclock.ledger.Draft;
import bagclock.ledger.Entry;
import bagclock.ledger.History;
import bagclock.ledger.Ledger;
import bagclock.platform.Transaction;
import bagclock.register.Register;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Turns corrections into drafts. A split or a join stands in two ledgers and is taken back in both. */
final class Corrections {
    private static final int LOOK_BACK = 50;

    private final Transaction tx;
    private final Ledger ledger;
    private final Register register;
    private final Planning planning;

    Corrections(Transaction tx, Ledger ledger, Register register, Planning planning) {
        this.tx = tx;
        this.ledger = ledger;
        this.register = register;
        this.planning = planning;
    }

    /** The drafts of any command. */
    Plan plan(Command command, Instant now) {
        if (command instanceof Command.TakeBack back) {
            return takeBack(back.tag(), back.seq(), now);
        } else if (command instanceof Command.TakeBackLast last) {
            return takeBackLast(last, now);
        } else if (command instanceof Command.Correct correct) {
            return correct(correct, now);
        }
        return planning.plan(command, now);
    }

    private Plan takeBackLast(Command.TakeBackLast last, Instant now) {
        List<Entry> newest = ledger.newestOf(tx, last.header().who(), LOOK_BACK);
        return newest.stream()
                .filter(entry -> !(entry.act() instanceof Act.TakenBack))
                .filter(entry -> ledger.history(tx, entry.tag()).stands(entry.seq()))
                .findFirst()
                .map(entry -> takeBack(entry.tag(), entry.seq(), now))
                .orElseGet(() -> Plan.refused(Reason.NOTHING_TO_TAKE_BACK));
    }

    private Plan correct(Command.Correct correct, Instant now) {
        History history = ledger.history(tx, correct.tag());
        Optional<Plan> refused = refused(history, correct.tag(), correct.seq());
        if (refused.isPresent()) {
            return refused.get();
        }
        Entry entry = history.entry(correct.seq()).orElseThrow();
        Plan plan = correct.replacement() instanceof Command.Receive receive
                ? receive(receive, correct.tag(), now)
                : planning.plan(correct.replacement(), now);
        boolean birth = entry.act() instanceof Act.Received;
        boolean fits = birth == (correct.replacement() instanceof Command.Receive)
                && correct.replacement().tag().equals(correct.tag());
        if (isFamily(entry.act())
                || entry.corrects().isPresent()
                || !fits
                || plan.drafts().size() > 1) {
            return Plan.refused(Reason.ONLY_TAKEN_BACK, entry.act().word());
        } else if (!plan.refusals().isEmpty()) {
            return plan;
        }
        Draft words = plan.drafts().get(0);
        return Plan.of(new Draft(words.tag(), words.happenedAt(), words.act(), OptionalInt.of(correct.seq())));
    }

    private Plan receive(Command.Receive receive, String tag, Instant now) {
        Lookup known = new Lookup(tx, register, ledger, now);
        if (receive.header().happenedAt().isAfter(now)) {
            known.refuse(Reason.HAPPENED_IN_FUTURE, receive.header().happenedAt(), now);
        }
        Act.Received act = planning.received(receive, known);
        return known.plan(new Draft(tag, receive.header().happenedAt(), act));
    }

    private static boolean isFamily(Act act) {
        return act instanceof Act.SplitOff
                || act instanceof Act.SplitFrom
                || act instanceof Act.Joined
                || act instanceof Act.JoinedInto;
    }

    private Optional<Plan> refused(History history, String tag, int seq) {
        if (history.entry(seq).isEmpty()) {
            return Optional.of(Plan.refused(Reason.ENTRY_UNKNOWN, tag, seq));
        }
        return history.stands(seq) ? Optional.empty() : Optional.of(Plan.refused(Reason.ENTRY_CORRECTED, tag, seq));
    }

    private Plan takeBack(String tag, int seq, Instant now) {
        History history = ledger.history(tx, tag);
        Optional<Plan> refused = refused(history, tag, seq);
        if (refused.isPresent()) {
            return refused.get();
        }
        Act act = history.entry(seq).orElseThrow().act();
        if (act instanceof Act.SplitOff split) {
            return takenBack(tag, seq, now).with(draft(split.child(), 1, now));
        } else if (act instanceof Act.SplitFrom from && isSplit(from)) {
            return takeBack(from.parent(), from.parentSeq(), now);
        } else if (act instanceof Act.Joined joined) {
            Plan plan = takenBack(tag, seq, now);
            for (Act.Joined.Other other : joined.others()) {
                plan = plan.with(draft(other.tag(), other.seq(), now));
            }
            return plan;
        } else if (act instanceof Act.JoinedInto into) {
            return takeBack(into.keeper(), joinedSeq(into.keeper(), tag), now);
        }
        return isTakenBackFamily(history, seq)
                ? Plan.refused(Reason.ENTRY_CORRECTED, tag, seq)
                : takenBack(tag, seq, now);
    }

    /** A part that was recovered from a board comes from a use, which stands by itself. */
    private boolean isSplit(Act.SplitFrom from) {
        return ledger.history(tx, from.parent())
                .entry(from.parentSeq())
                .filter(entry -> entry.act() instanceof Act.SplitOff)
                .isPresent();
    }

    /** A split or a join that was taken back stays so: it is told again instead. */
    private static boolean isTakenBackFamily(History history, int seq) {
        Entry entry = history.entry(seq).orElseThrow();
        return entry.corrects().isPresent()
                && history.entry(entry.corrects().getAsInt())
                        .filter(corrected -> isFamily(corrected.act()))
                        .isPresent();
    }

    private int joinedSeq(String keeper, String tag) {
        return ledger.history(tx, keeper).told().stream()
                .filter(told -> told.act() instanceof Act.Joined joined
                        && joined.others().stream()
                                .anyMatch(other -> other.tag().equals(tag)))
                .findFirst()
                .orElseThrow()
                .seq();
    }

    private static Plan takenBack(String tag, int seq, Instant now) {
        return Plan.of(draft(tag, seq, now));
    }

    private static Draft draft(String tag, int seq, Instant now) {
        return new Draft(tag, now, new Act.TakenBack(), OptionalInt.of(seq));
    }
}
