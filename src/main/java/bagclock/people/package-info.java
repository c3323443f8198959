/**
 * Who may sign in and how: accounts, roles, passwords, badges with PINs, sessions. Hides the secrets and how guessing is
 * slowed; other rooms see a {@link bagclock.platform.Person} and nothing else.
 */
@NullMarked
package bagclock.people;

import org.jspecify.annotations.NullMarked;
