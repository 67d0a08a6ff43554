package org.deckplanreview.rendering.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.EnumSet;

/** The faces of the one font of the document. */
enum EmbeddedFont {
    REGULAR("DejaVuSans.ttf", 400),
    BOLD("DejaVuSans-Bold.ttf", 700);

    private static final String FAMILY = "DejaVu Sans";

    private final int weight;
    private final File file;

    EmbeddedFont(String name, int weight) {
        this.weight = weight;
        this.file = onDisk(name);
    }

    /** Drawings take fonts from files alone. */
    private static File onDisk(String name) {
        try (InputStream in = EmbeddedFont.class.getResourceAsStream("/fonts/" + name)) {
            if (in == null) {
                throw new IllegalStateException("There is no font " + name);
            }
            Path file = Files.createTempFile("deck-plan-review-", ".ttf");
            file.toFile().deleteOnExit();
            Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
            return file.toFile();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void register(PdfRendererBuilder builder) {
        for (EmbeddedFont font : values()) {
            builder.useFont(
                    font.file,
                    FAMILY,
                    font.weight,
                    FontStyle.NORMAL,
                    true,
                    EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG));
        }
    }
}
