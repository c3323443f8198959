package bagclock.readings;

/** How far the import of a file is. */
public record Progress(long samplesDone, long samplesAll) {}
