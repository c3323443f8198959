/** What if: answers by the rules about a history that is only supposed; writes nothing. */
@NullMarked
package bagclock.whatif;

import org.jspecify.annotations.NullMarked;
