package org.deckplanreview.ruleset;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.Stream;

/** Files of two places as if they stood in one. */
final class JoinedFiles implements RulesetFiles {

    private final RulesetFiles first;
    private final RulesetFiles second;

    JoinedFiles(RulesetFiles first, RulesetFiles second) {
        this.first = first;
        this.second = second;
    }

    @Override
    public List<String> list() throws IOException {
        return Stream.concat(first.list().stream(), second.list().stream())
                .sorted()
                .toList();
    }

    @Override
    public InputStream open(String path) throws IOException {
        return first.list().contains(path) ? first.open(path) : second.open(path);
    }
}
