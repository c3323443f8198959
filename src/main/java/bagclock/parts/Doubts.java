package bagclock.parts;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.standard.BakeRow;
import bagclock.core.standard.Body;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.core.standard.Standard;
import bagclock.parts.Doubt.Code;
import bagclock.register.PartType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Names what contradicts itself or the standard in a part type: the maker's word comes first, so none of it
 * is refused, but an engineer has to look at each.
 */
final class Doubts {
    private final Standard standard;
    private final PartType type;
    private final Part part;
    private final MakerRules maker;
    private final List<Doubt> found = new ArrayList<>();

    private Doubts(Standard standard, PartType type) {
        this.standard = standard;
        this.type = type;
        this.part = type.part();
        this.maker = part.maker();
    }

    static List<Doubt> about(PartType type, Standard standard) {
        Doubts doubts = new Doubts(standard, type);
        doubts.ratings();
        doubts.body();
        doubts.found.addAll(LifeDoubts.about(type.part(), doubts.strictest(), standard));
        doubts.found.addAll(BakeDoubts.about(type.part(), doubts.strictest(), standard));
        doubts.levelSix();
        doubts.counts();
        doubts.document();
        return List.copyOf(doubts.found);
    }

    private void doubt(Column column, Code code, Object... parts) {
        found.add(Doubt.of(column, code, parts));
    }

    private Optional<Level> strictest() {
        boolean unknown =
                part.ratings().stream().anyMatch(rating -> rating.level().isEmpty());
        Stream<Level> levels = part.ratings().stream().flatMap(rating -> rating.level().stream());
        return unknown ? Optional.empty() : levels.max(Comparator.naturalOrder());
    }

    private void ratings() {
        List<Rating> rising = part.ratings().stream()
                .filter(rating -> rating.level().isPresent() && rating.peak().isPresent())
                .sorted(Comparator.comparing(rating -> rating.peak().orElseThrow()))
                .toList();
        for (int i = 1; i < rising.size(); i++) {
            Rating cooler = rising.get(i - 1);
            Rating hotter = rising.get(i);
            if (hotter.level().orElseThrow().compareTo(cooler.level().orElseThrow()) < 0) {
                doubt(
                        Column.MORE_RATINGS,
                        Code.LEVEL_MILDER_WHEN_HOTTER,
                        cooler.peak().orElseThrow(),
                        cooler.level().orElseThrow().code(),
                        hotter.peak().orElseThrow(),
                        hotter.level().orElseThrow().code());
            }
        }
        peak();
    }

    /** Of what the body is known to be the lowest classification that is possible; a maker may rate higher, not lower. */
    private void peak() {
        Optional<Celsius> highest = highestPeak();
        Celsius least = standard.classification(
                        part.body().leadFree(),
                        part.body().thickness(),
                        part.body().volumeMm3())
                .value();
        highest.filter(least::isAbove).ifPresent(peak -> doubt(Column.PEAK, Code.PEAK_BELOW_CLASS, peak, least));
        part.maxBake()
                .ifPresent(limit -> highest.filter(limit::isAbove)
                        .ifPresent(peak -> doubt(Column.BAKE_LIMIT, Code.LIMIT_ABOVE_PEAK, limit, peak)));
    }

    private Optional<Celsius> highestPeak() {
        return part.ratings().stream().flatMap(rating -> rating.peak().stream()).max(Comparator.naturalOrder());
    }

    private void body() {
        Body body = part.body();
        Optional<Millimetres> narrow =
                Stream.of(body.length(), body.width()).flatMap(Optional::stream).min(Comparator.naturalOrder());
        body.thickness()
                .filter(thick -> narrow.filter(thick::isAbove).isPresent())
                .ifPresent(thick -> doubt(Column.THICKNESS, Code.THICKER_THAN_WIDE));
        boolean needsBake = strictest().map(Level::hasFloorLife).orElse(true);
        body.thickness()
                .filter(thick -> BakeRow.of(thick).isEmpty())
                .filter(thick -> needsBake && maker.bakes().isEmpty())
                .ifPresent(thick -> doubt(Column.THICKNESS, Code.BODY_WITHOUT_ROW, thick));
    }

    private void levelSix() {
        if (strictest().filter(level -> level == Level.L6).isEmpty()) {
            return;
        }
        if (maker.bakes().isEmpty()) {
            doubt(Column.BAKES, Code.LEVEL_6_WITHOUT_BAKE);
        }
        if (maker.useWithin().isEmpty()) {
            doubt(Column.USE_WITHIN, Code.LEVEL_6_WITHOUT_TIME);
        }
    }

    private void counts() {
        Part.Prior prior = part.prior();
        if (maker.maxBakes().isPresent() && prior.bakes() >= maker.maxBakes().getAsInt()) {
            doubt(
                    Column.MOST_BAKES,
                    Code.NO_BAKE_LEFT,
                    prior.bakes(),
                    maker.maxBakes().getAsInt());
        }
        if (prior.passes() >= maker.maxReflowPasses()) {
            doubt(Column.MOST_PASSES, Code.NO_HEAT_LEFT, prior.passes(), maker.maxReflowPasses());
        }
    }

    private void document() {
        boolean rules = !maker.equals(MakerRules.NONE) || part.maxBake().isPresent();
        if (rules && type.source().document().isEmpty()) {
            doubt(Column.DOCUMENT, Code.NO_DOCUMENT);
        }
    }
}
