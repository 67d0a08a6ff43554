package org.deckplanreview.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** The sample submissions that cases change: beside the directory of rulesets, else those that come with the service. */
final class Samples {

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]*\\.json");

    private final Optional<Path> folder;

    private Samples(Optional<Path> folder) {
        this.folder = folder;
    }

    static Samples beside(Optional<Path> rulesets) {
        return new Samples(rulesets.map(r -> r.toAbsolutePath().resolveSibling("sample-submissions"))
                .filter(Files::isDirectory));
    }

    /** Empty if there is none of that name. */
    Optional<byte[]> read(String name) {
        if (!NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        try {
            Optional<Path> file = folder.map(f -> f.resolve(name)).filter(Files::isRegularFile);
            return file.isPresent() ? Optional.of(Files.readAllBytes(file.get())) : builtIn(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<byte[]> builtIn(String name) throws IOException {
        try (InputStream in =
                Thread.currentThread().getContextClassLoader().getResourceAsStream("sample-submissions/" + name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        }
    }
}
