/**
 * What the diffusion model may say of a part beside the tables: where it was tried and supported, and where it stays
 * silent. Never part of an answer: nothing that decides may know this package.
 */
@NullMarked
package bagclock.core.estimate;

import org.jspecify.annotations.NullMarked;
