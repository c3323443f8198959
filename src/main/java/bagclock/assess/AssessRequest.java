package bagclock.assess;

import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.SiteRules;
import bagclock.core.heat.Assumption;
import bagclock.core.heat.BoardQuestion;
import bagclock.core.heat.Question;
import java.util.List;
import java.util.Optional;

/**
 * One request of the contract, read: about a part or about a board.
 *
 * @param counted facts that the contract counts as nought where they are left out
 */
record AssessRequest(Optional<Question> part, Optional<BoardQuestion> board, List<Assumption> counted) {
    /** What part and board requests share. */
    record Setting(ClimateLog climate, SiteRules rules) {}
}
