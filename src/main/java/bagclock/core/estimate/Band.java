package bagclock.core.estimate;

/**
 * Content as a share of the limit, for both diffusivities; 1 is the content that a dry part has at the end of its floor
 * life at 30 C / 60 %RH.
 */
public record Band(double low, double high) {
    /** What is shown: the larger share. */
    public double worse() {
        return Math.max(low, high);
    }
}
