package bagclock.logfile;

/** What a file leaves open and a person must say. */
public enum Question {
    /** Which channel is the temperature, which the humidity. */
    CHANNELS,
    /** Celsius or Fahrenheit. */
    UNIT,
    /** Whether 03/04 is the third of April or the fourth of March. */
    DAY_ORDER,
    /** In which zone the logger's clock stands. */
    ZONE,
    /** Whether numbers in the time column are a spreadsheet's days since 30 December 1899. */
    SPREADSHEET_DAYS,
    /** Which of both: an hour that autumn has twice is in the file once. */
    DOUBLE_HOUR
}
