/**
 * Which lot goes into which oven, and when. Hides the search: a shop goes in, a lawful plan comes out, and what is known
 * about how good it is. Knows nothing of parts, clocks and the rules that made a bake allowed.
 */
@NullMarked
package bagclock.core.oven;

import org.jspecify.annotations.NullMarked;
