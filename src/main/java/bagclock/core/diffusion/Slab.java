package bagclock.core.diffusion;

import bagclock.core.quantity.Millimetres;

/**
 * A body as the model sees it: open on one face, sealed on the other.
 *
 * @param depth from the open to the sealed face; half the thickness of a body that is open on both
 * @param surfaceEnergyEv how the level at the open face rises with temperature at the same humidity (eV, about 0 to
 *     0.12)
 */
public record Slab(Millimetres depth, double surfaceEnergyEv) {}
