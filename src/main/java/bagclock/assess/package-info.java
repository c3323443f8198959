/**
 * The assess contract: one stateless question in JSON, one answer in JSON, for HTTP and the command line alike. Hides
 * the layout of the JSON; decides nothing itself.
 */
@NullMarked
package bagclock.assess;

import org.jspecify.annotations.NullMarked;
