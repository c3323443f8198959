/**
 * The plumbing that every feature shares: settings, database, pages, words, errors, live notices. Hides the web server,
 * the template engine and the pool; knows no feature and no rule.
 */
@NullMarked
package bagclock.platform;

import org.jspecify.annotations.NullMarked;
