package org.deckplanreview.ruleset;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Files of a directory on disk. */
final class DirectoryFiles implements RulesetFiles {

    private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".csv");

    private final Path root;

    DirectoryFiles(Path root) {
        this.root = root;
    }

    @Override
    public List<String> list() throws IOException {
        try (Stream<Path> found = Files.walk(root)) {
            return found.filter(Files::isRegularFile)
                    .map(this::relative)
                    .filter(path -> ENDINGS.stream().anyMatch(path::endsWith) || path.equals(ReleasedEditions.FILE))
                    .sorted()
                    .toList();
        }
    }

    private String relative(Path file) {
        return StreamSupport.stream(root.relativize(file).spliterator(), false)
                .map(Path::toString)
                .collect(Collectors.joining("/"));
    }

    @Override
    public InputStream open(String path) throws IOException {
        return Files.newInputStream(root.resolve(path));
    }
}
