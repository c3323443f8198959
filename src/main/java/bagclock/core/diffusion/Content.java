package bagclock.core.diffusion;

/**
 * Moisture in a slab, as percent relative humidity at 30 C that it would be in equilibrium with; never negative.
 *
 * @param meanPercent over the whole depth
 * @param sealedFacePercent at the sealed face
 */
public record Content(double meanPercent, double sealedFacePercent) {}
