package bagclock.desk;

import bagclock.core.exposure.Zone;
import bagclock.core.heat.Answer;
import bagclock.ledger.Ledger;
import bagclock.platform.Transaction;
import bagclock.readings.LoggerFiles;
import bagclock.readings.LoggerProfile;
import bagclock.register.Calibration;
import bagclock.register.Register;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The loggers and ovens past their calibration that an answer rests on. */
final class PastCalibration {
    private final Register register = new Register();
    private final Ledger ledger = new Ledger();
    private final LoggerFiles files = new LoggerFiles();

    /**
     * The same answer, naming them.
     *
     * @param zones whose readings count
     * @param tags of the items whose bakes count
     */
    Answer named(Transaction tx, Answer answer, Instant moment, Set<Zone> zones, Collection<String> tags) {
        List<Calibration> pastDue = register.calibrations(tx).stream()
                .filter(calibration -> calibration.isPastDueAt(moment))
                .toList();
        if (pastDue.isEmpty()) {
            return answer;
        }
        Set<String> loggers = loggers(tx, zones);
        Set<String> ovens = tags.stream()
                .flatMap(tag -> new BakeRun(ledger.history(tx, tag).told()).ovens().stream())
                .collect(Collectors.toSet());
        Answer named = answer;
        for (Calibration calibration : pastDue) {
            boolean rests = calibration.kind() == Calibration.Kind.LOGGER
                    ? loggers.contains(calibration.name())
                    : ovens.contains(calibration.name());
            named = rests
                    ? named.namingPastCalibration(
                            calibration.name(), calibration.dueOn().orElseThrow())
                    : named;
        }
        return named;
    }

    private Set<String> loggers(Transaction tx, Set<Zone> zones) {
        return files.loggers(tx).stream()
                .filter(logger -> zones.contains(new Zone(logger.placeCode())))
                .map(LoggerProfile::name)
                .collect(Collectors.toSet());
    }
}
