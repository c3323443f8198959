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
import java.time.ZoneOffset;
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
        Set<String> hanging = hanging(tx, zones);
        Set<String> ovens = tags.stream()
                .flatMap(tag -> new BakeRun(ledger.history(tx, tag).told()).ovens().stream())
                .collect(Collectors.toSet());
        Answer named = answer;
        for (Calibration calibration : pastDue) {
            boolean rests = calibration.kind() == Calibration.Kind.LOGGER
                    ? hanging.contains(calibration.name()) || hasReadSince(tx, calibration, zones)
                    : ovens.contains(calibration.name());
            named = rests
                    ? named.namingPastCalibration(
                            calibration.name(), calibration.dueOn().orElseThrow())
                    : named;
        }
        return named;
    }

    /** A logger may have been elsewhere than where it is kept: its files say where, and after which day it is in doubt. */
    private boolean hasReadSince(Transaction tx, Calibration calibration, Set<Zone> zones) {
        Instant from = calibration
                .dueOn()
                .orElseThrow()
                .plusDays(1)
                .atStartOfDay(ZoneOffset.UTC)
                .toInstant();
        List<String> places = zones.stream().map(Zone::name).toList();
        return files.hasReadSince(tx, calibration.name(), places, from);
    }

    private Set<String> hanging(Transaction tx, Set<Zone> zones) {
        return files.loggers(tx).stream()
                .filter(logger -> zones.contains(new Zone(logger.placeCode())))
                .map(LoggerProfile::name)
                .collect(Collectors.toSet());
    }
}
