package bagclock.desk;

import bagclock.core.heat.Answer;

/**
 * An item whose answer an excursion changed.
 *
 * @param held what the answer would be had the cabinet held its class
 * @param now what it is
 */
public record ChangedAnswer(String tag, Answer held, Answer now) {}
