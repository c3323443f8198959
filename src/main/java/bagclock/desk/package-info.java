/**
 * The one counter: takes a command, refuses it with every reason or writes it down, and answers whether an item may be
 * heated. The only room that sees register, readings and ledger together; knows no page.
 */
@NullMarked
package bagclock.desk;

import org.jspecify.annotations.NullMarked;
