package bagclock.register;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.platform.SortKey;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** One version of a part type, as stored. */
record PartTypeRow(
        String partNumber,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        String maker,
        String description,
        String document,
        String revision,
        String ratings,
        String bodyKind,
        @Nullable BigDecimal thicknessMm,
        @Nullable BigDecimal lengthMm,
        @Nullable BigDecimal widthMm,
        @Nullable Boolean stackedDie,
        @Nullable Boolean blockingPlanes,
        @Nullable Boolean leadFree,
        @Nullable Long floorLifeMs,
        String derating,
        @Nullable Integer shelfMonths,
        String bakes,
        boolean tableToo,
        @Nullable Long useWithinMs,
        @Nullable Integer maxBakes,
        int maxReflowPasses,
        @Nullable Double maxBakeC,
        String carrierKind,
        @Nullable Double carrierC,
        long priorBakedMs,
        int priorBakes,
        int priorPasses) {

    static PartTypeRow of(PartType type, Version version) {
        Part part = type.part();
        Body body = part.body();
        MakerRules maker = part.maker();
        return new PartTypeRow(
                type.number(),
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                SortKey.of(type.number()),
                type.maker(),
                type.description(),
                type.source().document(),
                type.source().revision(),
                MakerTexts.ratings(part.ratings()),
                body.kind().code(),
                body.thickness().map(Millimetres::value).orElse(null),
                body.length().map(Millimetres::value).orElse(null),
                body.width().map(Millimetres::value).orElse(null),
                body.stackedDie().orElse(null),
                body.blockingPlanes().orElse(null),
                body.leadFree().orElse(null),
                maker.floorLife().map(Duration::toMillis).orElse(null),
                MakerTexts.derating(maker.derating()),
                boxed(maker.shelfMonths()),
                MakerTexts.bakes(maker.bakes()),
                maker.tableToo(),
                maker.useWithin().map(Duration::toMillis).orElse(null),
                boxed(maker.maxBakes()),
                maker.maxReflowPasses(),
                Columns.degrees(part.maxBake()),
                Columns.kind(part.carrier()),
                Columns.degrees(part.carrier().borne()),
                part.prior().bakedAbove90().toMillis(),
                part.prior().bakes(),
                part.prior().passes());
    }

    Versioned<PartType> fact() {
        Part part = new Part(
                MakerTexts.ratings(ratings),
                body(),
                makerRules(),
                Optional.ofNullable(maxBakeC).map(Celsius::new),
                Columns.carrier(carrierKind, carrierC),
                new Part.Prior(Duration.ofMillis(priorBakedMs), priorBakes, priorPasses));
        PartType type = new PartType(partNumber, maker, description, new PartType.Source(document, revision), part);
        return new Versioned<>(type, new Version(version, validFrom, recordedAt, who));
    }

    private Body body() {
        return new Body(
                BodyKind.parse(bodyKind).orElse(BodyKind.UNKNOWN),
                Optional.ofNullable(thicknessMm).map(Millimetres::new),
                Optional.ofNullable(lengthMm).map(Millimetres::new),
                Optional.ofNullable(widthMm).map(Millimetres::new),
                Optional.ofNullable(stackedDie),
                Optional.ofNullable(blockingPlanes),
                Optional.ofNullable(leadFree));
    }

    private MakerRules makerRules() {
        return new MakerRules(
                Optional.ofNullable(floorLifeMs).map(Duration::ofMillis),
                MakerTexts.derating(derating),
                unboxed(shelfMonths),
                MakerTexts.bakes(bakes),
                tableToo,
                Optional.ofNullable(useWithinMs).map(Duration::ofMillis),
                unboxed(maxBakes),
                maxReflowPasses);
    }

    private static @Nullable Integer boxed(OptionalInt value) {
        return value.isPresent() ? value.getAsInt() : null;
    }

    private static OptionalInt unboxed(@Nullable Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }
}
