/** One record for each physical quantity: keeps the unit out of every signature and refuses what cannot be. */
@NullMarked
package bagclock.core.quantity;

import org.jspecify.annotations.NullMarked;
