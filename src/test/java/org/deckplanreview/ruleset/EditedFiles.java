package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.vocabulary.Vocabulary;

/** The good rulesets of the test resources with changes to their text. */
public final class EditedFiles implements RulesetFiles {

    public static final String EDITION = "testland/2024.yaml";
    static final String EN338 = "standards/en338-2016.yaml";
    static final String EN1995 = "standards/en1995-1-1-2004.yaml";
    static final String CASES = "testland/cases/2024/guard.yaml";

    private final SortedMap<String, byte[]> contents;
    private final Vocabulary vocabulary;

    private EditedFiles(SortedMap<String, byte[]> contents, Vocabulary vocabulary) {
        this.contents = contents;
        this.vocabulary = vocabulary;
    }

    public static EditedFiles good() {
        return of("rulesets-for-tests", TestVocabulary.SMALL);
    }

    /** With a provision more, on joists; further members of it end the file. */
    public EditedFiles withUseOfJoists(String... members) {
        String last = "    advice: Take a deeper joist.\n";
        return with(
                EDITION,
                last,
                last
                        + """
                          - id: joist.use
                            title: Use of joists
                            concern: span
                            obligation: should
                            cite: {source: habit, confirmed: {by: practice, on: 2026-11-25}}
                            subjects: joists
                            limit: {quantity: occupancy, oneOf: [{values: [public]}]}
                            advice: Ask an engineer.
                        """
                        + String.join(
                                "",
                                List.of(members).stream()
                                        .map(m -> "    " + m + "\n")
                                        .toList()));
    }

    /** Those with look-up tables. */
    static EditedFiles tables() {
        return of("tables-for-tests", TableVocabulary.SMALL);
    }

    private static EditedFiles of(String resource, Vocabulary vocabulary) {
        RulesetFiles directory = RulesetFiles.ofDirectory(Path.of("src/test/resources", resource));
        SortedMap<String, byte[]> contents = new TreeMap<>();
        try {
            for (String path : directory.list()) {
                try (InputStream in = directory.open(path)) {
                    contents.put(path, in.readAllBytes());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new EditedFiles(contents, vocabulary);
    }

    String text(String path) {
        return new String(contents.get(path), StandardCharsets.UTF_8);
    }

    /** With the text's first occurrence replaced; it must be there. */
    public EditedFiles with(String path, String old, String replacement) {
        assertThat(text(path)).contains(old);
        int at = text(path).indexOf(old);
        return with(path, text(path).substring(0, at) + replacement + text(path).substring(at + old.length()));
    }

    EditedFiles with(String path, String text) {
        return with(path, text.getBytes(StandardCharsets.UTF_8));
    }

    EditedFiles with(String path, byte[] bytes) {
        SortedMap<String, byte[]> changed = new TreeMap<>(contents);
        changed.put(path, bytes);
        return new EditedFiles(changed, vocabulary);
    }

    EditedFiles without(String path) {
        SortedMap<String, byte[]> changed = new TreeMap<>(contents);
        changed.remove(path);
        return new EditedFiles(changed, vocabulary);
    }

    /** The line, from 1, of the text's first occurrence. */
    int lineOf(String path, String text) {
        assertThat(text(path)).contains(text);
        return (int) text(path).substring(0, text(path).indexOf(text)).lines().count()
                + (startsLine(path, text) ? 1 : 0);
    }

    private boolean startsLine(String path, String text) {
        int at = text(path).indexOf(text);
        return at == 0 || text(path).charAt(at - 1) == '\n';
    }

    @Override
    public List<String> list() {
        return List.copyOf(contents.keySet());
    }

    @Override
    public InputStream open(String path) throws IOException {
        if (!contents.containsKey(path)) {
            throw new FileNotFoundException(path);
        }
        return new ByteArrayInputStream(contents.get(path));
    }

    LoadResult load() {
        return RulesetLoader.load(this, vocabulary);
    }

    public Rulesets loaded() {
        LoadResult result = load();
        assertThat(result).isInstanceOf(LoadResult.Loaded.class);
        return ((LoadResult.Loaded) result).rulesets();
    }

    public Edition edition() {
        return loaded().edition("testland", "2024").orElseThrow();
    }

    List<RulesetFault> faults() {
        LoadResult result = load();
        assertThat(result).isInstanceOf(LoadResult.Faulty.class);
        return ((LoadResult.Faulty) result).faults();
    }

    /** The only fault. */
    RulesetFault fault() {
        List<RulesetFault> faults = faults();
        assertThat(faults).as("%s", faults).hasSize(1);
        return faults.get(0);
    }
}
