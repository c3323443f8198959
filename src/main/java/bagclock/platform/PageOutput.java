package bagclock.platform;

import gg.jte.TemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import org.jspecify.annotations.Nullable;

/** Escapes what pages say, and holds quantities together in it; what a form sends back stays as it is. */
final class PageOutput extends OwaspHtmlTemplateOutput {
    private boolean isShown = true;

    PageOutput(TemplateOutput output) {
        super(output);
    }

    @Override
    public void setContext(@Nullable String tagName, @Nullable String attributeName) {
        isShown = attributeName == null && !"textarea".equals(tagName);
        super.setContext(tagName, attributeName);
    }

    @Override
    public void writeUserContent(@Nullable String value) {
        super.writeUserContent(value == null || !isShown ? value : Unbroken.text(value));
    }
}
