/**
 * Harrow Quay Instruments, the invented shop of the demonstration: four weeks of its history, told to the desk with the
 * same commands that people send. Hides what happened there; knows no page.
 */
@NullMarked
package bagclock.demo;

import org.jspecify.annotations.NullMarked;
