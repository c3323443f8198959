package bagclock.stock;

import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Verdict;
import bagclock.core.standard.Level;
import bagclock.core.standard.Rating;
import bagclock.desk.ItemView;
import bagclock.ledger.Item;
import bagclock.platform.Texts;
import bagclock.register.PartType;
import bagclock.stock.DryPackPage.Check;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What must be true before the site closes a dry pack (J-STD-033D, dry packing): the parts are inside their floor life
 * with a known history, or were baked. The used part of the life stays used.
 */
final class DryPacking {
    private static final Set<Item.Where> PACKABLE = Set.of(Item.Where.FLOOR, Item.Where.CABINET);

    private final Words words;

    DryPacking(Words words) {
        this.words = words;
    }

    /**
     * What holds and what bars.
     *
     * @param forShelf the bake that a fresh shelf life takes where the floor life is used up
     */
    List<Check> checks(ItemView view, Optional<BakeOffer> forShelf, Instant now) {
        List<Check> checks = new ArrayList<>();
        Item item = view.item();
        boolean packable = PACKABLE.contains(item.where());
        checks.add(new Check(
                packable,
                words.text(
                        packable ? "stock.pack.out" : "stock.pack.not-out",
                        words.text("stock.where." + item.where().name())),
                ""));
        checks.add(life(view, now));
        if (view.answer().verdict() == Verdict.BAKE) {
            forShelf.map(this::shelf).ifPresent(checks::add);
        }
        note(view).ifPresent(checks::add);
        return checks;
    }

    private Check life(ItemView view, Instant now) {
        Answer answer = view.answer();
        String tag = view.item().tag();
        if (answer.verdict() == Verdict.CLEAR) {
            return new Check(true, inside(answer), "");
        } else if (answer.verdict() == Verdict.BAKE) {
            String why = words.finding(answer.reasons().get(0));
            return new Check(false, words.text("stock.pack.bake", why), "/ovens/load?tag=" + tag);
        }
        return new Check(false, words.text("stock.pack.not", words.sentence(answer, now)), "/items/" + tag);
    }

    private Check shelf(BakeOffer offer) {
        String bake = words.text("stock.pack.shelf", words.bake(offer), words.source(offer));
        return new Check(
                false, offer.isAllowed() ? bake : words.text("stock.pack.shelf-barred", bake, words.bars(offer)), "");
    }

    private String inside(Answer answer) {
        return answer.floorLife()
                .totalHours()
                .map(total -> words.text(
                        "stock.pack.inside", Texts.usedHours(answer.floorLife().usedHours()), Texts.lifeHours(total)))
                .orElseGet(() -> words.text("stock.pack.no-life"));
    }

    /** A bag stops no clock of levels 4 to 5a once they were exposed, nor the time after a bake of level 6. */
    private Optional<Check> note(ItemView view) {
        PartType type = view.partType().fact();
        boolean runsOn = type.part().ratings().stream()
                .map(Rating::level)
                .flatMap(Optional::stream)
                .anyMatch(level -> level.runsOnOnceExposed() || level == Level.L6);
        boolean used = view.answer().floorLife().usedHours().signum() > 0;
        return runsOn && used ? Optional.of(new Check(true, words.text("stock.pack.runs-on"), "")) : Optional.empty();
    }
}
