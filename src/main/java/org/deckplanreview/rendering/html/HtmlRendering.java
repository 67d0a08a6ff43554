package org.deckplanreview.rendering.html;

import io.quarkus.qute.Engine;
import io.quarkus.qute.EngineBuilder;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.TemplateLocator.TemplateLocation;
import io.quarkus.qute.Variant;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.deckplanreview.rendering.drawing.DrawnDeck;

/**
 * A report as one page of HTML that needs nothing else: no script, no other file. It is well-formed XML too. The same deck
 * gives the same text.
 */
public final class HtmlRendering {
    private static final Engine ENGINE = engine();

    private HtmlRendering() {}

    public static String render(DrawnDeck deck, Form form) {
        return ENGINE.getTemplate("report/report")
                .data("page", new ReportPage(deck, form))
                .render();
    }

    /** An engine of its own, so that a report can be rendered where no application runs, and nothing escapes escaping. */
    private static Engine engine() {
        EngineBuilder builder = Engine.builder()
                .addDefaults()
                .addValueResolver(new ReflectionValueResolver())
                .addResultMapper(new HarmlessText())
                .removeStandaloneLines(true)
                .strictRendering(true)
                .addLocator(HtmlRendering::located);
        return builder.build();
    }

    private static Optional<TemplateLocation> located(String id) {
        String text = text("/templates/" + id + ".html");
        return Optional.of(new TemplateLocation() {
            @Override
            public Reader read() {
                return new StringReader(text);
            }

            @Override
            public Optional<Variant> getVariant() {
                return Optional.of(Variant.forContentType(Variant.TEXT_HTML));
            }
        });
    }

    private static String text(String resource) {
        try (InputStream in = HtmlRendering.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("There is no template " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
