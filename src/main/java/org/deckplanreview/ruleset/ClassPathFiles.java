package org.deckplanreview.ruleset;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Class path resources. These cannot be listed in a packaged service, so an index names them. */
final class ClassPathFiles implements RulesetFiles {

    private static final String ROOT = "/rulesets/";
    private static final String INDEX = "index.txt";

    @Override
    public List<String> list() throws IOException {
        try (InputStream in = open(INDEX)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .sorted()
                    .toList();
        }
    }

    @Override
    public InputStream open(String path) throws IOException {
        InputStream in = ClassPathFiles.class.getResourceAsStream(ROOT + path);
        if (in == null) {
            throw new FileNotFoundException(path);
        }
        return in;
    }
}
