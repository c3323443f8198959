package bagclock.platform;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;

/** Answers a request with a page. May be used by many threads. */
public final class Pages {
    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "bagclock.templates");
    private final Settings settings;
    private final Messages messages;

    /** Pages of one site. */
    public Pages(Settings settings, Messages messages) {
        this.settings = settings;
        this.messages = messages;
    }

    /** Answers with the page. */
    public void show(Context ctx, Page page) {
        ctx.contentType("text/html; charset=utf-8").result(html(page, Visit.of(ctx)));
    }

    /** Answers a refused form with the page that says why, beside its fields. */
    public void refuse(Context ctx, Page page) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, page);
    }

    /** The page as this visitor sees it. */
    public String html(Page page, Visit visit) {
        Chrome chrome = new Chrome(
                page.title(),
                visit.person(),
                visit.csrfToken(),
                visit.scannerMap(),
                page.frontDoor(),
                settings.demo(),
                settings.siteZone().getId(),
                messages);
        StringOutput html = new StringOutput();
        engine.render(page.template(), Map.of("chrome", chrome, "page", page), new PageOutput(html));
        return html.toString();
    }
}
