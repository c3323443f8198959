package bagclock.labels;

import bagclock.platform.Messages;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.register.HouseCustoms;
import bagclock.scan.TestCode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.List;
import java.util.stream.IntStream;

/** The test code of the scanner check: as a picture, and as bars to print for scanners that read nothing else. */
final class TestCodeRoutes {
    private static final String BARS = "/labels/test-bars";
    private static final int SIDE = 60;

    private final LabelStore store;
    private final Pages pages;
    private final Messages messages;
    private final Clock clock;
    private final Typeface type;

    TestCodeRoutes(LabelStore store, Pages pages, Messages messages, Clock clock, Typeface type) {
        this.store = store;
        this.pages = pages;
        this.messages = messages;
        this.clock = clock;
        this.type = type;
    }

    void register(RoutesConfig routes) {
        Role[] readers = Role.signedIn();
        routes.get("/labels/test-code.svg", TestCodeRoutes::picture, readers);
        routes.get(BARS, this::bars, readers);
        routes.get(BARS + "/pdf", this::pdf, readers);
    }

    /** Always dark on white, since a scanner reads it off the screen too. */
    private static void picture(Context ctx) {
        Drawing code = new Drawing(SIDE, SIDE, List.of(), Matrix.of(TestCode.text(), 0, 0, SIDE));
        ctx.contentType("image/svg+xml; charset=utf-8")
                .result(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1$s %1$s\"><path fill=\"#fff\" d=\"M0 0h%1$sv%1$sh-%1$sz\"/>"
                                        .formatted(SIDE)
                                + "<path d=\"" + code.path() + "\" shape-rendering=\"crispEdges\"/></svg>");
    }

    private void bars(Context ctx) {
        HouseCustoms usual = store.customs(clock.instant()).fact();
        pages.show(
                ctx,
                new LabelPage(
                        messages.text("labels.test-bars"),
                        messages.text("labels.test-bars.lead"),
                        "",
                        usual.sheet().name(),
                        BARS + "/pdf",
                        List.of(),
                        new LabelPage.Link("/stock/scanner", messages.text("labels.test-bars.back"), false),
                        List.of(new LabelPage.Print(messages.text("labels.test-bars"), sheet(usual)))));
    }

    private void pdf(Context ctx) {
        Drawing sheet = sheet(store.customs(clock.instant()).fact());
        LabelRoutes.send(ctx, "test-bars", Pdf.of(messages.text("labels.test-bars"), List.of(sheet)));
    }

    private Drawing sheet(HouseCustoms usual) {
        List<String> bars = TestCode.bars();
        List<CodeSheet.Coded> coded = IntStream.range(0, bars.size())
                .mapToObj(i ->
                        new CodeSheet.Coded(bars.get(i), messages.text("labels.test-bars.bar", i + 1, bars.size())))
                .toList();
        return TestSheet.of(type, coded, usual);
    }
}
