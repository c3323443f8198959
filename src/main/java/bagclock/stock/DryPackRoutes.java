package bagclock.stock;

import bagclock.core.heat.PackingBake;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.ItemView;
import bagclock.platform.Entered;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Secret;
import bagclock.platform.Visit;
import bagclock.stock.DryPackPage.Check;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** Dry packing, step by step; at its end stands the label of the bag. */
final class DryPackRoutes {
    private static final String PATH = "/items/{tag}/dry-pack";
    private static final String YES = "yes";
    private static final List<String> CONFIRMED = List.of("desiccant", "card", "closure");

    private final Desk desk;
    private final Pages pages;
    private final Words words;
    private final DryPacking packing;
    private final Clock clock;

    DryPackRoutes(Desk desk, Pages pages, Words words, Clock clock) {
        this.desk = desk;
        this.pages = pages;
        this.words = words;
        this.packing = new DryPacking(words);
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get(
                PATH,
                ctx -> pages.show(ctx, page(view(ctx), Entered.of(Map.of(), words.texts()), List.of())),
                ActRoutes.WORKERS);
        routes.post(PATH, this::close, ActRoutes.WORKERS);
    }

    private ItemView view(Context ctx) {
        String tag = ctx.pathParam("tag");
        return desk.item(tag, clock.instant()).orElseThrow(() -> new NotThere("no item " + tag));
    }

    private void close(Context ctx) {
        Instant now = clock.instant();
        ItemView view = view(ctx);
        Entered entered = Entered.of(ctx, words.texts());
        for (String name : CONFIRMED) {
            if (!entered.required(name).isEmpty() && !entered.all(name).contains(YES)) {
                entered.refuse(name, words.text("stock.pack.needs-yes"));
            }
        }
        if (entered.isRefused() || !isReady(checks(view, now))) {
            pages.refuse(ctx, page(view, entered, List.of()));
            return;
        }
        Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), now, CounterRoutes.key(entered));
        String tag = view.item().tag();
        desk.handle(new Command.Reseal(header, tag, true, true), now)
                .fold(
                        receipt -> {
                            ctx.redirect("/items/" + tag + "/bag-label?done", HttpStatus.SEE_OTHER);
                            return tag;
                        },
                        refusals -> {
                            pages.refuse(ctx, page(view, entered, words.refusals(refusals)));
                            return tag;
                        });
    }

    private List<Check> checks(ItemView view, Instant now) {
        return packing.checks(view, PackingBake.of(desk.standard(now), view.history()), now);
    }

    private static boolean isReady(List<Check> checks) {
        return checks.stream().allMatch(Check::holds);
    }

    private DryPackPage page(ItemView view, Entered entered, List<String> refusals) {
        List<Check> checks = checks(view, clock.instant());
        List<Input> inputs = CONFIRMED.stream()
                .map(name -> new Input(
                        entered.field(name, words.text("stock.pack." + name)),
                        Input.Kind.CHOICES,
                        ActForm.yesOrNo(words)))
                .toList();
        return new DryPackPage(
                words.text("stock.pack.title", view.item().tag()),
                view.item().tag(),
                Secret.token(),
                checks,
                isReady(checks),
                refusals,
                inputs);
    }
}
