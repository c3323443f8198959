package bagclock.climate;

import bagclock.climate.FilePages.Kept;
import bagclock.logfile.Answers;
import bagclock.logfile.Channel.Kind;
import bagclock.logfile.LogFile;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.readings.AnswersForm;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerProfile.BelowZero;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Looks at a file with what was said so far: by itself, or together with its other half. */
final class FileLooks {
    private final LogStore store;
    private final ClimateStore climate;
    private final Halves halves;
    private final FilePages words;
    private final HalfPages halfWords;
    private final Messages messages;
    private final Clock clock;

    FileLooks(LogStore store, ClimateStore climate, FilePages words, HalfPages halfWords, Clock clock) {
        this.store = store;
        this.climate = climate;
        this.halves = new Halves(store);
        this.words = words;
        this.halfWords = halfWords;
        this.messages = halfWords.messages();
        this.clock = clock;
    }

    /**
     * A file as it would be imported.
     *
     * @param log empty as long as it can't be
     */
    record Look(FilePage page, Optional<RoomLog> log, Answers answers, BelowZero below) {}

    /** What is stored of a file. */
    Kept kept(LoggerFile file) {
        List<Kept> through = store.readWith(file.id()).stream()
                .map(one -> kept(one, List.of()))
                .toList();
        return kept(file, through);
    }

    private Kept kept(LoggerFile file, List<Kept> through) {
        String place = climate.place(file.placeCode(), clock.instant()).fact().name();
        return new Kept(
                file, place, store.events(file.id()), store.progress(file.id()), store.otherHalf(file.id()), through);
    }

    /** A file of which no reading counts. */
    Look of(Kept kept, Entered entered) {
        Answers answers = AnswersForm.answers(entered, messages);
        return kept.other()
                .map(other -> pair(kept, other, answers, entered))
                .orElseGet(() -> alone(kept, answers, entered));
    }

    private Look alone(Kept kept, Answers answers, Entered entered) {
        BelowZero below = AnswersForm.belowZero(entered);
        Optional<Preview> preview = Preview.of(store.source(kept.file().id()), answers, below);
        if (preview.isEmpty()) {
            FilePage page = words.impossible(kept, messages.text("climate.file.unreadable"));
            return new Look(page, Optional.empty(), answers, below);
        }
        Preview seen = preview.get();
        OtherHalf half =
                Half.isOnly(seen.file()) ? halfWords.wanted(seen.file(), halves.fitting(kept.file())) : OtherHalf.NONE;
        FilePage page = words.preview(kept, seen, entered, half);
        return new Look(page, page.ready() ? Optional.of(seen.log(below)) : Optional.empty(), answers, below);
    }

    private Look pair(Kept kept, LoggerFile other, Answers answers, Entered entered) {
        BelowZero below = AnswersForm.belowZero(entered);
        Optional<LogFile> one = halves.read(kept.file(), answers);
        Optional<LogFile> two = halves.read(other, answers);
        boolean isOne = fits(one, two);
        boolean isOther = fits(two, one);
        if (!isOne && !isOther) {
            FilePage page = words.impossible(kept, messages.text("climate.half.same"));
            return new Look(page, Optional.empty(), answers, below);
        }
        boolean isEither = isOne && isOther;
        String said = entered.text(RoomFields.HOLDS);
        boolean isTemperature = isEither ? said.equals(Kind.TEMPERATURE.name()) : isOne;
        Half mine = half(kept.file(), one.orElseThrow(), isTemperature);
        Half theirs = half(other, two.orElseThrow(), !isTemperature);
        Duration hold = store.hold(clock.instant());
        PairPreview preview = PairPreview.of(isTemperature ? mine : theirs, isTemperature ? theirs : mine, below, hold);
        boolean isOpen = isEither && said.isEmpty();
        FilePage page = words.pair(kept, isOpen ? preview.unsaid() : preview, entered, isEither);
        return new Look(page, page.ready() ? Optional.of(preview.log(below, hold)) : Optional.empty(), answers, below);
    }

    private static boolean fits(Optional<LogFile> temperature, Optional<LogFile> humidity) {
        return temperature.isPresent() && humidity.isPresent() && Halves.fits(temperature.get(), humidity.get());
    }

    private static Half half(LoggerFile file, LogFile log, boolean isTemperature) {
        return (isTemperature ? Half.temperature(file.fileName(), log) : Half.humidity(file.fileName(), log))
                .orElseThrow();
    }
}
