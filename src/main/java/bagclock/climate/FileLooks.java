package bagclock.climate;

import bagclock.climate.FilePages.Kept;
import bagclock.logfile.Answers;
import bagclock.logfile.Channel.Kind;
import bagclock.logfile.LogFile;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.readings.AnswersForm;
import bagclock.readings.Asked;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerProfile;
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
     * @param profile what would be kept of its logger
     * @param isDecided whether nothing differs from what is kept, or it was said whether that holds from now on
     */
    record Look(FilePage page, Optional<RoomLog> log, LoggerProfile profile, boolean isDecided) {}

    /** A file with what was seen of it. */
    private record Seen(FilePage page, Optional<RoomLog> log) {}

    /** What is stored of a file. */
    Kept kept(LoggerFile file) {
        List<Kept> through = store.readWith(file.id()).stream()
                .map(one -> kept(one, List.of()))
                .toList();
        return kept(file, through);
    }

    private Kept kept(LoggerFile file, List<Kept> through) {
        return new Kept(
                file,
                place(file.placeCode()),
                store.events(file.id()),
                store.progress(file.id()),
                store.otherHalf(file.id()),
                through);
    }

    /** What is known of the logger of a file. */
    LoggerProfile profile(LoggerFile file) {
        return store.logger(file.logger()).orElseGet(() -> LoggerProfile.fresh(file.logger(), file.placeCode()));
    }

    /** A file of which no reading counts. */
    Look of(Kept kept, Entered entered) {
        Answers answers = AnswersForm.answers(entered, messages);
        Seen seen = kept.other()
                .map(other -> pair(kept, other, answers, entered))
                .orElseGet(() -> alone(kept, answers, entered));
        List<Asked> asked = seen.page().asked();
        Memory memory = new Memory(profile(kept.file()), kept.file());
        Optional<Asked> question = asked.isEmpty() && seen.log().isEmpty()
                ? Optional.empty()
                : memory.question(asked, entered, place(memory.before().placeCode()));
        return new Look(
                question.map(seen.page()::asking).orElse(seen.page()),
                seen.log(),
                memory.after(asked, entered),
                question.isEmpty() || !entered.text(Memory.FIELD).isEmpty());
    }

    private String place(String code) {
        return climate.place(code, clock.instant()).fact().name();
    }

    private Seen alone(Kept kept, Answers answers, Entered entered) {
        BelowZero below = AnswersForm.belowZero(entered);
        Optional<Preview> preview = Preview.of(store.source(kept.file().id()), answers, below);
        if (preview.isEmpty()) {
            FilePage page = words.impossible(kept, messages.text("climate.file.unreadable"));
            return new Seen(page, Optional.empty());
        }
        Preview seen = preview.get();
        OtherHalf half =
                Half.isOnly(seen.file()) ? halfWords.wanted(seen.file(), halves.fitting(kept.file())) : OtherHalf.NONE;
        FilePage page = words.preview(kept, seen, entered, half);
        return new Seen(page, page.ready() ? Optional.of(seen.log(below)) : Optional.empty());
    }

    private Seen pair(Kept kept, LoggerFile other, Answers answers, Entered entered) {
        BelowZero below = AnswersForm.belowZero(entered);
        Optional<LogFile> one = halves.read(kept.file(), answers);
        Optional<LogFile> two = halves.read(other, answers);
        boolean isOne = fits(one, two);
        boolean isOther = fits(two, one);
        if (!isOne && !isOther) {
            FilePage page = words.impossible(kept, messages.text("climate.half.same"));
            return new Seen(page, Optional.empty());
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
        return new Seen(page, page.ready() ? Optional.of(preview.log(below, hold)) : Optional.empty());
    }

    private static boolean fits(Optional<LogFile> temperature, Optional<LogFile> humidity) {
        return temperature.isPresent() && humidity.isPresent() && Halves.fits(temperature.get(), humidity.get());
    }

    private static Half half(LoggerFile file, LogFile log, boolean isTemperature) {
        return (isTemperature ? Half.temperature(file.fileName(), log) : Half.humidity(file.fileName(), log))
                .orElseThrow();
    }
}
