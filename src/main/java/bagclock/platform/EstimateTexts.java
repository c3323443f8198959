package bagclock.platform;

import bagclock.core.estimate.Band;
import bagclock.core.estimate.Beside;
import bagclock.core.estimate.Estimate;
import bagclock.core.estimate.Silence;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the diffusion model says beside an answer, in words. Immutable. */
public final class EstimateTexts {
    private static final double MOST_TIMES = 10;

    private final Texts texts;
    private final Messages messages;

    /** Words of one site. */
    public EstimateTexts(Texts texts) {
        this.texts = texts;
        this.messages = texts.messages();
    }

    /** The figures that are shown, or why there are none. */
    public String lead(Beside beside) {
        return beside.estimate()
                .map(Estimate::last)
                .map(last -> messages.text(
                        "estimate.lead",
                        share(last.sealedFace().worse()),
                        share(last.mean().worse())))
                .orElseGet(() -> messages.text(
                        "estimate.silent." + beside.silence().map(Silence::name).orElseThrow()));
    }

    /** The figures for the low and the high diffusivity. */
    public String band(Estimate estimate) {
        Band face = estimate.last().sealedFace();
        Band mean = estimate.last().mean();
        return messages.text(
                "estimate.band", share(face.low()), share(face.high()), share(mean.low()), share(mean.high()));
    }

    /** Where the rules may be too kind; empty if nowhere. */
    public Optional<String> warning(Beside beside) {
        return beside.warning()
                .map(warning -> messages.text(
                        "estimate.warning." + warning.cause().name(),
                        texts.span(warning.modelLeaves()),
                        texts.span(warning.rulesLeave())));
    }

    /** What the figures rest on, in sentences. */
    public List<String> assumptions(Estimate estimate, Instant now) {
        return List.of(
                messages.text("estimate.assumes.dry", texts.at(estimate.dryAt(), now)),
                messages.text("estimate.assumes.air"),
                messages.text("estimate.assumes.constants"));
    }

    /** A share of the limit, rounded up. */
    private String share(double share) {
        if (share >= MOST_TIMES) {
            return messages.text("estimate.times", (int) MOST_TIMES);
        }
        return BigDecimal.valueOf(share * 100).setScale(0, RoundingMode.UP) + " %";
    }
}
