/**
 * Files that loggers write: text in, samples of temperature and humidity and a report out. Hides encodings, separators,
 * layouts, units and local clocks; knows nothing of zones, ovens, storage or pages.
 */
@NullMarked
package bagclock.logfile;

import org.jspecify.annotations.NullMarked;
