/**
 * Moisture in a body by Fick's law in one dimension: hides the series and the superposition. Knows no standard's rule,
 * no part and no verdict; nothing that answers whether a part may be heated may know this package.
 */
@NullMarked
package bagclock.core.diffusion;

import org.jspecify.annotations.NullMarked;
