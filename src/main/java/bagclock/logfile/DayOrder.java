package bagclock.logfile;

/** Which of day and month stands first where the year stands last. */
public enum DayOrder {
    DAY_FIRST,
    MONTH_FIRST
}
