package bagclock.core.heat;

import java.util.EnumSet;
import java.util.Set;

/** What an engineer may release for one heat, by name and reason; the verdict stays. */
public final class Release {
    /** Closed, unmeasured, in the oven: another way out is at hand. */
    private static final Set<FindingCode> ANOTHER_WAY_OUT = EnumSet.of(
            FindingCode.BAG_SEALED,
            FindingCode.BODY_NOT_MEASURED,
            FindingCode.IN_OVEN,
            FindingCode.BAKE_END_NOT_RECORDED);

    private Release() {}

    /** Whether the answer is a hold or a bake without another way out at hand. */
    public static boolean isPossible(Answer answer) {
        boolean barred = answer.verdict() == Verdict.HOLD || answer.verdict() == Verdict.BAKE;
        return barred && ANOTHER_WAY_OUT.stream().noneMatch(answer::has);
    }
}
