package org.deckplanreview.rendering.html;

import io.quarkus.qute.Expression;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.RawString;
import io.quarkus.qute.ResultMapper;
import io.quarkus.qute.TemplateNode.Origin;
import java.util.List;
import org.deckplanreview.rendering.text.PlainText;

/** Makes whatever a template writes harmless and escapes it, but for markup of our own. */
final class HarmlessText implements ResultMapper {
    private static final HtmlEscaper ESCAPER = new HtmlEscaper(List.of("text/html"));

    static String escaped(String untrusted) {
        return ESCAPER.map(PlainText.of(untrusted), null);
    }

    @Override
    public int getPriority() {
        return ESCAPER.getPriority() + 1;
    }

    @Override
    public boolean appliesTo(Origin origin, Object result) {
        return !(result instanceof RawString);
    }

    @Override
    public String map(Object result, Expression expression) {
        return escaped(result.toString());
    }
}
