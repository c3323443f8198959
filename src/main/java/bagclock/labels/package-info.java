/** Labels of items and bags, and the sheet of codes: drawn once in millimetres, then printed from the page or as PDF. */
@NullMarked
package bagclock.labels;

import org.jspecify.annotations.NullMarked;
