package org.deckplanreview.ruleset;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/** Where rulesets' files are read from. Paths are relative to the rulesets' root, with {@code /} between names. */
public interface RulesetFiles {

    /**
     * Paths of the YAML and CSV files and of {@code released.txt} where there is one, in rising order. One that stands twice is a
     * fault, which loading tells.
     */
    List<String> list() throws IOException;

    InputStream open(String path) throws IOException;

    /** These with what another place adds. */
    default RulesetFiles and(RulesetFiles others) {
        return new JoinedFiles(this, others);
    }

    /** The rulesets that come with the service, listed in {@code rulesets/index.txt}. */
    static RulesetFiles ofClassPath() {
        return new ClassPathFiles();
    }

    /** The rulesets in a directory. Links are not followed. */
    static RulesetFiles ofDirectory(Path directory) {
        return new DirectoryFiles(directory);
    }
}
