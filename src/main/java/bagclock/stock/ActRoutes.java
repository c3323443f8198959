package bagclock.stock;

import bagclock.core.Refusal;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.Receipt;
import bagclock.platform.Entered;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Secret;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.scan.Decoder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The forms of everything that a clerk tells the desk. */
final class ActRoutes {
    static final Role[] WORKERS = Role.signedIn();
    private static final String KEY = "key";
    private static final String AT = "at";
    private static final String CORRECTS = "corrects";
    private static final int LONGEST_SCAN = 4000;

    private final Known known;
    private final Desk desk;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    /** Where the forms look things up. */
    record Known(Desk desk, StockStore store, LabelScans labels) {}

    ActRoutes(Known known, Pages pages, Words words, Clock clock) {
        this.known = known;
        this.desk = known.desk();
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/stock/receive", ctx -> show(ctx, ActForms.RECEIVE, ""), WORKERS);
        routes.get("/stock/label", ctx -> show(ctx, ActForms.RECEIVE, ""), WORKERS);
        routes.post("/stock/receive", ctx -> take(ctx, ActForms.RECEIVE, ""), WORKERS);
        routes.get("/items/{tag}/acts/{act}", ctx -> show(ctx, form(ctx), tag(ctx)), WORKERS);
        routes.post("/items/{tag}/acts/{act}", ctx -> take(ctx, form(ctx), tag(ctx)), WORKERS);
    }

    private static ActForm form(Context ctx) {
        return ActForms.named(ctx.pathParam("act"));
    }

    private String tag(Context ctx) {
        String tag = ctx.pathParam("tag");
        if (desk.item(tag, clock.instant()).isEmpty()) {
            throw new NotThere("no item " + tag);
        }
        return tag;
    }

    private void show(Context ctx, ActForm form, String tag) {
        Map<String, String> values = new HashMap<>(form.atFirst());
        values.put(AT, texts().field(clock.instant()));
        if (form == ActForms.RECEIVE) {
            String scan = scanned(ctx);
            values.put(LabelFields.SCAN, scan);
            label(scan).ifPresent(match -> values.putAll(LabelFields.values(scan, match)));
        }
        Optional.ofNullable(ctx.queryParam(CORRECTS)).ifPresent(seq -> values.put(CORRECTS, seq));
        Optional.ofNullable(ctx.queryParam(AT)).ifPresent(at -> values.put(AT, at));
        pages.show(ctx, page(form, tag, Entered.of(values, texts()), Secret.token(), List.of()));
    }

    /** The codes of the label so far, and one more. */
    private static String scanned(Context ctx) {
        String before =
                Optional.ofNullable(ctx.queryParam(LabelFields.SCAN)).orElse("").strip();
        String code = Optional.ofNullable(ctx.queryParam(FieldNames.CODE)).orElse("");
        String all = code.isBlank() ? before : (before + "\n" + Decoder.portable(code)).strip();
        return all.length() > LONGEST_SCAN ? before : all;
    }

    private Optional<LabelMatch> label(String scan) {
        return scan.isBlank() ? Optional.empty() : Optional.of(known.labels().match(scan, clock.instant()));
    }

    private Texts texts() {
        return words.texts();
    }

    private ActPage page(ActForm form, String tag, Entered entered, String key, List<String> refusals) {
        Instant now = clock.instant();
        StockStore store = known.store();
        String scan = form == ActForms.RECEIVE ? entered.text(LabelFields.SCAN) : "";
        Optional<LabelMatch> label = label(scan);
        Offer offer = new Offer(store.places(now), store.partTypes(now), store.carriers(now), label, store.closed(now));
        List<Input> inputs = new ArrayList<>(form.inputs(entered, offer, words));
        inputs.add(Input.of(
                entered.field(AT, words.text("stock." + form.name() + ".at"), words.text("stock.at.hint")),
                Input.Kind.MOMENT));
        String corrects = entered.text(CORRECTS);
        String title = words.text("stock." + form.name());
        return new ActPage(
                corrects.isEmpty() ? title : words.text("stock.correct", title),
                words.text("stock." + form.name() + ".lead"),
                tag,
                tag.isEmpty() ? "/stock/receive" : "/items/" + tag + "/acts/" + form.name(),
                corrects,
                key,
                refusals,
                inputs,
                form == ActForms.RECEIVE
                        ? Optional.of(label.map(match -> LabelFields.part(scan, match, words))
                                .orElse(ActPage.LabelPart.NONE))
                        : Optional.empty());
    }

    private void take(Context ctx, ActForm form, String tag) {
        Instant now = clock.instant();
        Entered entered = withPhoto(ctx);
        String key = entered.text(KEY).isEmpty() ? Secret.token() : entered.text(KEY);
        Instant at = entered.pastTime(AT, now).orElse(now);
        Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), at, key);
        Optional<Command> command = form.read(entered, header, tag).map(said -> correcting(said, entered, tag));
        if (command.isEmpty() || entered.isRefused()) {
            pages.refuse(ctx, page(form, tag, entered, key, List.of()));
            return;
        }
        desk.handle(command.get(), now).fold(receipt -> done(ctx, command.get(), receipt), refusals -> {
            pages.refuse(ctx, page(form, tag, entered, key, words.refusals(refusals)));
            return refusals;
        });
    }

    private static Command correcting(Command said, Entered entered, String tag) {
        return entered.text(CORRECTS).isEmpty()
                ? said
                : entered.count(CORRECTS, 1, 1_000_000)
                        .<Command>map(seq -> new Command.Correct(said.header(), tag, seq, said))
                        .orElse(said);
    }

    private List<Refusal> done(Context ctx, Command command, Receipt receipt) {
        if (command instanceof Command.Receive receive && !receipt.repeated()) {
            known.labels().learn(receive, receipt.tag(), clock.instant());
        }
        ctx.redirect("/items/" + receipt.child().orElse(receipt.tag()) + "?done", HttpStatus.SEE_OTHER);
        return List.of();
    }

    /** The fields, with the hash of a photograph in place of its bytes. */
    private Entered withPhoto(Context ctx) {
        Map<String, String> values = new HashMap<>();
        ctx.formParamMap().forEach((name, all) -> values.put(name, String.join(",", all)));
        values.put(LabelFields.MAP, Visit.of(ctx).scannerMap());
        values.remove(OpenForm.PHOTO_HASH);
        UploadedFile photo = ctx.uploadedFile("photo");
        if (photo != null && photo.size() > 0) {
            values.put(OpenForm.PHOTO_HASH, sha256(photo));
        }
        return Entered.of(values, texts());
    }

    private static String sha256(UploadedFile file) {
        try (InputStream content = file.content()) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(content.readAllBytes()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
