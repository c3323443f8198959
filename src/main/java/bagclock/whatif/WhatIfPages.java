package bagclock.whatif;

import bagclock.core.Refusal;
import bagclock.core.exposure.Air;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Verdict;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Choice;
import bagclock.platform.EstimateTexts;
import bagclock.platform.Field;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace;
import bagclock.whatif.Supposed.Result;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts suppositions and what follows from them into words. */
final class WhatIfPages {
    private final Texts texts;
    private final AnswerTexts answers;
    private final EstimateTexts estimates;

    WhatIfPages(Texts texts) {
        this.texts = texts;
        this.answers = new AnswerTexts(texts.messages(), texts);
        this.estimates = new EstimateTexts(texts);
    }

    /** What the page is about; {@code number} is empty for an item. */
    record Subject(String name, String lead, String action, String back, String number) {}

    WhatIfPage page(Subject subject, WhatIfForm form, List<KnownPlace.DryCabinet> cabinets, Supposed supposed) {
        return new WhatIfPage(
                text("whatif.title", subject.name()),
                subject.name(),
                lead(subject, supposed),
                subject.action(),
                subject.back(),
                subject.number(),
                fields(form, cabinets),
                form.air().map(air -> inAir(supposed, air)).orElseGet(() -> nothing("whatif.mend")),
                inCabinet(supposed, form),
                form.bakeAt().map(at -> bakes(supposed, at)).orElseGet(() -> nothing("whatif.mend")));
    }

    private String lead(Subject subject, Supposed supposed) {
        return supposed.opensBag() ? subject.lead() + ". " + text("whatif.opened") : subject.lead();
    }

    private WhatIfPage.Fields fields(WhatIfForm form, List<KnownPlace.DryCabinet> cabinets) {
        return new WhatIfPage.Fields(
                field(form, WhatIfForm.TEMPERATURE),
                field(form, WhatIfForm.HUMIDITY),
                field(form, WhatIfForm.CABINET),
                cabinets.stream().map(one -> Choice.of(one.code(), one.name())).toList(),
                field(form, WhatIfForm.UNTIL),
                field(form, WhatIfForm.BAKE_AT));
    }

    private Field field(WhatIfForm form, String name) {
        return form.entered().field(name, text("whatif.field." + name));
    }

    private WhatIfPage.Told inAir(Supposed supposed, Air air) {
        Instant now = supposed.history().moment();
        return supposed.inAir(air).fold(result -> told(result, lasting(result.answer(), now)), this::refused);
    }

    /** How long it lasts from now on. */
    private List<String> lasting(Answer answer, Instant now) {
        List<String> sentences = new ArrayList<>();
        if (answer.verdict() == Verdict.CLEAR) {
            sentences.add(answer.floorLife()
                    .endsAt()
                    .map(end -> text("whatif.lasts", texts.at(end, now), texts.span(left(now, end))))
                    .orElseGet(() -> text("whatif.lasts.on")));
        } else {
            sentences.add(answers.finding(answer.reasons().get(0)));
        }
        return sentences;
    }

    /** An end is rounded down to the second and may lie just before the moment. */
    private static Duration left(Instant now, Instant end) {
        return end.isAfter(now) ? Duration.between(now, end) : Duration.ZERO;
    }

    private WhatIfPage.Told inCabinet(Supposed supposed, WhatIfForm form) {
        if (form.cabinet().isEmpty() || form.until().isEmpty()) {
            return nothing(form.entered().isRefused() ? "whatif.mend" : "whatif.cabinet.none");
        }
        Instant until = form.until().get();
        return supposed.inCabinet(form.cabinet().get().limit(), until)
                .fold(result -> told(result, outAgain(supposed, result.answer(), until)), this::refused);
    }

    private List<String> outAgain(Supposed supposed, Answer answer, Instant until) {
        Instant now = supposed.history().moment();
        List<String> sentences = new ArrayList<>(lasting(answer, until));
        Answer stays = supposed.asItIs(now).answer();
        stays.floorLife()
                .endsAt()
                .filter(end -> stays.verdict() == Verdict.CLEAR)
                .ifPresent(end -> sentences.add(text("whatif.cabinet.else", texts.at(end, now))));
        sentences.add(text("whatif.cabinet.kept"));
        return sentences;
    }

    private WhatIfPage.Told bakes(Supposed supposed, Instant later) {
        Instant now = supposed.history().moment();
        Result at = supposed.asItIs(later);
        Answer today = supposed.asItIs(now).answer();
        List<String> sentences = new ArrayList<>();
        sentences.add(text("whatif.bake.unbaked", texts.at(later, now)));
        sentences.add(bake("whatif.bake.now", today, now, now));
        sentences.add(bake("whatif.bake.later", at.answer(), later, now));
        if (today.verdict() == Verdict.CLEAR) {
            sentences.add(text("whatif.bake.need-not"));
        }
        sentences.add(text("whatif.bake.warm"));
        return told(at, sentences);
    }

    private String bake(String key, Answer answer, Instant start, Instant now) {
        Optional<BakeOffer> offer =
                answer.bakes().stream().filter(BakeOffer::isAllowed).findFirst();
        return offer.map(one -> text(
                        key,
                        texts.at(start, now),
                        texts.temperature(one.temperature()),
                        texts.span(one.time()),
                        texts.at(start.plus(one.time()), now)))
                .orElseGet(() -> text("whatif.bake.none", texts.at(start, now)));
    }

    private WhatIfPage.Told told(Result result, List<String> sentences) {
        String verdict = result.answer().verdict().code();
        return new WhatIfPage.Told(
                verdict,
                text("verdict." + verdict),
                sentences,
                text("whatif.estimate", texts.at(result.at()), estimates.lead(result.then())),
                estimates.warning(result.beside()).orElse(""));
    }

    private WhatIfPage.Told refused(List<Refusal> refusals) {
        return new WhatIfPage.Told("", "", refusals.stream().map(texts::refusal).toList(), "", "");
    }

    private WhatIfPage.Told nothing(String key) {
        return new WhatIfPage.Told("", "", List.of(text(key)), "", "");
    }

    private String text(String key, Object... parts) {
        return texts.messages().text(key, parts);
    }
}
