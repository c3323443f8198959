package bagclock.ovens;

import bagclock.core.proof.Spell;

/**
 * A time in which a load was out of its band.
 *
 * @param number within the load, from 1
 * @param cold whether it fell back near room temperature: then it starts again
 */
record Interruption(int number, Kind kind, Spell spell, boolean cold) {
    /** What happened. */
    enum Kind {
        DOOR,
        POWER,
        OTHER
    }
}
